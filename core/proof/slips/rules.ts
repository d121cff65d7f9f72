/** Slips in the rules of the house: one is left out, counted twice, or another one is followed. */
import type { House } from '../../block/house.ts';
import { listed } from '../../block/words.ts';
import { type Rational, rational, ZERO } from '../../quantity/rational.ts';
import type { Mistake } from './mistake.ts';
import { type Change, withEntries, withHouse } from './reopened.ts';
import type { Slip } from './slip.ts';

/** What a cut size is without its seams, in whatever words. */
export const WITHOUT_SEAMS = 'without seams';

type LengthRule = 'seam' | 'joining allowance' | 'overhang' | 'squaring';

const scaled =
  (rule: LengthRule, by: Rational): Change =>
  (pattern) =>
    withHouse(pattern, { [rule]: pattern.house[rule].mul(by) });

/** The backing and the batting may have an overhang of their own. */
const overhang =
  (by: Rational): Change =>
  (pattern) => {
    const { backing, batting } = pattern.entries;
    const own = <T extends NonNullable<typeof backing>>(layer: T): T =>
      layer.overhang
        ? { ...layer, overhang: { ...layer.overhang, inches: layer.overhang.inches.mul(by) } }
        : layer;
    const { house } = withHouse(pattern, { overhang: pattern.house.overhang.mul(by) });
    return {
      ...withEntries(pattern, {
        ...(backing && { backing: own(backing) }),
        ...(batting && { batting: own(batting) }),
      }),
      house,
    };
  };

const HALF = rational(1, 2);
const TWICE = rational(2);

const NO_SEAM = scaled('seam', ZERO);
const HALF_SEAM = scaled('seam', HALF);
const TWO_SEAMS = scaled('seam', TWICE);
const NO_JOINING = scaled('joining allowance', ZERO);
const NO_SQUARING = scaled('squaring', ZERO);
const NO_OVERHANG = overhang(ZERO);
const HALF_OVERHANG = overhang(HALF);

const BY_AREA: Change = (pattern) => withHouse(pattern, { 'bias square by': 'area' });

/** Usable widths that patterns count on (common practice), in inches. */
const WIDTHS = [40, 42, 44].map((inches) => ({
  inches: rational(inches),
  change: usableWidth(rational(inches)),
}));

/** The width of every fabric, also of one that says its own. */
function usableWidth(inches: Rational): Change {
  return (pattern) => {
    const { house } = withHouse(pattern, { 'usable width': inches });
    const fabrics = Object.entries(pattern.entries.fabrics ?? {}).map(([label, fabric]) => [
      label,
      fabric['usable width'] ? { ...fabric, 'usable width': { ...fabric['usable width'], inches } } : fabric,
    ]);
    return pattern.entries.fabrics
      ? { ...withEntries(pattern, { fabrics: Object.fromEntries(fabrics) }), house }
      : { ...pattern, house };
  };
}

/** What is cut to be sewn into the top; the seams of binding and backing take otherwise. */
function isSewnIn({ kind, id }: Mistake): boolean {
  return kind === 'length' && !/^(?:binding|piping|backing|batting|fabric)\./.test(id);
}

function ifRight(
  change: Change,
  where: string,
  clause: (text: string, house: House, mistake: Mistake) => string,
) {
  return (mistake: Mistake) =>
    mistake.isRightBy(change, where)
      ? { clause: clause(mistake.text, mistake.pattern.house, mistake) }
      : undefined;
}

const QUILT = ['finished: 60" x 72"', 'binding: { strip: 2 1/4" }', 'backing: {}', 'batting: {}'];
const LONG_PIECE = ['pieces: { rail: { cut: 4" x 10 1/2", count: 12 } }'];
const PIECE = ['pieces: { post: { finished: 4" x 9", count: 12 } }'];

export const RULES: readonly Slip[] = [
  {
    name: 'the seam allowance left out',
    explain: (mistake) =>
      isSewnIn(mistake) && mistake.isRightBy(NO_SEAM, 'seam')
        ? { clause: `${mistake.text} is without seam allowance`, means: WITHOUT_SEAMS }
        : undefined,
    example: {
      block: PIECE,
      sentence: 'Cut posts «4"» <!-- = piece.post.width --> wide.',
      says: '4" is without seam allowance',
    },
    counterexample: { block: PIECE, sentence: 'Cut posts «4⅛"» <!-- = piece.post.width --> wide.' },
  },
  {
    name: 'the seam allowance added twice',
    explain: (mistake) =>
      isSewnIn(mistake) && mistake.isRightBy(TWO_SEAMS, 'seam')
        ? { clause: `${mistake.text} has the seam allowance added twice` }
        : undefined,
    example: {
      block: PIECE,
      sentence: 'Cut posts «5"» <!-- = piece.post.width --> wide.',
      says: '5" has the seam allowance added twice',
    },
    counterexample: { block: PIECE, sentence: 'Cut posts «5½"» <!-- = piece.post.width --> wide.' },
  },
  {
    name: 'the seam allowance of one side only',
    explain: (mistake) =>
      isSewnIn(mistake) && mistake.value.need.exact && mistake.isRightBy(HALF_SEAM, 'seam')
        ? { clause: `${mistake.text} has the seam allowance of one side only` }
        : undefined,
    example: {
      block: PIECE,
      sentence: 'Cut posts «4¼"» <!-- = piece.post.width --> wide.',
      says: '4¼" has the seam allowance of one side only',
    },
    counterexample: { block: PIECE, sentence: 'Cut posts «4¾"» <!-- = piece.post.width --> wide.' },
  },
  {
    name: 'another usable width',
    explain: (mistake) => {
      const right = WIDTHS.filter(({ change }) => mistake.isRightBy(change, 'usable width'));
      const widths = right.map(({ inches }) => mistake.ledger.show.length(inches));
      return right.length > 0
        ? { clause: `${mistake.text} would be right with ${listed(widths, 'or')} of usable width` }
        : undefined;
    },
    example: {
      block: LONG_PIECE,
      sentence: 'A strip gives «4» <!-- = piece.rail.per-strip --> rails.',
      says: '4 would be right with 42" or 44" of usable width',
    },
    counterexample: {
      block: LONG_PIECE,
      sentence: 'A strip gives «2» <!-- = piece.rail.per-strip --> rails.',
    },
  },
  {
    name: 'the joining allowance left out',
    explain: ifRight(
      NO_JOINING,
      'joining allowance',
      (text, house, { ledger: { show } }) =>
        `${text} leaves out the ${show.length(house['joining allowance'])} for joining`,
    ),
    example: {
      block: QUILT,
      sentence: 'Make «264"» <!-- = binding.length --> of binding.',
      says: '264" leaves out the 12" for joining',
    },
    counterexample: { block: QUILT, sentence: 'Make «266"» <!-- = binding.length --> of binding.' },
  },
  {
    name: 'the overhang left out',
    explain: ifRight(NO_OVERHANG, 'overhang', (text) => `${text} leaves out the overhang`),
    example: {
      block: QUILT,
      sentence: 'The batting is «60"» <!-- = batting.width --> wide.',
      says: '60" leaves out the overhang',
    },
    counterexample: { block: QUILT, sentence: 'The batting is «61"» <!-- = batting.width --> wide.' },
  },
  {
    name: 'the overhang of one side only',
    explain: ifRight(HALF_OVERHANG, 'overhang', (text) => `${text} has the overhang of one side only`),
    example: {
      block: QUILT,
      sentence: 'The backing is «76"» <!-- = backing.length --> long.',
      says: '76" has the overhang of one side only',
    },
    counterexample: { block: QUILT, sentence: 'The backing is «75"» <!-- = backing.length --> long.' },
  },
  {
    name: 'the straightening of the end left out',
    explain: ifRight(
      NO_SQUARING,
      'squaring',
      (text) => `${text} leaves out what straightening the end takes`,
    ),
    example: {
      block: ['house: { squaring: 5" }', 'finished: 60" x 72"', 'binding: { strip: 2 1/4" }'],
      sentence: 'Buy «½ yd» <!-- = binding.yardage --> for the binding.',
      says: '½ yd leaves out what straightening the end takes',
    },
    counterexample: {
      block: ['house: { squaring: 5" }', 'finished: 60" x 72"', 'binding: { strip: 2 1/4" }'],
      sentence: 'Buy «⅝ yd» <!-- = binding.yardage --> for the binding.',
    },
  },
  {
    name: 'the area rule for a bias tube',
    explain: (mistake) => {
      if (!mistake.isRightBy(BY_AREA, 'bias square by')) return undefined;
      // Of the square itself the message says what it promises and what it gives.
      if (mistake.id === 'binding.square') return { clause: undefined };
      return {
        clause: `${mistake.text} goes by the rule of thumb, and the tube gives less than that promises`,
      };
    },
    example: {
      block: ['finished: circle 18"', 'binding: { strip: 2 1/4", grain: bias }'],
      sentence: 'Cut a «13"» <!-- = binding.square --> square.',
      says: undefined,
    },
    counterexample: {
      block: ['finished: circle 18"', 'binding: { strip: 2 1/4", grain: bias }'],
      sentence: 'Cut a «12"» <!-- = binding.square --> square.',
    },
  },
];

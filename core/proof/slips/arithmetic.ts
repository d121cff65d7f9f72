/** Slips in working a number out: the edge taken for its width, rounding the wrong way, what is only partly used. */
import { floor, ONE, type Rational, rational, ZERO } from '../../quantity/rational.ts';
import { roundDown } from '../../quantity/real.ts';
import type { LengthUnit } from '../../quantity/units.ts';
import type { Mistake } from './mistake.ts';
import type { Slip } from './slip.ts';

const EDGES = /^(?:finished\.edge|binding\.(?:edge|length)|piping\.length)$/;

/** Whether an edge was taken to be so long, with or without what joining takes. */
function isTaken(mistake: Mistake, edge: Rational | undefined): boolean {
  const joining = mistake.pattern.house['joining allowance'];
  return edge !== undefined && (mistake.measures(edge) || mistake.measures(edge.add(joining)));
}

const WHOLES: Readonly<Record<string, readonly [each: string, all: string]>> = {
  strips: ['per-strip', 'count'],
  sets: ['per-set', 'count'],
  squares: ['per-square', 'count'],
};

/** How many whole strips, sets or squares all pieces fill. */
function filled(mistake: Mistake): Rational | undefined {
  const [, thing, last] = /^(.*)\.([\w-]+)$/.exec(mistake.id) ?? [];
  const [each, all] = WHOLES[last ?? ''] ?? [];
  const from = mistake.other(`${thing}.${each}`)?.value.shown;
  const count = mistake.other(`${thing}.${all}`)?.value.shown;
  return from && count && from.compare(0) > 0 ? rational(floor(count.div(from))) : undefined;
}

const UNITS: Readonly<Record<LengthUnit, string>> = {
  in: 'inches',
  ft: 'feet',
  yd: 'yards',
  mm: 'millimetres',
  cm: 'centimetres',
  m: 'metres',
};

function rightUnits(mistake: Mistake): LengthUnit[] {
  const { unit } = mistake.stated;
  if (!unit) return [];
  return (Object.keys(UNITS) as LengthUnit[]).filter((other) => other !== unit && mistake.isRightIn(other));
}

const ROUND = ['finished: circle 24"', 'binding: { strip: 2 1/4", grain: bias }'];
const OBLONG = ['finished: 60" x 72"', 'binding: { strip: 2 3/4" }'];
const PIECE = ['pieces: { post: { cut: 4 1/2" x 9 1/2", count: 30 } }'];

export const ARITHMETIC: readonly Slip[] = [
  {
    name: 'the diameter for the way around',
    explain: (mistake) =>
      EDGES.test(mistake.id) && isTaken(mistake, mistake.other('finished.diameter')?.value.shown)
        ? { clause: `${mistake.text} goes across instead of around` }
        : undefined,
    example: {
      block: ROUND,
      sentence: 'Make «36"» <!-- = binding.length --> of binding.',
      says: '36" goes across instead of around',
    },
    counterexample: { block: ROUND, sentence: 'Make «48"» <!-- = binding.length --> of binding.' },
  },
  {
    name: 'two sides for all four',
    explain: (mistake) => {
      const width = mistake.other('finished.width')?.value.shown;
      const length = mistake.other('finished.length')?.value.shown;
      const isOblong = !mistake.other('finished.diameter') && width && length;
      return EDGES.test(mistake.id) && isOblong && isTaken(mistake, width.add(length))
        ? { clause: `${mistake.text} counts only two of the four sides` }
        : undefined;
    },
    example: {
      block: OBLONG,
      sentence: 'Make «144"» <!-- = binding.length --> of binding.',
      says: '144" counts only two of the four sides',
    },
    counterexample: { block: OBLONG, sentence: 'Make «154"» <!-- = binding.length --> of binding.' },
  },
  {
    name: 'rounded down',
    explain: (mistake) => {
      const { need, step, round, shown } = mistake.value;
      if (!step || round === 'down' || mistake.kind === 'count' || need.exact?.equals(shown))
        return undefined;
      return mistake.measures(roundDown(need, step))
        ? { clause: `${mistake.text} is rounded down, and it must be rounded up` }
        : undefined;
    },
    example: {
      block: OBLONG,
      sentence: 'Buy «½ yd» <!-- = binding.yardage --> for the binding.',
      says: '½ yd is rounded down, and it must be rounded up',
    },
    counterexample: { block: OBLONG, sentence: 'Buy «⅜ yd» <!-- = binding.yardage --> for the binding.' },
  },
  {
    name: 'the last one that is only partly used left out',
    explain: (mistake) =>
      mistake.measures(filled(mistake))
        ? { clause: `${mistake.text} leaves out the last one, which is only partly used` }
        : undefined,
    example: {
      block: PIECE,
      sentence: 'Cut «7» <!-- = piece.post.strips --> strips.',
      says: '7 leaves out the last one, which is only partly used',
    },
    counterexample: { block: PIECE, sentence: 'Cut «6» <!-- = piece.post.strips --> strips.' },
  },
  {
    name: 'another unit',
    explain: (mistake) => {
      const [unit, ...more] = rightUnits(mistake);
      return unit && more.length === 0
        ? { clause: `${mistake.text} would be right in ${UNITS[unit]}` }
        : undefined;
    },
    example: {
      block: ['finished: 60" x 72"'],
      sentence: 'The quilt is «60 cm» <!-- = finished.width --> wide.',
      says: '60 cm would be right in inches',
    },
    counterexample: {
      block: ['finished: 60" x 72"'],
      sentence: 'The quilt is «61 cm» <!-- = finished.width --> wide.',
    },
  },
  {
    name: 'one short',
    isWeak: true,
    explain: ({ kind, value, amount }) =>
      kind === 'count' && value.shown.sub(amount).equals(ONE) && amount.compare(ZERO) > 0
        ? { clause: undefined }
        : undefined,
    example: {
      block: ['blocks: { Reed: { finished: 8" } }', 'layout: { grid: 5 x 6 }'],
      sentence: 'Make «29» <!-- = layout.blocks --> blocks.',
      says: undefined,
    },
    counterexample: {
      block: ['blocks: { Reed: { finished: 8" } }', 'layout: { grid: 5 x 6 }'],
      sentence: 'Make «28» <!-- = layout.blocks --> blocks.',
    },
  },
];

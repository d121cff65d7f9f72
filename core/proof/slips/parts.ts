/** Slips in what a size is made up of: the borders or the sashing left out. */
import { borderName } from '../../block/placeWords.ts';
import type { Mistake } from './mistake.ts';
import { type Change, withEntries } from './reopened.ts';
import type { Explained, Slip } from './slip.ts';

const NO_BORDERS: Change = (pattern) =>
  pattern.entries.borders?.length ? withEntries(pattern, { borders: [] }) : undefined;

const NO_SASHING: Change = (pattern) => {
  const { layout } = pattern.entries;
  if (!layout?.sashing) return undefined;
  const { sashing, ...without } = layout;
  return withEntries(pattern, { layout: without });
};

/** Sashing around the outside where there is none, and the reverse. */
const OTHER_OUTSIDE: Change = (pattern) => {
  const { layout } = pattern.entries;
  if (!layout?.sashing) return undefined;
  const around = layout.sashing.around === 'yes' ? 'no' : 'yes';
  return withEntries(pattern, { layout: { ...layout, sashing: { ...layout.sashing, around } } });
};

/** More borders than these nobody sews. */
const MOST_BORDERS = 6;

const NO_BORDER = Array.from(
  { length: MOST_BORDERS },
  (_, index): Change =>
    (pattern) => {
      const borders = pattern.entries.borders ?? [];
      return borders.length > 1 && index < borders.length
        ? withEntries(pattern, { borders: borders.filter((_, at) => at !== index) })
        : undefined;
    },
);

/** Lengths only: few strips more or less may come of anything. */
function isMadeUp({ kind, id }: Mistake): boolean {
  return kind === 'length' && !/^(?:border|sashing|centre)\./.test(id);
}

function leftOut(change: Change, where: string, what: string) {
  return (mistake: Mistake): Explained | undefined =>
    isMadeUp(mistake) && mistake.isRightBy(change, where)
      ? { clause: `${mistake.text} leaves out ${what}` }
      : undefined;
}

const QUILT = [
  'blocks: { Tide: { finished: 10" } }',
  'layout: { grid: 5 x 6, sashing: { finished: 3" } }',
  'borders: [{ finished: 1 1/2" }, { finished: 4" }]',
];

export const PARTS: readonly Slip[] = [
  {
    name: 'the borders left out',
    explain: (mistake) =>
      leftOut(
        NO_BORDERS,
        'borders',
        mistake.pattern.entries.borders?.length === 1 ? 'the border' : 'the borders',
      )(mistake),
    example: {
      block: QUILT,
      sentence: 'The quilt is «62"» <!-- = finished.width --> wide.',
      says: '62" leaves out the borders',
    },
    counterexample: { block: QUILT, sentence: 'The quilt is «61"» <!-- = finished.width --> wide.' },
  },
  {
    name: 'one border left out',
    explain: (mistake) => {
      const borders = mistake.pattern.entries.borders?.length ?? 0;
      const found = NO_BORDER.flatMap((change, index) =>
        isMadeUp(mistake) && mistake.isRightBy(change, 'borders') ? [borderName(index, borders)] : [],
      );
      return found.length === 1 ? { clause: `${mistake.text} leaves out ${found[0]}` } : undefined;
    },
    example: {
      block: QUILT,
      sentence: 'The quilt is «70"» <!-- = finished.width --> wide.',
      says: '70" leaves out the inner border',
    },
    counterexample: { block: QUILT, sentence: 'The quilt is «69"» <!-- = finished.width --> wide.' },
  },
  {
    name: 'the sashing left out',
    explain: leftOut(NO_SASHING, 'sashing', 'the sashing'),
    example: {
      block: QUILT,
      sentence: 'The quilt is «61"» <!-- = finished.width --> wide.',
      says: '61" leaves out the sashing',
    },
    counterexample: { block: QUILT, sentence: 'The quilt is «63"» <!-- = finished.width --> wide.' },
  },
  {
    name: 'sashing around the outside mistaken',
    explain: (mistake) => {
      if (!mistake.isRightBy(OTHER_OUTSIDE, 'sashing')) return undefined;
      const isAround = mistake.pattern.entries.layout?.sashing?.around === 'yes';
      const around = isAround ? 'leaves out sashing' : 'counts sashing';
      return { clause: `${mistake.text} ${around} around the outside` };
    },
    example: {
      block: QUILT,
      sentence: 'Cut «43» <!-- = sashing.count --> sashes.',
      says: '43 counts sashing around the outside',
    },
    counterexample: { block: QUILT, sentence: 'Cut «42» <!-- = sashing.count --> sashes.' },
  },
];

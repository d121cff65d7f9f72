/** How the blocks are put together. */
import { Derivation } from '../../figures/derivation.ts';
import { isInteger, type Rational, ZERO } from '../../quantity/rational.ts';
import { type Claim, choice, claims, type Row } from '../row.ts';
import { withoutSeams } from '../seams.ts';
import type { Clause, Text, Told } from '../text.ts';
import { writePair } from '../write.ts';
import { fabricOf } from './fabricOf.ts';
import { lengthBetween } from './house.ts';
import { isWide, stripWidth } from './strip.ts';

export interface Grid {
  readonly across: Told;
  readonly down: Told;
  readonly plainness: number;
}

const ROWS_OF = /^["”)]*\s*(?:[\p{L}]+ )?rows?,?\s+(?:of|with)\s*\(?$/iu;
const ROWS = /^["”)]*\s*(?:[\p{L}]+ )?rows?\b/iu;
const PER_ROW =
  /^["”)]*[^.;\d]{0,40}?\b(?:in (?:a|each|every|one) row|to (?:a|each|every|the) row|per row|in each|across)\b/iu;
const ACROSS = /^["”)]*\s*(?:[\p{L}]+ )?across\b/iu;
const DOWN = /^["”)]*\s*(?:[\p{L}]+ )?(?:down|deep)\b/iu;
const NO_ROWS = /\b(?:diagonal|borders?|scallops?)\b/i;

function bareCount({ count, sides }: Clause): Told | undefined {
  return sides.length === 0 && count && !count.unit ? count : undefined;
}

export function gridsIn({ clauses }: Text): Grid[] {
  return clauses.flatMap((clause): Grid[] => {
    const { next, behind, sentence } = clause;
    const [a, b] = [bareCount(clause), next && next.line === clause.line && bareCount(next)];
    if (NO_ROWS.test(sentence)) return [];
    if (!a || !b || !next) return [];
    // What lies between two numbers belongs to the second as well.
    if (ROWS_OF.test(next.before)) return [{ across: b, down: a, plainness: 2 }];
    if (ROWS.test(behind) && PER_ROW.test(next.behind)) return [{ across: b, down: a, plainness: 2 }];
    if (ACROSS.test(behind) && DOWN.test(next.behind)) return [{ across: a, down: b, plainness: 2 }];
    if (PER_ROW.test(behind) && ROWS.test(next.behind)) return [{ across: a, down: b, plainness: 1 }];
    return [];
  });
}

/** The centre as it is measured, shared out among blocks and sashing of known size: whole blocks both ways. */
function gridsOfCentre(text: Text): Grid[] {
  const [size] = text.pattern.sizes;
  const { blocks = {}, layout } = size ? Derivation.unrecorded(text.pattern, size).entries : {};
  const block = Object.values(blocks)[0]?.finished?.width;
  const sash = layout?.sashing?.finished?.inches ?? ZERO;
  const seams = text.pattern.house.seam.mul(2n);
  if (!block || ELSE_BETWEEN.test(text.words)) return [];
  return text.clauses.flatMap((clause): Grid[] => {
    const [a, b] = clause.sides;
    if (!a || !b || !clause.speaksOf('part:centre') || clause.says('state:finished') >= 0.6) return [];
    const counted = [a, b].map((told) => ({
      ...told,
      unit: undefined,
      values: told.values.map((side) =>
        side.sub(seams).add(sash).div(block.add(sash)),
      ) as unknown as Told['values'],
    }));
    const isWholeBlocks = counted.every(({ values }) => values.every((value) => isInteger(value)));
    const [across, down] = counted;
    const grid = across && down && { across, down, plainness: 0 };
    // Only the number of blocks makes it sure.
    return grid && isWholeBlocks && isWhole(grid, text) ? [grid] : [];
  });
}

/** Layouts in which more than blocks and sashing lies in the centre. */
const ELSE_BETWEEN = /\b(?:on point|setting triangles?|medallion|half[- ]blocks?)\b/i;

/** What is told as a number of blocks: a grid of just so many is that of the quilt, not of the parts of a block. */
function isWhole({ across, down }: Grid, { clauses }: Text): boolean {
  const most = Math.max(across.values.length, down.values.length);
  const products = Array.from({ length: most }, (_, index) =>
    valueAt(across, index).mul(valueAt(down, index)),
  );
  return clauses.some(
    ({ count, behind }) =>
      count?.values.length === most &&
      /^["”)]*\s*(?:\p{L}+ ){0,2}?blocks?\b/iu.test(behind) &&
      products.every((product, index) => product.equals(valueAt(count, index))),
  );
}

function valueAt({ values }: Told, index: number): Rational {
  return values[index] ?? values[0];
}

function findGrid(text: Text): Claim[] {
  return [...gridsIn(text), ...gridsOfCentre(text)].map((grid) => {
    const { across, down, plainness } = grid;
    return {
      at: { start: Math.min(across.start, down.start), end: Math.max(across.end, down.end) },
      text: writePair([across, down], text.pattern),
      plainness: plainness + (isWhole(grid, text) ? 2 : 0),
    };
  });
}

function isSashing({ speaksOf }: Clause): boolean {
  return speaksOf('part:sashing');
}

export const SASHING_ROWS: readonly Row[] = [
  {
    path: ['layout', 'set'],
    title: 'how the blocks are set',
    find: choice([
      [
        'on point',
        /\b(?:set|blocks) on point\b|\bblocks? turned on (?:its|their) points?\b|\bon point in \d/i,
      ],
    ]),
    example: 'Arrange the blocks on point in 3 rows of 3.',
    gives: 'on point',
    counterexample: 'The red square stands on its point.',
  },
  {
    path: ['layout', 'sashing', 'finished'],
    title: 'the finished width of the sashing',
    find: claims((clause, text) => {
      if (!isSashing(clause)) return undefined;
      const [a, b] = clause.sides;
      if (a && !b && clause.says('state:finished') >= 0.85) return lengthBetween(clause, 0, 8);
      if (a && b && !isWide(b, text)) return withoutSeams(narrower(a, b), text);
      return withoutSeams(stripWidth(clause, text), text);
    }),
    example: 'Cut 31 pieces 2" × 9½" for the sashing.',
    gives: '1 1/2"',
    counterexample: 'Cut 31 rectangles 2" × 9½" for the blocks.',
  },
  {
    path: ['layout', 'sashing', 'from'],
    title: 'the fabric of the sashing',
    find: fabricOf((clause) => isSashing(clause) && clause.sides.length > 0 && clause.says('state:cut') > 0),
    example: 'From the **cream**, cut 31 pieces 2" × 9½" for the sashing.',
    gives: 'cream',
    counterexample: 'From the **cream**, cut 31 pieces 2" × 9½" for the blocks.',
  },
  {
    path: ['layout', 'sashing', 'cornerstones'],
    title: 'the fabric of the cornerstones',
    find: fabricOf((clause) => clause.speaksOf('part:cornerstones') && clause.sides.length > 0),
    example: 'From the **cream**, cut 12 squares 2" for the cornerstones.',
    gives: 'cream',
    counterexample: 'From the **cream**, cut 12 squares 2" for the corners.',
  },
  {
    path: ['layout', 'sashing', 'around'],
    title: 'whether sashing runs around the blocks',
    find: choice([
      ['yes', /\bsash\w*\b[^.;]{0,40}\bbefore, between and\s+after\b|\bsash\w*\b[^.;]{0,30}\ball around\b/i],
    ]),
    example: 'Make 6 rows with a sashing piece before, between and after the blocks.',
    gives: 'yes',
    counterexample: 'Make 6 rows with a sashing piece between the blocks.',
  },
  {
    path: ['layout', 'triangles', 'from'],
    title: 'the fabric of the setting triangles',
    find: fabricOf((clause) => clause.speaksOf('part:setting side') && clause.says('state:cut') > 0),
    example: 'From the **cream**, cut three squares 9¾" for the setting triangles.',
    gives: 'cream',
    counterexample: 'From the **cream**, cut three squares 9¾" for the triangles.',
  },
];

/** Once the blocks and the sashing are known. */
export const GRID_ROWS: readonly Row[] = [
  {
    path: ['layout', 'grid'],
    title: 'the rows of blocks',
    find: findGrid,
    example: 'Sew the blocks into 5 rows of 4.',
    gives: '4 x 5',
    counterexample: 'Sew the blocks into 5 diagonal rows.',
  },
];

function narrower(a: Told, b: Told): Told {
  return a.values[0].compare(b.values[0]) <= 0 ? a : b;
}

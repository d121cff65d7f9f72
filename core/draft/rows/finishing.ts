/** Binding, backing and batting. */
import { type Claim, choice, claims, type Row } from '../row.ts';
import type { Clause, Text } from '../text.ts';
import { fabricOf } from './fabricOf.ts';
import { stripWidth } from './strip.ts';

function isBinding(clause: Clause): boolean {
  return clause.speaksOf('part:binding');
}

/** The fabric that the materials list gives for the backing, and for nothing else. */
function backingFabric({ pattern, clauses }: Text): Claim[] {
  return Object.entries(pattern.entries.fabrics ?? {}).flatMap(([label, { name = label }]) => {
    if (!/\b(?:back|backing)\b/i.test(`${label} ${name}`)) {
      const clause = clauses.find(
        (each) => each.nearest('fabric', 0.6) === label && each.speaksOf('part:backing') && isYardage(each),
      );
      const [side] = clause?.sides ?? [];
      return side ? [{ at: { start: side.start, end: side.end }, text: label, plainness: 1 }] : [];
    }
    const clause = clauses.find((each) => each.nearest('fabric', 0.6) === label && isYardage(each));
    const [side] = clause?.sides ?? [];
    return side ? [{ at: { start: side.start, end: side.end }, text: label, plainness: 2 }] : [];
  });
}

function isYardage({ sides: [side] }: Clause): boolean {
  return side?.unit === 'yd' || side?.unit === 'm' || side?.unit === 'cm';
}

export const FINISHING_ROWS: readonly Row[] = [
  {
    path: ['binding', 'from'],
    title: 'the fabric of the binding',
    find: fabricOf((clause, text) => isBinding(clause) && stripWidth(clause, text) !== undefined),
    example: 'From the **cream**, cut 7 strips 2¼" wide for the binding.',
    gives: 'cream',
    counterexample: 'From the **cream**, cut 7 strips 2¼" wide for the border.',
  },
  {
    path: ['binding', 'strip'],
    title: 'the cut width of the binding strips',
    find: claims((clause, text) => {
      const width = isBinding(clause) ? stripWidth(clause, text) : undefined;
      return width?.values.every((value) => value.compare(1) > 0 && value.compare(5) < 0) ? width : undefined;
    }),
    example: 'Cut 7 strips 2¼" wide for the binding.',
    gives: '2 1/4"',
    counterexample: 'Cut 7 strips 2¼" wide for the border.',
  },
  {
    path: ['binding', 'grain'],
    title: 'the grain of the binding',
    find: choice([
      [
        'bias',
        /\bbias (?:binding|strips?)\b|\bbinding\b[^.;]{0,30}\bon the bias\b|\b(?:fabric|green|blue|red) on the true bias\b/i,
      ],
    ]),
    example: 'Make bias binding.',
    gives: 'bias',
    counterexample: 'The long edges are on the bias.',
  },
  {
    path: ['binding', 'cut as'],
    title: 'how the bias binding is cut',
    find: choice([
      [
        'one square',
        /\bbias binding from one (?:single )?square\b|\bcontinuous bias\b[^.;]{0,40}\bsquare\b/i,
      ],
    ]),
    example: 'Everyone sews a bias binding from one square of fabric.',
    gives: 'one square',
    counterexample: 'Cut one square of fabric.',
  },
  {
    path: ['backing', 'from'],
    title: 'the fabric of the backing',
    find: backingFabric,
    example: '- Fabric D, for the backing: 3½ yards',
    gives: 'D',
    counterexample: '- Fabric D, harbour wall: 3½ yards',
  },
];

/** The borders, from the inside out. */
import { type Claim, claims, type Row } from '../row.ts';
import { withoutSeams } from '../seams.ts';
import type { Clause } from '../text.ts';
import { fabricOf } from './fabricOf.ts';
import { lengthBetween } from './house.ts';
import { stripWidth } from './strip.ts';

const CORNERS = [
  ['mitred', /\bmit(?:red|ered|res?|ers?)\b/i],
  ['corner squares', /\bcorner (?:squares?|posts?)\b/i],
] as const;

/**
 * @param index from 0
 * @param of how many there are
 * @param fabric of which the border is, where only the fabrics tell the borders from each other
 */
export function borderRows(index: number, of: number, fabric?: string): Row[] {
  const isMeant = (clause: Clause) =>
    fabric !== undefined
      ? clause.speaksOf('part:border') && clause.nearest('fabric') === fabric
      : of === 1
        ? clause.speaksOf('part:border')
        : clause.speaksOf(`border:${index + 1}`) &&
          (clause.speaksOf('part:border') || clause.nearest('part') === undefined);
  const which = of === 1 ? '' : `${['inner', 'second', 'third', 'fourth'][index] ?? 'next'} `;
  const name = `the ${which}border`;
  return [
    {
      path: ['borders', index, 'finished'],
      title: `the finished width of ${name}`,
      find: claims((clause, text) => {
        if (!isMeant(clause)) return undefined;
        const { before, behind } = clause;
        const isFinished =
          clause.says('state:finished') >= 0.85 ||
          /\bborders? of \S*$/i.test(before) ||
          /^["”″]?[- ](?:wide )?(?:finished )?borders?\b/i.test(behind);
        const finished = isFinished ? lengthBetween(clause, 0, 20) : undefined;
        return finished ?? withoutSeams(stripWidth(clause, text), text);
      }),
      example: `From the **cream**, cut 6 strips 4½" wide for the ${which}border.`,
      gives: '4"',
      counterexample: `From the **cream**, cut 6 strips 4½" wide for the binding.`,
    },
    {
      path: ['borders', index, 'from'],
      title: `the fabric of ${name}`,
      find: fabricOf((clause, text) => isMeant(clause) && stripWidth(clause, text) !== undefined),
      example: `From the **cream**, cut 6 strips 4½" wide for the ${which}border.`,
      gives: 'cream',
      counterexample: `From the **cream**, cut 6 strips 4½" wide for the binding.`,
    },
    {
      path: ['borders', index, 'corners'],
      title: `the corners of ${name}`,
      find: (text) =>
        text.clauses.flatMap((clause): Claim[] => {
          const told = clause.count ?? clause.sides[0];
          const corners = CORNERS.find(([, words]) => words.test(clause.line.text))?.[0];
          if (!told || !corners || !isMeant(clause) || /\bbinding\b/i.test(clause.line.text)) return [];
          return [{ at: { start: told.start, end: told.end }, text: corners, plainness: 1 }];
        }),
      example: `From the **cream**, cut 6 strips 4½" wide for the ${which}border with its mitred corners.`,
      gives: 'mitred',
      counterexample: `From the **cream**, cut 6 strips 4½" wide for the ${which}border.`,
    },
  ];
}

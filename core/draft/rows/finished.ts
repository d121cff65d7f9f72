/** The finished size of the quilt, and whether it has a backing and a batting. */
import type { Claim, Row } from '../row.ts';
import type { Clause, Text } from '../text.ts';
import { writePair, writeTold } from '../write.ts';

const NOT_THE_QUILT =
  /\b(?:blocks?|units?|borders?|unfinished|before|cent(?:er|re)|backing|batting|wadding|back|top|rows?)\b/i;

/** Larger than any part (common practice: no quilt is under 10" wide). */
const SMALLEST = 10;

/** What stands in another unit as well is told once. */
function findFinished(text: Text): Claim[] {
  const all = everyFinished(text);
  const isMetric = ({ text }: Claim) => /\dcm|\d cm/.test(text);
  const [first] = all;
  return all.filter((claim) => first && isMetric(claim) === isMetric(first));
}

function everyFinished(text: Text): Claim[] {
  return text.clauses.flatMap((clause): Claim[] => {
    const [a, b] = clause.sides.length > 0 ? clause.sides : clause.grid;
    const at = a && { start: a.start, end: (b ?? a).end };
    if (!a || !at || clause.count || a.values.some((value) => value.compare(SMALLEST) < 0)) return [];
    if (NOT_THE_QUILT.test(`${clause.before.slice(-60)} ${clause.own}`)) return [];
    if (clause.says('part:quilt') < 0.6 && clause.says('state:finished') < 0.6) return [];
    const unit = a.unit ?? b?.unit;
    if (!unit) return [];
    if (b)
      return [
        {
          at,
          text: writePair(
            [
              { ...a, unit },
              { ...b, unit },
            ],
            text.pattern,
          ),
          plainness: plainnessOf(clause),
        },
      ];
    const shape = /^["”″)]*\s*(?:\(.{0,12}\) )?square\b/i.test(clause.behind)
      ? 'square'
      : /^["”″)]*\s*(?:across|round)\b/i.test(clause.behind) &&
          /\b(?:circle|round)\b/i.test(`${clause.sentence}`)
        ? 'circle'
        : undefined;
    return shape && a.values.length === 1
      ? [{ at, text: `${shape} ${writeTold(a, text.pattern)}`, plainness: plainnessOf(clause) }]
      : [];
  });
}

function plainnessOf({ says }: Clause): number {
  return says('state:finished') >= 0.85 ? 2 : 1;
}

export const FINISHED_ROW: Row = {
  path: ['finished'],
  title: 'the finished size of the quilt',
  find: findFinished,
  example: 'Finished size: 48" × 60"',
  gives: '48" x 60"',
  counterexample: 'Batting: 48" × 60"',
};

function mentions(words: RegExp): Row['find'] {
  return ({ clauses }) =>
    clauses.flatMap((clause) => {
      const told = clause.sides[0] ?? clause.count;
      if (!told || !words.test(clause.own)) return [];
      return [{ at: { start: told.start, end: told.end }, text: '{}', plainness: 1 }];
    });
}

export const LAYER_ROWS: readonly Row[] = [
  {
    path: ['backing'],
    title: 'the backing',
    find: mentions(/\bback(?:ing)?\b/i),
    example: 'Backing: 3½ yards',
    gives: '{}',
    counterexample: 'Border: 3½ yards',
  },
  {
    path: ['batting'],
    title: 'the batting',
    find: mentions(/\b(?:batting|wadding)\b/i),
    example: 'Wadding: 48" × 60"',
    gives: '{}',
    counterexample: 'Backing: 48" × 60"',
  },
];

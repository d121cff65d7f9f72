/** The blocks of the quilt: their finished sizes, and how many are made. */
import { type Claim, claims, type Row } from '../row.ts';
import { withoutSeams } from '../seams.ts';
import type { Clause } from '../text.ts';
import { writePair, writeTold } from '../write.ts';

/** @param name of the block @param of how many kinds there are */
export function blockRows(name: string, of: number): Row[] {
  const called = new RegExp(`\\b${name.replace(/[^\p{L}\p{N} ]/gu, '.')}s?\\b`, 'i');
  const isMeant = (clause: Clause) => {
    const isNamed = called.test(clause.own) || called.test(clause.sentence);
    if (!clause.speaksOf('part:block') && !isNamed) return false;
    return of === 1 || isNamed || clause.nearest('name') === `block.${name}`;
  };
  return [
    {
      path: ['blocks', name, 'finished'],
      title: of === 1 ? 'the finished size of the block' : `the finished size of the block “${name}”`,
      find: (text) =>
        text.clauses.flatMap((clause): Claim[] => {
          const [a, b] = clause.sides;
          if (!a || !isSized(clause) || /\b(?:borders?|units?|quilt|top)\b/i.test(clause.own)) return [];
          if (clause.count && !/^[^.;]*\bblocks?\b[^.;]*\beach\b/i.test(clause.own)) return [];
          const isDone = isFinished(clause) && isBlock(clause, called, of);
          const isRaw =
            isMeant(clause) && clause.says('state:measured', 'state:unfinished') >= 0.85 && of === 1;
          if (!isDone && !isRaw) return [];
          const [width, length] = isDone ? [a, b] : [withoutSeams(a, text), withoutSeams(b, text)];
          if (!width) return [];
          const isSquare = !length || writeTold(width, text.pattern) === writeTold(length, text.pattern);
          const size = isSquare ? writeTold(width, text.pattern) : writePair([width, length], text.pattern);
          return [{ at: { start: a.start, end: (b ?? a).end }, text: size, plainness: isDone ? 2 : 1 }];
        }),
      example: 'The block finishes at 12".',
      gives: '12"',
      counterexample: 'The border finishes at 12".',
    },
    {
      path: ['blocks', name, 'make'],
      title: of === 1 ? 'the number of blocks' : `the number of blocks “${name}”`,
      find: claims((clause) => {
        const { count, sides, grid, behind } = clause;
        if (!count || sides.length > 0 || grid.length > 0) return undefined;
        const noun =
          of === 1 ? `(?:[\\p{L}-]+ )?blocks` : `${name.replace(/[^\p{L}\p{N} ]/gu, '.')}(?:s| blocks?)`;
        return new RegExp(`^\\)?\\s*${noun}\\b`, 'iu').test(behind) &&
          !/\b(?:rows?|columns?|borders?)\b/i.test(clause.before.slice(-40) + clause.own)
          ? count
          : undefined;
      }),
      example: of === 1 ? 'Make 20 blocks.' : `Make 20 ${name} blocks.`,
      gives: '20',
      counterexample: 'Make 20 units.',
    },
  ];
}

/** In the sentence itself, or in the heading over "Block: 12" square". */
function isFinished({ says, before }: Clause): boolean {
  const strength = says('state:finished');
  return strength >= 0.85 || (strength >= 0.5 && /\bblocks?(?: size)?\W*$/i.test(before));
}

function isBlock(clause: Clause, called: RegExp, of: number): boolean {
  const around = `${clause.before} ${clause.own}`;
  return /\bblocks?\b/i.test(of === 1 ? `${around} ${clause.sentence}` : around) || called.test(around);
}

/** As large as a block may be (common practice: from 2" to 40"). */
function isSized({ sides }: Clause): boolean {
  return sides.every(
    ({ unit, values }) => unit && values.every((value) => value.compare(2) >= 0 && value.compare(40) <= 0),
  );
}

/** What a revision could not write, and nobody has written since. */
import { CODES } from '../findings/codes.ts';
import type { Finding } from '../findings/finding.ts';
import { GAP_MARKS } from '../findings/gap.ts';
import type { Manuscript } from '../manuscript/manuscript.ts';

export function findGaps({ passages }: Manuscript): Finding[] {
  return passages.flatMap((passage) =>
    [...passage.text.matchAll(GAP_MARKS)].map((mark): Finding => {
      const ranges = passage.toSource(mark.index, mark.index + mark[0].length);
      return {
        code: 'gap',
        severity: CODES.gap.severity,
        message: `Here something is missing for the size “${mark[1]}”: write it in place of the mark.`,
        start: ranges[0].start,
        end: ranges.at(-1)?.end ?? ranges[0].end,
        related: [],
        fixes: [],
      };
    }),
  );
}

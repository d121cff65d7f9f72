/** What a revision or a draft could not write, and nobody has written since. */
import { CODES } from '../findings/codes.ts';
import type { Finding } from '../findings/finding.ts';
import { GAP_MARKS } from '../findings/gap.ts';
import type { Manuscript } from '../manuscript/manuscript.ts';

/** A drafted block keeps what nobody told as a comment: `# strip: …  # why`. */
const IN_BLOCK = /^[^\S\n]*#[^\S\n](?:- )?(?<entry>[^#\n]*?):? …(?:[^\S\n]+# (?<why>.*))?$/gm;

export function findGaps(manuscript: Manuscript): Finding[] {
  return [...inText(manuscript), ...inBlocks(manuscript)];
}

function inBlocks({ fences }: Manuscript): Finding[] {
  return fences.flatMap((fence) =>
    [...fence.value.matchAll(IN_BLOCK)].map((gap): Finding => {
      const { entry = '', why = '' } = gap.groups ?? {};
      return {
        code: 'gap',
        severity: CODES.gap.severity,
        message: why || `Here “${entry}” is missing: write it, or take the line away.`,
        start: fence.toSource(gap.index + gap[0].search(/\S/)),
        end: fence.toSource(gap.index + gap[0].length),
        related: [],
        fixes: [],
      };
    }),
  );
}

function inText({ passages }: Manuscript): Finding[] {
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

/** The edits of "fix all": the preferred fix of every finding that has exactly one. */
import type { Edit, Finding } from '../findings/finding.ts';

export interface FixAll {
  readonly edits: readonly Edit[];
  /** How many findings these edits mend. */
  readonly mended: number;
}

/**
 * A fix whose edits meet those of an earlier one is left out whole: the next proofreading offers it again,
 * computed from the text as it then stands.
 */
export function fixAll(findings: readonly Pick<Finding, 'fixes'>[]): FixAll {
  const edits: Edit[] = [];
  let mended = 0;
  for (const { fixes } of findings) {
    const [fix, ...others] = fixes.filter(({ preferred }) => preferred);
    if (!fix || others.length > 0) continue;
    if (fix.edits.some((edit) => edits.some((taken) => meet(edit, taken)))) continue;
    edits.push(...fix.edits);
    mended++;
  }
  return { edits, mended };
}

/** Two insertions at one place meet too: nothing says which of them comes first. */
function meet(a: Edit, b: Edit): boolean {
  return (a.start < b.end && b.start < a.end) || a.start === b.start;
}

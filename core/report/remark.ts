/**
 * The proof as a plugin of remark: findings become messages of the file, in whatever pipeline its users have.
 *
 * It reads the source of the file, not the tree: a proof is of what the author wrote. It changes neither.
 */
import type { Root } from 'mdast';
import type { Plugin } from 'unified';
import type { VFile } from 'vfile';
import { proofread } from '../proof/proofread.ts';
import { accountOf } from './accountOf.ts';
import { findingAddress } from './findingWords.ts';
import { Lines } from './lines.ts';
import { toReport } from './proofread.ts';
import type { ReportedFinding } from './unaccounted.ts';

export interface RemarkOptions {
  /** Whether numbers that no figure accounts for are told too. */
  readonly strict?: boolean;
  /** Address of the folder of the reference: each message links to its page there. */
  readonly reference?: string;
}

export const SOURCE = 'measure-twice';

/** @param shipped address of the reference that comes with the program */
export function remarkPlugin(shipped: string): Plugin<[RemarkOptions?], Root> {
  return ({ strict = false, reference = shipped } = {}) =>
    (_tree, file) => {
      const source = String(file);
      const proof = proofread({ source });
      const lines = new Lines(source);
      const folder = reference.endsWith('/') ? reference : `${reference}/`;
      for (const finding of toReport(file.path ?? '', proof, strict).findings) {
        const message = tell(file, finding, lines);
        message.url = findingAddress(finding.code, folder);
        const account = accountOf(proof, finding);
        message.actual = source.slice(finding.start, finding.end);
        message.expected = expectedOf(finding, account?.expected);
      }
    };
}

function tell(file: VFile, { code, severity, message, start, end }: ReportedFinding, lines: Lines) {
  const place = { start: lines.position(start), end: lines.position(end) };
  const options = { place, source: SOURCE, ruleId: code };
  // Remark knows a third, weakest kind of message.
  return severity === 'hint' ? file.info(message, options) : file.message(message, options);
}

/** What may stand there instead: the right number, or the choice that the fixes offer at this very place. */
function expectedOf({ start, end, fixes }: ReportedFinding, right: string | undefined): string[] {
  if (right !== undefined) return [right];
  return fixes.flatMap(({ edits }) => {
    const [edit, ...others] = edits;
    return edit && others.length === 0 && edit.start === start && edit.end === end ? [edit.text] : [];
  });
}

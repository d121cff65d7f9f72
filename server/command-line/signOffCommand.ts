/** `measure-twice sign-off`: a technical editor puts her name to a manuscript as it stands. */

import { proofread } from '../../core/proof/proofread.ts';
import { sign } from '../../core/record/sign.ts';
import { signedState } from '../../core/record/signedState.ts';
import { needsWork, toReport } from '../../core/report/proofread.ts';
import { signedSentence } from '../../core/report/signed.ts';
import { textReport } from '../../core/report/text.ts';
import { CannotRun } from './cannotRun.ts';
import { readManuscripts } from './manuscriptFiles.ts';
import { addSignature, digestOf, readRecordFile, recordOf, today } from './records.ts';
import { terminalLayout } from './terminal.ts';

export interface SignOffOptions {
  readonly by: string;
  readonly asItStands: boolean;
}

/**
 * @returns the exit status: 1 when the manuscript was not signed because it has mistakes
 * @throws CannotRun when it cannot be read, or the record cannot be written
 */
export async function signOffCommand(path: string, { by, asItStands }: SignOffOptions): Promise<0 | 1> {
  const [manuscript, ...others] = await readManuscripts([path]);
  if (!manuscript || others.length > 0) throw new CannotRun(`Name one file; ${path} is a folder.`);
  const { source, use } = manuscript;
  const file = recordOf(manuscript.file);
  const name = recordOf(manuscript.path);
  const { signatures, complaints } = await readRecordFile(file, name);
  if (complaints.length > 0)
    throw new CannotRun(...complaints, 'Mend the record first; nothing was written.');
  const last = signatures.at(-1);
  const proof = proofread({ source, use, before: last ? [signedState(last)] : [] });
  if (!proof.pattern.stated)
    throw new CannotRun(`${manuscript.path} has no measure block, so there is nothing to sign off.`);
  const report = toReport(manuscript.path, proof, false);
  if (!asItStands && needsWork([report])) {
    process.stdout.write(textReport([report], { ...terminalLayout(), quiet: true, mended: 0 }));
    process.stdout.write(
      '\nIt was not signed off. Mend it first, or add --as-it-stands to accept it with these findings.\n',
    );
    return 1;
  }
  const signature = sign(proof, { by, on: today(), digest: digestOf(source) });
  await addSignature(file, signature, name);
  process.stdout.write(`${signedSentence(signature, manuscript.path)}\nThe record is ${name}.\n`);
  return 0;
}

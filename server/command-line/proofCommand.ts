/** `measure-twice proof`: proofreads files and folders, reports, and on request corrects. */
import { dirname, resolve } from 'node:path';
import { applyEdits } from '../../core/findings/finding.ts';
import type { Earlier } from '../../core/proof/earlier/earlier.ts';
import type { Proof } from '../../core/proof/proof.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { covers } from '../../core/record/covers.ts';
import type { Signature } from '../../core/record/signature.ts';
import { signedState } from '../../core/record/signedState.ts';
import { jsonReport } from '../../core/report/json.ts';
import { fixAll } from '../../core/report/preferred.ts';
import { needsWork, type Proofread, toReport } from '../../core/report/proofread.ts';
import { textReport } from '../../core/report/text.ts';
import { NAME, VERSION } from '../product.ts';
import { type ManuscriptFile, readManuscripts } from './manuscriptFiles.ts';
import { digestOf, lastSignatures } from './records.ts';
import { safeWrite } from './safeWrite.ts';
import { FILE_LAYOUT, Progress, terminalLayout } from './terminal.ts';
import { checkWritable, writeTexts } from './writeTexts.ts';

export interface ProofOptions {
  readonly format: 'text' | 'json' | 'sarif' | 'html';
  /** Address of the folder with the pages about the findings. */
  readonly reference: string;
  readonly out?: string;
  readonly fix: boolean;
  readonly strict: boolean;
  readonly quiet: boolean;
}

/** A correction can uncover another mistake, but not without end. */
const MOST_ROUNDS = 10;

interface Corrected {
  readonly file: ManuscriptFile;
  readonly source: string;
  readonly proof: Proof;
  readonly mended: number;
}

/**
 * @returns the exit status
 * @throws CannotRun before anything is written
 */
export async function proofCommand(paths: readonly string[], options: ProofOptions): Promise<0 | 1> {
  if (options.out !== undefined) await checkWritable(dirname(resolve(options.out)), options.out);
  const files = await readManuscripts(paths);
  const signatures = await lastSignatures(files);
  const results = proofreadAll(files, signatures, options);
  await writeTexts(results.map(({ file, source }) => ({ file, text: source })));
  const documents = results.map(({ file, source, proof }) => {
    const signature = signatures.get(file);
    const covering = signature && covers(signature, proof, digestOf(source));
    return toReport(file.path, proof, options.strict, covering);
  });
  const mended = results.reduce((sum, result) => sum + result.mended, 0);
  await write(await report(documents, mended, options), options.out);
  return needsWork(documents) ? 1 : 0;
}

function proofreadAll(
  files: readonly ManuscriptFile[],
  signatures: ReadonlyMap<ManuscriptFile, Signature>,
  { fix, quiet }: ProofOptions,
): Corrected[] {
  const progress = new Progress(files.length, quiet);
  try {
    return files.map((file) => {
      progress.next(file.path);
      const signature = signatures.get(file);
      return corrected(file, signature ? [signedState(signature)] : [], fix ? MOST_ROUNDS : 0);
    });
  } finally {
    progress.end();
  }
}

function corrected(file: ManuscriptFile, before: readonly Earlier[], rounds: number): Corrected {
  const { use } = file;
  let { source } = file;
  let proof = proofread({ source, use, before });
  let mended = 0;
  for (let round = 0; round < rounds; round++) {
    const fixes = fixAll(proof.findings);
    if (fixes.mended === 0) break;
    source = applyEdits(source, fixes.edits);
    mended += fixes.mended;
    proof = proofread({ source, use, before });
  }
  return { file, source, proof, mended };
}

async function report(
  documents: readonly Proofread[],
  mended: number,
  { format, reference, out, quiet }: ProofOptions,
): Promise<string> {
  switch (format) {
    case 'json':
      return asJson(jsonReport(documents));
    case 'sarif': {
      const { sarifReport } = await import('../../core/report/sarif/log.ts');
      return asJson(sarifReport(documents, { name: NAME, version: VERSION, reference }));
    }
    case 'html': {
      const { htmlSheet } = await import('../../core/report/sheet/page.ts');
      return htmlSheet(documents, { name: NAME, version: VERSION });
    }
    case 'text': {
      const layout = out === undefined ? terminalLayout() : FILE_LAYOUT;
      return textReport(documents, { ...layout, quiet, mended });
    }
  }
}

function asJson(report: unknown): string {
  return `${JSON.stringify(report, undefined, 2)}\n`;
}

async function write(text: string, out: string | undefined): Promise<void> {
  if (out !== undefined) await safeWrite(resolve(out), text);
  else process.stdout.write(text);
}

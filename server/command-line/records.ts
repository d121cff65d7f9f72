/** Records of signatures on disk: a file beside each manuscript that was signed off. */
import { createHash } from 'node:crypto';
import { readRecord, type SignatureRecord } from '../../core/record/read.ts';
import { digestible, type Signature } from '../../core/record/signature.ts';
import { appendSignature } from '../../core/record/write.ts';
import { Lines } from '../../core/report/lines.ts';
import { readText } from '../entry/nodeFiles.ts';
import { alone } from './alone.ts';
import { CannotRun, reasonOf } from './cannotRun.ts';
import { safeWrite } from './safeWrite.ts';

/** `runner.signed.yaml` for `runner.md`. */
export function recordOf(manuscript: string): string {
  return `${manuscript.replace(/\.md$/i, '')}.signed.yaml`;
}

/** What is signed: the same for a text whose lines end otherwise. */
export function digestOf(source: string): string {
  return `sha256:${createHash('sha256').update(digestible(source)).digest('hex')}`;
}

/** The day on this machine: `2026-11-25`. */
export function today(): string {
  const now = new Date();
  const parts = [now.getFullYear(), now.getMonth() + 1, now.getDate()];
  return parts.map((part) => String(part).padStart(2, '0')).join('-');
}

export interface RecordFile extends SignatureRecord {
  /** What is wrong with it, in lines that name the place. */
  readonly complaints: readonly string[];
}

/**
 * The signatures of a manuscript; none where there is no record.
 *
 * @param name of the record, as complaints call it
 * @throws CannotRun when there is one that cannot be read
 */
export async function readRecordFile(file: string, name = file): Promise<RecordFile> {
  return toRecord(await recordText(file, name), name);
}

/**
 * The last signature of each manuscript that has one. What cannot be read of a record is told on standard error, and
 * counts as if it were not there.
 *
 * @throws CannotRun when a record cannot be read at all
 */
export async function lastSignatures<File extends { readonly file: string; readonly path: string }>(
  files: readonly File[],
): Promise<Map<File, Signature>> {
  const found = new Map<File, Signature>();
  for (const file of files) {
    const { signatures, complaints } = await readRecordFile(recordOf(file.file), recordOf(file.path));
    for (const complaint of complaints) console.error(`measure-twice: ${complaint}`);
    const last = signatures.at(-1);
    if (last) found.set(file, last);
  }
  return found;
}

/**
 * Puts a signature behind all earlier ones.
 *
 * @throws CannotRun when the record cannot be written, or holds something that cannot be read: it is then as it was
 */
export function addSignature(file: string, signature: Signature, name = file): Promise<void> {
  return alone(file, async () => {
    const text = await recordText(file, name);
    const { complaints } = toRecord(text, name);
    if (complaints.length > 0)
      throw new CannotRun(...complaints, 'Mend the record first; nothing was written.');
    await safeWrite(file, appendSignature(text, signature));
  });
}

function toRecord(text: string | undefined, name: string): RecordFile {
  const record = readRecord(text ?? '');
  const lines = new Lines(text ?? '');
  const complaints = record.problems.map(({ start, message }) => {
    const { line, column } = lines.position(start);
    return `${name}:${line}:${column}: ${message}`;
  });
  return { ...record, complaints };
}

async function recordText(file: string, name: string): Promise<string | undefined> {
  try {
    return await readText(file);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw new CannotRun(`Cannot read ${name}: ${reasonOf(error)}.`);
  }
}

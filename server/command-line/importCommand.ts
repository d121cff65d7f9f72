/** `measure-twice import`: a word processor's file, a web page or plain text becomes a manuscript in Markdown. */
import { access, readFile } from 'node:fs/promises';
import { extname, resolve } from 'node:path';
import { CannotRun, reasonOf } from './cannotRun.ts';
import { decoded } from './import/decoded.ts';
import { fromHtml, type Imported } from './import/markdown.ts';
import { fromPlainText } from './import/plainText.ts';
import { safeWrite } from './safeWrite.ts';

export interface ImportOptions {
  readonly out?: string;
  readonly force: boolean;
}

/** @throws CannotRun when the file cannot be read, or another would be overwritten; then nothing is written */
export async function importCommand(file: string, { out, force }: ImportOptions): Promise<void> {
  if (out !== undefined && !force && (await exists(out))) {
    throw new CannotRun(`${out} is there already; add --force to write over it.`);
  }
  const imported = await read(file);
  for (const line of reportOf(imported, out ?? 'line')) console.error(line);
  if (out !== undefined) await safeWrite(resolve(out), imported.markdown);
  else process.stdout.write(imported.markdown);
}

async function exists(file: string): Promise<boolean> {
  return access(file).then(
    () => true,
    () => false,
  );
}

async function read(file: string): Promise<Imported> {
  const convert = CONVERTERS[extname(file).toLowerCase()];
  if (!convert) throw new CannotRun(`Cannot read ${file}: ${otherKind(extname(file).toLowerCase())}`);
  let bytes: Uint8Array;
  try {
    bytes = await readFile(file);
  } catch (error) {
    throw new CannotRun(`Cannot read ${file}: ${reasonOf(error)}.`);
  }
  return convert(bytes, file);
}

type Convert = (bytes: Uint8Array, file: string) => Imported | Promise<Imported>;

const CONVERTERS: Readonly<Record<string, Convert>> = {
  '.docx': fromWordFile,
  '.html': (bytes, file) => fromHtml(decoded(bytes, file)),
  '.htm': (bytes, file) => fromHtml(decoded(bytes, file)),
  '.txt': (bytes, file) => fromPlainText(decoded(bytes, file)),
};

function otherKind(extension: string): string {
  if (extension === '.doc' || extension === '.odt' || extension === '.rtf' || extension === '.pages')
    return 'open it in the program that wrote it and save it as .docx first.';
  if (extension === '.md' || extension === '.markdown') return 'it is Markdown already.';
  return 'only .docx, .html and .txt files can be imported.';
}

async function fromWordFile(bytes: Uint8Array, file: string): Promise<Imported> {
  const { wordFileToHtml } = await import('./import/wordFile.ts');
  let html: string;
  try {
    html = await wordFileToHtml(bytes);
  } catch {
    throw new CannotRun(`Cannot read ${file}: it is damaged, or not a .docx file.`);
  }
  return fromHtml(html);
}

/** A line for every repair, every doubt, and everything that was left out. */
function* reportOf({ notes, dropped }: Imported, name: string): Generator<string> {
  const place = (line: number) => (name === 'line' ? `line ${line}` : `${name}:${line}`);
  for (const { line, was, mended, reason } of notes) {
    yield mended === undefined
      ? `${place(line)}: please look at “${was}”: ${reason}. It was left as it is.`
      : `${place(line)}: “${was}” is now “${mended}”: ${reason}.`;
  }
  for (const [what, count] of dropped) {
    yield `Left out: ${what}${count === 1 ? '' : `, ${count} times`}.`;
  }
}

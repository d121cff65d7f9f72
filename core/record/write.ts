/** A signature -> the section of the record file that is put behind all earlier ones. */
import { Document, isCollection, isScalar, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import type { KeptLine, KeptNumber } from '../proof/earlier/keptLine.ts';
import type { WrittenFigure, WrittenLine, WrittenNumber, WrittenSignature } from './schema.ts';
import type { Signature, SignedFigure } from './signature.ts';

/** What stands at the head of a new file. */
export const RECORD_HEAD =
  '# Who signed this manuscript off, and what they signed. Each section is one signature; the newest stands last.\n';

/**
 * The text of a record file with one more signature. What stands in it stays as it is, to the last character, so that
 * nothing is lost and versions show what was added.
 */
export function appendSignature(record: string | undefined, signature: Signature): string {
  const before = record || RECORD_HEAD;
  return `${before}${/[\r\n]$/.test(before) ? '' : '\n'}${writeSignature(signature)}`;
}

/** Always the same text for the same signature, with a line of its own for each input, figure and number. */
export function writeSignature(signature: Signature): string {
  const document = new Document(toWritten(signature));
  const root = document.contents as unknown as YAMLMap;
  onOneLine(root.get('sizes', true));
  for (const name of ['inputs', 'figures'])
    for (const { key, value } of (root.get(name) as YAMLMap<Scalar>).items) {
      key.value = plain(String(key.value));
      onOneLine(value);
    }
  for (const line of (root.get('lines') as YAMLSeq<YAMLMap>).items) {
    onOneLine(line.get('under', true));
    onOneLine(line.get('text', true));
    for (const number of (line.get('numbers') as YAMLSeq).items) onOneLine(number);
  }
  return `---\n${document.toString({ lineWidth: 0, doubleQuotedMinMultiLineLength: Number.MAX_SAFE_INTEGER })}`;
}

function onOneLine(node: unknown): void {
  if (isCollection(node)) node.flow = true;
  if (isScalar(node) && String(node.value).includes('\n')) node.type = 'QUOTE_DOUBLE';
}

function toWritten(signature: Signature): WrittenSignature {
  const { by, on, digest, system, sizes, inputs, figures, lines } = signature;
  return {
    record: 1,
    'signed by': by,
    on,
    text: digest,
    system,
    sizes: [...sizes],
    inputs: Object.fromEntries(
      inputs.map(({ path, text }, index) => [index + 1, { at: [...path], is: plain(text) }]),
    ),
    figures: Object.fromEntries([...figures].map(([id, figure]) => [id, toFigure(figure, sizes)])),
    lines: lines.map(toLine),
  };
}

function toFigure({ rule, values, from }: SignedFigure, sizes: readonly string[]): WrittenFigure {
  const texts = sizes.map((size) => values.get(size));
  const isOne = texts[0] !== undefined && new Set(texts).size === 1;
  const value = isOne
    ? plain(texts[0] ?? '')
    : Object.fromEntries([...values].map(([size, text]) => [size, plain(text)]));
  const inputs = from.map((index) => index + 1);
  return rule === 'exact' ? { is: value, from: inputs } : { 'at least': value, from: inputs };
}

/** A whole number needs no quotation marks. */
function plain(text: string): string | number {
  return String(Number(text)) === text ? Number(text) : text;
}

function toLine({ text, headings, step, isRow, numbers }: KeptLine): WrittenLine {
  return {
    ...(headings.length > 0 ? { under: [...headings] } : {}),
    ...(step === '' ? {} : { step: plain(step) }),
    ...(isRow ? { row: true } : {}),
    text,
    numbers: numbers.map((number) => toNumber(number, text)),
  };
}

function toNumber({ start, end, account, figure, size, column }: KeptNumber, text: string): WrittenNumber {
  const how: Partial<WrittenNumber> =
    account === 'not-measurement'
      ? { 'measures nothing': true }
      : account === 'verified'
        ? { verified: figure ?? '' }
        : { accepted: account, ...(figure === undefined ? {} : { figure }) };
  return {
    at: start,
    is: plain(text.slice(start, end)),
    ...how,
    ...(size === undefined ? {} : { size }),
    ...(column === undefined ? {} : { column }),
  };
}

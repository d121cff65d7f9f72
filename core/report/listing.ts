/** Every number of a manuscript with what it was read as, and because of which words. */
import stringWidth from 'string-width';
import type { ReadNumber } from '../manuscript/manuscript.ts';
import type { Account, AccountKind, Proof } from '../proof/proof.ts';
import { toFractionText } from '../quantity/rational.ts';
import { excerpt } from './excerpt.ts';
import { explainNumber } from './explanation.ts';
import { valueLine } from './explanationText.ts';
import { Lines, type Position } from './lines.ts';
import type { Layout } from './paint.ts';
import { indented } from './paragraph.ts';
import { placeOf } from './place.ts';

/** What each kind of number is called; the keys are those of the JSON report. */
const KINDS: Readonly<Record<ReadNumber['kind'], string>> = {
  count: 'A count',
  length: 'A length',
  size: 'One side of a size',
  yardage: 'A length of fabric to buy',
  'fraction-of': 'A part of something',
  other: 'A number',
};

/** A longer number pushes its own explanation to the right only. */
const WIDEST_NUMBER = 12;

/** Each line of the manuscript that holds numbers, and below it a paragraph for each of them; ends with a line end. */
export function textListing(path: string, proof: Proof, { paint, width }: Layout): string {
  const { accounts, manuscript } = proof;
  if (accounts.length === 0) return `${path} holds no number.\n`;
  const lines = new Lines(manuscript.source);
  const gutter = String(lines.position(manuscript.source.length).line).length + 2;
  const widest = Math.max(...accounts.map(({ number }) => stringWidth(flat(number.text))));
  const column = Math.min(widest, WIDEST_NUMBER);
  const written: string[] = [];
  let shown: string | undefined;
  for (const account of accounts) {
    const { start, end } = placeOf(account.number);
    const { line, column: at } = lines.position(start);
    const text = lines.text(line);
    const from = at - 1;
    const cut = excerpt(
      text,
      from,
      Math.min(from + end - start, text.length),
      width - gutter - 3,
    ).line.trimEnd();
    const head = `${String(line).padStart(gutter)} │ ${cut}`;
    if (head !== shown) written.push(...(shown === undefined ? [] : ['']), paint.strong(head));
    shown = head;
    const indent = ' '.repeat(gutter + 3 + column + 2);
    const number = flat(account.number.text);
    const label = ' '.repeat(gutter + 3) + number + ' '.repeat(Math.max(column - stringWidth(number), 0) + 2);
    const [first = '', ...rest] = meaningOf(proof, account).map((one) => indented(one, indent, width));
    written.push(label + first.trimStart(), ...rest.map((one) => paint.faint(one)));
  }
  return `${[...written, '', summary(path, proof)].join('\n')}\n`;
}

function flat(text: string): string {
  return text.replace(/\s+/g, ' ');
}

/** What it is and whether it is right; then why it was taken for this. */
function meaningOf(proof: Proof, account: Account): string[] {
  const explanation = explainNumber(proof, account);
  if (!explanation) return [unexplained(proof, account)];
  const { verdict, workingOf, evidence } = explanation;
  const size = workingOf === undefined ? '' : ` This one is for ${workingOf}.`;
  const what = `${valueLine(explanation)}.${size}${verdict === undefined ? '' : ` ${verdict}`}`;
  return [what, ...(evidence.length > 0 ? [`Why: ${evidence.join('; ')}.`] : [])];
}

function unexplained({ pattern, findings }: Proof, { number, reason, code }: Account): string {
  if (reason !== undefined) return `Not a measurement: ${reason}.`;
  const { kind, value, unit } = number;
  const what = `${KINDS[kind]}: ${mixed(toFractionText(value))}${unit ? ` ${unit}` : ''}.`;
  const { start } = placeOf(number);
  const found = findings.find((finding) => finding.code === code && finding.start === start);
  if (found) return `${what} ${found.message}`;
  return pattern.stated
    ? `${what} The words do not say surely which figure it is, so nobody has checked it.`
    : what;
}

/** `9/4` as `2 1/4`. */
function mixed(text: string): string {
  const [numerator, denominator] = text.split('/').map(BigInt);
  if (numerator === undefined || denominator === undefined || numerator < denominator) return text;
  return `${numerator / denominator} ${numerator % denominator}/${denominator}`;
}

function summary(path: string, { accounts, pattern }: Proof): string {
  const count = accounts.length === 1 ? '1 number' : `${accounts.length} numbers`;
  const known = accounts.filter(({ tie }) => tie !== undefined).length;
  return pattern.stated
    ? `${count} in ${path}, of which ${known === 1 ? '1 is read as a figure' : `${known} are read as figures`} of the pattern.`
    : `${count} in ${path}. Without a measure block they can only be compared with each other.`;
}

export interface JsonListing {
  readonly version: 1;
  readonly path: string;
  readonly numbers: readonly {
    readonly text: string;
    readonly start: Position;
    readonly end: Position;
    readonly kind: ReadNumber['kind'];
    readonly value: string;
    readonly unit: string | null;
    readonly account: AccountKind;
    /** What it was read as: the name of the figure, and its title. */
    readonly figure: string | null;
    readonly title: string | null;
    readonly size: string | null;
    /** What the figure is in each size; the name of the only size of a pattern is empty. */
    readonly values: Readonly<Record<string, string>>;
    /** Why it was read so; for a number that is no measurement, why it is none. */
    readonly because: readonly string[];
  }[];
}

export function jsonListing(path: string, proof: Proof): JsonListing {
  const lines = new Lines(proof.manuscript.source);
  return {
    version: 1,
    path,
    numbers: proof.accounts.map(({ number, kind, tie, reason }) => {
      const { start, end } = placeOf(number);
      const figure = tie?.figure;
      return {
        text: number.text,
        start: lines.position(start),
        end: lines.position(end),
        kind: number.kind,
        value: toFractionText(number.value),
        unit: number.unit ?? null,
        account: kind,
        figure: figure?.id ?? null,
        title: figure?.title ?? null,
        size: tie?.size ?? null,
        values: Object.fromEntries(
          [...(figure?.values ?? [])].map(([size, value]) => [
            size,
            proof.ledger.show.figure(value, figure?.kind ?? 'count'),
          ]),
        ),
        because: tie?.evidence ?? (reason === undefined ? [] : [reason]),
      };
    }),
  };
}

/** The report for people who read it in a terminal. */
import type { Severity } from '../findings/finding.ts';
import { coverageLabel, coverageSentence, sumCoverage } from './coverage.ts';
import { excerpt } from './excerpt.ts';
import { Lines } from './lines.ts';
import type { Layout, Paint } from './paint.ts';
import { indented } from './paragraph.ts';
import { fixAll } from './preferred.ts';
import type { Proofread } from './proofread.ts';
import { coveringSentence } from './signed.ts';
import type { ReportedFinding } from './unaccounted.ts';

export interface TextOptions extends Layout {
  /** Mistakes and warnings only. */
  readonly quiet: boolean;
  /** How many mistakes were corrected before this report. */
  readonly mended: number;
}

/** What a severity is called at the cutting table. */
const WORDS: Readonly<Record<Severity, string>> = { error: 'Mistake', warning: 'Warning', hint: 'Hint' };
const PAINTS: Readonly<Record<Severity, keyof Paint>> = {
  error: 'mistake',
  warning: 'warning',
  hint: 'hint',
};

/** All findings and the coverage; ends with a line end, or is empty. */
export function textReport(documents: readonly Proofread[], options: TextOptions): string {
  const paragraphs = documents.flatMap(({ path, proof, findings }) => {
    const lines = new Lines(proof.manuscript.source);
    return findings
      .filter(({ severity }) => !options.quiet || severity !== 'hint')
      .map((finding) => findingText(path, finding, lines, options));
  });
  if (!options.quiet) paragraphs.push(summary(documents, options));
  return paragraphs.map((paragraph) => `${paragraph}\n`).join('\n');
}

function findingText(path: string, finding: ReportedFinding, lines: Lines, { paint, width }: Layout): string {
  const colour = paint[PAINTS[finding.severity]];
  const { line, column } = lines.position(finding.start);
  const text = [
    `${colour(paint.strong(WORDS[finding.severity]))}  ${path}:${line}:${column}`,
    indented(finding.message, '  ', width),
    '',
    ...marked(finding, lines, colour, width),
  ];
  const related = relatedText(finding, lines);
  if (related) text.push(indented(related, '  ', width));
  for (const [index, { title }] of finding.fixes.entries()) {
    // Several fixes are a choice.
    text.push(indented(`${paint.good(index === 0 ? 'To fix it:' : 'or:')} ${title}`, '  ', width));
  }
  return text.join('\n');
}

/** One place is told in full; a list of inputs would hide the mistake, so only their lines are named. */
function relatedText({ related }: ReportedFinding, lines: Lines): string | undefined {
  const [first] = related;
  if (!first) return undefined;
  const places = [...new Set(related.map(({ start }) => lines.position(start).line))].sort((a, b) => a - b);
  if (related.length === 1) return `See line ${places[0]}: ${first.message}`;
  if (places.length === 1) return `See line ${places[0]}.`;
  return `See lines ${places.slice(0, -1).join(', ')} and ${places.at(-1)}.`;
}

/** The line of the manuscript, and under it a mark below what the finding is about. */
function marked(
  finding: ReportedFinding,
  lines: Lines,
  colour: (text: string) => string,
  width: number,
): string[] {
  const { line, offset, column } = lines.position(finding.start);
  const gutter = `  ${String(line).padStart(4)} │ `;
  const text = lines.text(line);
  const start = column - 1;
  const end = Math.min(start + finding.end - offset, text.length);
  const shown = excerpt(text, start, end, width - gutter.length);
  return [gutter + shown.line, `${' '.repeat(gutter.length - 2)}│ ${colour(shown.mark)}`];
}

function summary(documents: readonly Proofread[], { paint, width, mended }: TextOptions): string {
  const text = [verdict(documents, paint)];
  if (mended > 0) text.unshift(paint.good(`${counted(mended, 'mistake')} corrected.`));
  if (documents.length > 1) text.push(...perDocument(documents, paint));
  const manuscripts = documents.filter(({ proof }) => proof.pattern.stated);
  if (manuscripts.length > 0) {
    text.push(coverageSentence(sumCoverage(documents.map(({ proof }) => proof.coverage))));
  } else if (documents.length > 0) {
    text.push('Without a measure block the numbers can only be compared with each other.');
  }
  for (const { path, proof, covering } of documents) {
    const signed = covering && coveringSentence(covering, proof.manuscript.source);
    if (signed) text.push(documents.length > 1 ? `${path}: ${signed}` : signed);
  }
  const offer = fixOffer(documents);
  if (offer) text.push(offer);
  return text.map((line) => indented(line, '', width)).join('\n');
}

function fixOffer(documents: readonly Proofread[]): string | undefined {
  const mended = documents.reduce((sum, one) => sum + fixAll(one.findings).mended, 0);
  if (mended === 0) return undefined;
  const all = documents.reduce((sum, { findings }) => sum + findings.length, 0);
  const which = mended < all ? `${mended} of them` : all === 1 ? 'It' : 'All of them';
  return `${which} can be corrected for you: run the same command with --fix.`;
}

/** `2 mistakes and 1 warning in 1 of 3 manuscripts.` */
function verdict(documents: readonly Proofread[], paint: Paint): string {
  if (documents.length === 0) return 'There is no manuscript here.';
  const findings = documents.flatMap((one) => one.findings);
  const manuscripts = counted(documents.length, 'manuscript');
  if (findings.length === 0) return paint.good(`No mistake found in ${manuscripts}.`);
  const parts = (['error', 'warning', 'hint'] as const).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [paint[PAINTS[severity]](counted(count, WORDS[severity].toLowerCase()))];
  });
  const concerned = documents.filter((one) => one.findings.length > 0).length;
  return `${parts.join(', ')} in ${concerned === documents.length ? manuscripts : `${concerned} of ${manuscripts}`}.`;
}

function perDocument(documents: readonly Proofread[], paint: Paint): string[] {
  const labels = documents.map(({ proof }) =>
    proof.pattern.stated ? coverageLabel(proof.coverage) : 'no measure block',
  );
  const widest = Math.max(...labels.map((label) => label.length));
  return documents.map(({ path, proof, findings }, index) => {
    const sign = findings.length > 0 ? paint.mistake('✗') : proof.pattern.stated ? paint.good('✓') : '·';
    return `  ${sign} ${(labels[index] ?? '').padStart(widest)}  ${path}`;
  });
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

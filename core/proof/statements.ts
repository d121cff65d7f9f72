/** Ties by statement: what the `states` entries of the block say that the author believes. */
import type { Pattern } from '../block/pattern.ts';
import type { Quantity } from '../block/values/length.ts';
import type { PerSize, Size } from '../block/values/perSize.ts';
import { listed } from '../block/words.ts';
import type { Figure } from '../figures/figure.ts';
import type { Ledger } from '../figures/ledger.ts';
import { CODES, type Code } from '../findings/codes.ts';
import type { Finding, Fix, Range } from '../findings/finding.ts';
import { readNumberAt } from '../quantity/read.ts';
import { type Assessment, assess } from './assess.ts';
import { isExcused, noSuchFigure } from './excuse.ts';
import type { Tie } from './proof.ts';
import { isSame } from './sizeOf.ts';
import type { SlipFinder } from './slips/slipFinder.ts';
import type { Staleness } from './stale.ts';

/** One stated value, and how it came out. */
export interface Statement extends Range {
  readonly tie: Tie;
  readonly assessment: Assessment;
}

export interface Statements {
  readonly statements: readonly Statement[];
  readonly findings: readonly Finding[];
}

export function checkStatements(
  source: string,
  pattern: Pattern,
  ledger: Ledger,
  staleness?: Staleness,
  slips?: SlipFinder,
): Statements {
  const checking = new Checking(source, pattern, ledger, staleness, slips);
  for (const [id, stated] of Object.entries(pattern.entries.states ?? {})) checking.check(id, stated);
  return checking;
}

class Checking implements Statements {
  readonly statements: Statement[] = [];
  readonly findings: Finding[] = [];
  readonly #source: string;
  readonly #pattern: Pattern;
  readonly #ledger: Ledger;
  readonly #staleness: Staleness | undefined;
  readonly #slips: SlipFinder | undefined;

  constructor(
    source: string,
    pattern: Pattern,
    ledger: Ledger,
    staleness: Staleness | undefined,
    slips: SlipFinder | undefined,
  ) {
    this.#source = source;
    this.#pattern = pattern;
    this.#ledger = ledger;
    this.#staleness = staleness;
    this.#slips = slips;
  }

  check(id: string, stated: PerSize<Quantity>): void {
    const figure = this.#ledger.figure(id);
    if (!figure) {
      this.#unknown(id);
      return;
    }
    const statements = this.#pattern.sizes.flatMap((size) => this.#statement(figure, stated, size) ?? []);
    this.statements.push(...statements);
    const isSingle = stated.form === 'same';
    const deciding = isSingle ? decidingOf(figure, statements) : statements;
    const findings = deciding.flatMap(({ assessment }) => assessment.finding ?? []);
    const [first] = findings;
    if (isSingle && first && deciding.length > 1)
      this.findings.push(this.#differing(figure, first, deciding));
    else this.findings.push(...findings);
  }

  #statement(figure: Figure, stated: PerSize<Quantity>, at: Size): Statement | undefined {
    const range = this.#pattern.place(['states', figure.id, ...stated.pathAt(at)]);
    const value = figure.values.get(at.name);
    const amount = stated.at(at);
    const written = amount && readNumberAt(amount.text, 0);
    if (!range || !value || !written) return undefined;
    const standing = {
      value: written.value,
      unit: amount.kind === 'length' ? amount.unit : undefined,
      written,
      text: amount.text,
      ranges: [range] as const,
      around: undefined,
    };
    const size = isSame(figure, this.#pattern) ? null : at.name || null;
    const tie: Tie = { figure, size, value, evidence: ['the block states it'] };
    const subject = { ...tie, show: this.#ledger.show };
    const assessment = assess(standing, subject, {
      pattern: this.#pattern,
      ledger: this.#ledger,
      source: this.#source,
      staleness: this.#staleness,
      slips: this.#slips,
    });
    return { ...range, tie, assessment: this.#inYaml(assessment, amount.text, range) };
  }

  /** The fixes as they must stand in the block. */
  #inYaml({ finding, ...assessment }: Assessment, text: string, range: Range): Assessment {
    if (!finding) return { ...assessment, finding };
    const fixes = finding.fixes.flatMap((fix): Fix[] => {
      const edits = fix.edits.map((edit) => {
        const written = writtenLike(this.#source.slice(range.start, range.end), text, edit.text);
        return written === undefined ? [] : [{ ...edit, text: written }];
      });
      return edits.every(({ length }) => length > 0) ? [{ ...fix, edits: edits.flat() }] : [];
    });
    return { ...assessment, finding: { ...finding, fixes } };
  }

  /** One value that is stated for all sizes, where each has its own: no other single value would be right. */
  #differing(
    figure: Figure,
    { code, start, end, related }: Finding,
    statements: readonly Statement[],
  ): Finding {
    const values = statements.map(({ tie, assessment }) => ({
      size: tie.size,
      right: assessment.expected ?? '',
    }));
    const words = listed(
      values.map(({ size, right }) => `${right} for “${size}”`),
      'and',
    );
    const text = `[${values.map(({ right }) => (right.includes(',') ? `'${right}'` : right)).join(', ')}]`;
    const isWhole = values.length === this.#pattern.sizes.length;
    return {
      ...report(code, { start, end }, `${figure.title} differs between the sizes: it is ${words}.`),
      related,
      fixes: isWhole ? [{ title: `Change to ${text}`, preferred: true, edits: [{ start, end, text }] }] : [],
    };
  }

  #unknown(id: string): void {
    const place = this.#pattern.keyPlace(['states', id]);
    if (!place || isExcused(id, this.#pattern, this.#ledger)) return;
    this.findings.push(report('unknown-figure', place, noSuchFigure(id, this.#pattern, this.#ledger)));
  }
}

/** One value for all sizes: one statement where all sizes agree, and where enough for the most is enough for all. */
function decidingOf({ rule }: Figure, statements: readonly Statement[]): readonly Statement[] {
  const [first, ...others] = statements;
  if (!first || others.every(({ tie }) => tie.value.shown.equals(first.tie.value.shown)))
    return first ? [first] : [];
  if (rule === 'exact') return statements;
  return [
    others.reduce((most, one) => (one.tie.value.need.compare(most.tie.value.need) > 0 ? one : most), first),
  ];
}

/** `text` with the quotation marks that `old` has in the source; `undefined` for a value over several lines. */
function writtenLike(source: string, old: string, text: string): string | undefined {
  const single = (value: string) => `'${value.replaceAll("'", "''")}'`;
  // In a mapping between braces a bare comma would end the value.
  if (source === old) return text.includes(',') && !old.includes(',') ? single(text) : text;
  if (source === single(old)) return single(text);
  return source.startsWith('"') && !/[\r\n]/.test(source) ? JSON.stringify(text) : undefined;
}

function report(code: Code, { start, end }: Range, message: string): Finding {
  return { code, severity: CODES[code].severity, message, start, end, related: [], fixes: [] };
}

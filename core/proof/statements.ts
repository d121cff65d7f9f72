/** Ties by statement: what the `states` entries of the block say that the author believes. */
import type { Pattern } from '../block/pattern.ts';
import type { Ledger } from '../figures/ledger.ts';
import { CODES } from '../findings/codes.ts';
import type { Finding, Range } from '../findings/finding.ts';
import { readNumberAt } from '../quantity/read.ts';
import { type Assessment, assess } from './assess.ts';
import { isExcused, noSuchFigure } from './excuse.ts';
import type { Tie } from './proof.ts';

/** One stated value, and how it came out. */
export interface Statement extends Range {
  readonly tie: Tie;
  readonly assessment: Assessment;
}

export interface Statements {
  readonly statements: readonly Statement[];
  readonly findings: readonly Finding[];
}

export function checkStatements(source: string, pattern: Pattern, ledger: Ledger): Statements {
  const statements: Statement[] = [];
  const findings: Finding[] = [];
  for (const [id, stated] of Object.entries(pattern.entries.states ?? {})) {
    const figure = ledger.figure(id);
    if (!figure) {
      const place = pattern.keyPlace(['states', id]);
      if (place && !isExcused(id, pattern, ledger))
        findings.push(unknown(place, noSuchFigure(id, pattern, ledger)));
      continue;
    }
    const seen = new Set<number>();
    for (const size of pattern.sizes) {
      const range = pattern.place(['states', id, ...stated.pathAt(size)]);
      const value = figure.values.get(size.name);
      const amount = stated.at(size);
      if (!range || !value || !amount) continue;
      const text = source.slice(range.start, range.end);
      const written = readNumberAt(text, 0);
      if (!written) continue;
      const unit = amount.kind === 'length' ? amount.unit : undefined;
      const standing = {
        value: written.value,
        unit,
        written,
        text,
        ranges: [range] as const,
        around: undefined,
      };
      const tie: Tie = { figure, size: size.name || null, value, evidence: ['the block states it'] };
      const assessment = assess(standing, { ...tie, show: ledger.show }, { pattern, ledger, source });
      statements.push({ ...range, tie, assessment });
      // One value for all sizes is reported for the first size that contradicts it.
      if (assessment.finding && !seen.has(range.start)) {
        findings.push(assessment.finding);
        seen.add(range.start);
      }
    }
  }
  return { statements, findings };
}

function unknown({ start, end }: Range, message: string): Finding {
  const code = 'unknown-figure';
  return { code, severity: CODES[code].severity, message, start, end, related: [], fixes: [] };
}

/** The report for other programs. Its keys are a promise: see `shared/reference`. */
import type { Severity } from '../findings/finding.ts';
import type { Account, AccountKind, Coverage } from '../proof/proof.ts';
import { toFractionText } from '../quantity/rational.ts';
import { sumCoverage } from './coverage.ts';
import { Lines, type Position } from './lines.ts';
import { placeOf } from './place.ts';
import type { Proofread } from './proofread.ts';
import type { ReportedFinding } from './unaccounted.ts';

export interface JsonReport {
  readonly version: 1;
  readonly documents: readonly JsonDocument[];
  readonly summary: Coverage & { readonly documents: number };
}

interface JsonDocument {
  readonly path: string;
  readonly numbers: readonly JsonNumber[];
  readonly findings: readonly JsonFinding[];
  readonly coverage: Coverage;
}

interface JsonNumber {
  /** As the author wrote it. A number that emphasis splits spans more of the source than its text. */
  readonly text: string;
  readonly start: Position;
  readonly end: Position;
  readonly kind: string;
  /** An exact rational in `unit`: `n` or `n/d`. */
  readonly value: string;
  readonly unit: string | null;
  readonly size: string | null;
  readonly account: AccountKind;
  readonly figure: string | null;
  readonly expected: string | null;
  readonly code: string | null;
  /** The slip by which people come to this number, where only one gives it: `another usable width`. */
  readonly slip: string | null;
}

interface JsonFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly start: Position;
  readonly end: Position;
  readonly fixes: readonly {
    readonly title: string;
    readonly preferred: boolean;
    readonly edits: readonly { readonly start: Position; readonly end: Position; readonly text: string }[];
  }[];
}

export function jsonReport(documents: readonly Proofread[]): JsonReport {
  return {
    version: 1,
    documents: documents.map(jsonDocument),
    summary: { documents: documents.length, ...sumCoverage(documents.map(({ proof }) => proof.coverage)) },
  };
}

function jsonDocument({ path, proof, findings }: Proofread): JsonDocument {
  const lines = new Lines(proof.manuscript.source);
  return {
    path,
    numbers: proof.accounts.map((account) => jsonNumber(account, lines)),
    findings: findings.map((finding) => jsonFinding(finding, lines)),
    coverage: proof.coverage,
  };
}

function jsonNumber({ number, kind, tie, expected, code, slip }: Account, lines: Lines): JsonNumber {
  const place = placeOf(number);
  return {
    text: number.text,
    start: lines.position(place.start),
    end: lines.position(place.end),
    kind: number.kind,
    value: toFractionText(number.value),
    unit: number.unit ?? null,
    size: tie?.size ?? null,
    account: kind,
    figure: tie?.figure.id ?? null,
    expected: expected ?? null,
    code: code ?? null,
    slip: slip?.name ?? null,
  };
}

function jsonFinding(
  { code, severity, message, start, end, fixes }: ReportedFinding,
  lines: Lines,
): JsonFinding {
  return {
    code,
    severity,
    message,
    start: lines.position(start),
    end: lines.position(end),
    fixes: fixes.map(({ title, preferred, edits }) => ({
      title,
      preferred,
      edits: edits.map((edit) => ({
        start: lines.position(edit.start),
        end: lines.position(edit.end),
        text: edit.text,
      })),
    })),
  };
}

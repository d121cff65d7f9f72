/** Findings as diagnostics: one translation for open documents, files of the workspace, pull and push. */
import { type Diagnostic, DiagnosticSeverity, type Location } from 'vscode-languageserver';
import { TextDocument } from 'vscode-languageserver-textdocument';
import type { Related, Severity } from '../../core/findings/finding.ts';
import type { Proof } from '../../core/proof/proof.ts';
import { type ReportedFinding, unaccountedFindings } from '../../core/report/unaccounted.ts';
import type { Settings } from '../../shared/settings.ts';
import { sameRange, toRange } from '../positions.ts';

export const SOURCE = 'Measure Twice';

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  hint: DiagnosticSeverity.Hint,
};

/** What a diagnostic carries along, so that the fix for it is found again. */
export interface DiagnosticData {
  /** The version of the document that was proofread. */
  readonly version: number;
  /** The place of the finding in that proof. */
  readonly finding: number;
}

/**
 * @param related whether the client shows related places
 */
export function toDiagnostics(
  document: TextDocument,
  proof: Proof,
  settings: Settings,
  related: boolean,
): Diagnostic[] {
  const unaccounted = settings.unaccounted === 'hint' ? unaccountedFindings(proof, 'hint') : [];
  return [...proof.findings, ...unaccounted].map((finding, index) => ({
    ...toDiagnostic(document, finding, related),
    data: { version: document.version, finding: index } satisfies DiagnosticData,
  }));
}

function toDiagnostic(document: TextDocument, finding: ReportedFinding, related: boolean): Diagnostic {
  return {
    range: toRange(document, finding),
    severity: SEVERITIES[finding.severity],
    code: finding.code,
    source: SOURCE,
    message: finding.message,
    ...(related && finding.related.length > 0
      ? {
          relatedInformation: finding.related.map((place) => ({
            location: locationOf(document, place),
            message: place.message,
          })),
        }
      : {}),
  };
}

/** In the used file, where the place is in one. */
function locationOf(document: TextDocument, { origin, ...place }: Related): Location {
  if (!origin) return { uri: document.uri, range: toRange(document, place) };
  const { id, source } = origin.file;
  const file = TextDocument.create(id, document.languageId, 0, source);
  return { uri: id, range: toRange(file, origin) };
}

/** Whether a diagnostic that the client shows is the one of this finding, the `index`-th of its proof. */
export function isDiagnosticOf(
  diagnostic: Diagnostic,
  finding: ReportedFinding,
  index: number,
  document: TextDocument,
): boolean {
  if (diagnostic.source !== SOURCE || diagnostic.code !== finding.code) return false;
  const data: unknown = diagnostic.data;
  if (isDiagnosticData(data) && data.version === document.version) return data.finding === index;
  return sameRange(diagnostic.range, toRange(document, finding));
}

function isDiagnosticData(data: unknown): data is DiagnosticData {
  return typeof data === 'object' && data !== null && 'version' in data && 'finding' in data;
}

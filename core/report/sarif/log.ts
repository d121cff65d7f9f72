/**
 * The report in the Static Analysis Results Interchange Format, SARIF 2.1.0 (OASIS), which code hosts and editors show
 * beside the lines of a file.
 */
import type { Artifact, Log, Run } from 'sarif';
import { sumCoverage } from '../coverage.ts';
import type { Proofread } from '../proofread.ts';
import { artifactLocation, ROOT } from './places.ts';
import { results } from './results.ts';
import { rules } from './rules.ts';

export interface SarifTool {
  readonly name: string;
  readonly version: string;
  /** Address of the folder of the reference, with a slash at its end: each rule links to its page there. */
  readonly reference: string;
}

export function sarifReport(documents: readonly Proofread[], { name, version, reference }: SarifTool): Log {
  const run: Run = {
    tool: { driver: { name, version, semanticVersion: version, language: 'en', rules: rules(reference) } },
    columnKind: 'utf16CodeUnits',
    // As Markdown counts lines, and as the places of all other reports do.
    newlineSequences: ['\r\n', '\n', '\r'],
    defaultEncoding: 'utf-8',
    // Where it lies on this machine is nobody's business: whoever reads the report knows the folder.
    originalUriBaseIds: {
      [ROOT]: { description: { text: 'The folder in which the program was run.' } },
    },
    invocations: [{ executionSuccessful: true }],
    artifacts: documents.map(({ path }, index): Artifact => {
      const { index: _, ...location } = artifactLocation(path, index);
      return { location, mimeType: 'text/markdown', roles: ['analysisTarget'] };
    }),
    results: documents.flatMap(results),
    properties: { coverage: sumCoverage(documents.map(({ proof }) => proof.coverage)) },
  };
  return {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [run],
  };
}

/** Tells clients that show it how much of an open manuscript is checked. */
import type { Proof } from '../../core/proof/proof.ts';
import { coverageLabel, coverageSentence, measured } from '../../core/report/coverage.ts';
import { COVERAGE_NOTIFICATION, type CoverageInWords, type CoverageParams } from '../../shared/messages.ts';
import type { Feature } from '../context.ts';
import { sent } from '../guard.ts';

export const coverage: Feature = {
  capabilities: () => ({}),
  register({ connection, documents, client }) {
    if (!client.showsCoverage) return;
    documents.onDidProofread(({ document, proof }) => {
      const params: CoverageParams = { uri: document.uri, coverage: proof ? inWords(proof) : null };
      sent(connection, 'Sending the coverage', connection.sendNotification(COVERAGE_NOTIFICATION, params));
    });
  },
};

function inWords({ coverage: counts }: Proof): CoverageInWords {
  return {
    verified: counts.verified,
    measured: measured(counts),
    mistakes: counts.wrong + counts.stale + counts.short,
    label: coverageLabel(counts),
    sentence: coverageSentence(counts),
  };
}

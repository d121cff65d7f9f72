/** Tells clients that show it how much of an open manuscript is checked. */
import { COVERAGE_NOTIFICATION, type CoverageParams } from '../../shared/messages.ts';
import type { Feature } from '../context.ts';
import { sent } from '../guard.ts';
import { coverageInWords } from './status.ts';

export const coverage: Feature = {
  capabilities: () => ({}),
  register({ connection, documents, client }) {
    if (!client.showsCoverage) return;
    documents.onDidProofread(({ document, proof }) => {
      const params: CoverageParams = {
        uri: document.uri,
        coverage: proof ? coverageInWords(proof.coverage) : null,
      };
      sent(connection, 'Sending the coverage', connection.sendNotification(COVERAGE_NOTIFICATION, params));
    });
  },
};

/** Tells clients that show it how much of an open manuscript is checked. */
import { COVERAGE_NOTIFICATION, type CoverageParams } from '../../shared/messages.ts';
import type { Feature } from '../context.ts';
import { sent } from '../guard.ts';
import { coverageInWords } from './status.ts';

export const coverage: Feature = {
  capabilities: () => ({}),
  register({ connection, documents, client, signatures }) {
    if (!client.showsCoverage) return;
    documents.onDidProofread((proofreading) => {
      const { document, proof } = proofreading;
      const signature = signatures?.sentence(proofreading);
      const params: CoverageParams = {
        uri: document.uri,
        coverage: proof ? { ...coverageInWords(proof.coverage), ...(signature ? { signature } : {}) } : null,
      };
      sent(connection, 'Sending the coverage', connection.sendNotification(COVERAGE_NOTIFICATION, params));
    });
  },
};

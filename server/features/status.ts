/** How much of the whole line is checked, for a client that asks. */

import type { Coverage } from '../../core/proof/proof.ts';
import { coverageLabel, coverageSentence, measured } from '../../core/report/coverage.ts';
import {
  type CoverageInWords,
  WORKSPACE_STATUS_REQUEST,
  type WorkspaceStatus,
} from '../../shared/messages.ts';
import type { Feature } from '../context.ts';
import { guarded } from '../guard.ts';
import { LineTotals, survey } from '../workspace/survey.ts';

export const status: Feature = {
  capabilities: () => ({}),
  register({ connection, room }) {
    if (!room) return;
    connection.onRequest(WORKSPACE_STATUS_REQUEST, (token) =>
      guarded<WorkspaceStatus | null>(connection, 'The status of the workspace', null, async () => {
        const totals = new LineTotals();
        for await (const surveyed of survey(room.workspace, token)) totals.add(surveyed);
        const { manuscripts, needWork, sentence } = totals;
        return { manuscripts, needWork, sentence, coverage: coverageInWords(totals.coverage) };
      }),
    );
  },
};

export function coverageInWords(counts: Coverage): CoverageInWords {
  return {
    verified: counts.verified,
    measured: measured(counts),
    mistakes: counts.wrong + counts.stale + counts.short,
    label: coverageLabel(counts),
    sentence: coverageSentence(counts),
  };
}

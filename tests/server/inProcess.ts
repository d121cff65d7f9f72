/** The server in the test's own process, with a proofreading that the test controls. */
import { PassThrough } from 'node:stream';
import { onTestFinished } from 'vitest';
import {
  createConnection,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { ShutdownRequest } from 'vscode-languageserver-protocol/node';
import type { Finding } from '../../core/findings/finding.ts';
import type { Proof } from '../../core/proof/proof.ts';
import { NO_COVERAGE } from '../../core/report/coverage.ts';
import { type Host, serve } from '../../server/server.ts';
import { TestClient } from './client.ts';

export function startInProcess(host: Pick<Host, 'proofread' | 'files' | 'signatures'>): TestClient {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  const connection = createConnection(
    ProposedFeatures.all,
    new StreamMessageReader(toServer),
    new StreamMessageWriter(toClient),
  );
  serve(connection, { name: 'Measure Twice', version: '0.0.0', ...host });
  const client = new TestClient(new StreamMessageReader(toClient), new StreamMessageWriter(toServer));
  onTestFinished(async () => {
    await client.connection.sendRequest(ShutdownRequest.type);
    client.connection.dispose();
    connection.dispose();
  });
  return client;
}

/** A manuscript: the server looks at no other Markdown file. */
export const FENCE = '```measure\n```\n';

/**
 * A proofreading that takes every word `wrong` for a mistake and offers `right` for it; so the tests of the
 * protocol need no knowledge of the trade.
 */
export function wordProof({ source }: { readonly source: string }): Proof {
  const findings = Array.from(source.matchAll(/wrong/g), ({ index }): Finding => {
    const range = { start: index, end: index + 'wrong'.length };
    return {
      code: 'wrong-figure',
      severity: 'error',
      message: 'This is wrong.',
      ...range,
      related: [{ start: 0, end: 3, message: 'The block says so.' }],
      fixes: [
        { title: 'Write right', preferred: true, edits: [{ ...range, text: 'right' }] },
        { title: 'Leave it out', preferred: false, edits: [{ ...range, text: '' }] },
      ],
    };
  });
  const loose = Array.from(source.matchAll(/loose/g), ({ index }) => ({
    kind: 'unaccounted',
    number: { text: 'loose', ranges: [{ start: index, end: index + 5 }] },
  }));
  return {
    manuscript: { source, passages: [], numbers: [] },
    pattern: { stated: source.includes('```measure'), pathAt: () => undefined, entries: {} },
    accounts: loose,
    findings,
    coverage: { ...NO_COVERAGE, verified: 3, wrong: findings.length },
  } as unknown as Proof;
}

import { describe, expect, it } from 'vitest';
import { ExecuteCommandRequest, ShowMessageRequest } from 'vscode-languageserver-protocol/node';
import { proofread } from '../../core/proof/proofread.ts';
import type { Signature } from '../../core/record/signature.ts';
import type { SignatureStore } from '../../server/signatures.ts';
import { COMMANDS, COVERAGE_NOTIFICATION, type CoverageParams } from '../../shared/messages.ts';
import { CAPABILITIES } from './client.ts';
import { startInProcess } from './inProcess.ts';

const uri = 'file:///patterns/wall.md';
const text = (strip: string, printed: string) =>
  `\`\`\`measure\nfinished: 36" x 48"\nbinding: { strip: ${strip} }\n\`\`\`\n\nCut strips ${printed} <!-- = binding.strip --> wide.\n`;

/** An editor in which a manuscript is open, and what the server says about its signature. */
async function editor(opened: string, saved = opened) {
  const signed: Signature[] = [];
  const store: SignatureStore = {
    read: async () => ({ signatures: signed, problems: [] }),
    add: async (_, signature) => void signed.push(signature),
    saved: async () => saved,
    digest: (source) => `length ${source.length}`,
    today: () => '2026-11-25',
  };
  const client = startInProcess({ proofread, signatures: store });
  const seen: (string | undefined)[] = [];
  client.connection.onNotification(COVERAGE_NOTIFICATION, ({ coverage }: CoverageParams) => {
    seen.push(coverage?.signature);
    client.wake();
  });
  await client.initialize(CAPABILITIES, { coverage: true });
  await client.open(uri, opened);
  await client.pushed(uri, 1);
  const signOff = (...args: unknown[]) =>
    client.connection.sendRequest(ExecuteCommandRequest.type, { command: COMMANDS.signOff, arguments: args });
  return { client, signed, seen, signOff };
}

describe('Signing a manuscript off in an editor', () => {
  it('writes the signature, tells it, and shows from then on what it covers', async () => {
    const { client, signed, seen, signOff } = await editor(text('2 1/4"', '2¼"'));
    await signOff(uri, ' Ada Lund ');
    expect(client.messages).toEqual([
      'Ada Lund signed off this manuscript on 2026-11-25: 1 number was verified.',
    ]);
    expect(signed).toMatchObject([{ by: 'Ada Lund', on: '2026-11-25' }]);
    await client.until(() => seen.at(-1) === 'Signed off by Ada Lund on 2026-11-25, just as it stands.');

    await client.change(uri, { text: text('2 1/2"', '2½"') });
    await client.until(
      () =>
        seen.at(-1) ===
        'Signed off by Ada Lund on 2026-11-25; not covered by the signature: 1 number has changed (line 6).',
    );
  });

  it('makes numbers stale that were right when it was signed, also after it was opened again', async () => {
    const { client, signOff } = await editor(text('2 1/4"', '2¼"'));
    await signOff(uri, 'Ada Lund');
    await client.close(uri);
    await client.pushed(uri, undefined);
    await client.open(uri, text('2 1/2"', '2¼"'));
    await client.until(() => client.published.at(-1)?.diagnostics[0]?.code === 'stale-figure');
    expect(client.published.at(-1)?.diagnostics.map(({ message }) => message)).toEqual([
      'The width of the binding strip is 2½", not 2¼": it was right until “strip” of the binding changed from 2 1/4" to 2 1/2".',
    ]);
  });

  it('asks before it signs mistakes, and signs them only when told to', async () => {
    const { client, signed, signOff } = await editor(text('2 1/4"', '2"'));
    const asked: string[] = [];
    let answer: { title: string } | null = null;
    client.connection.onRequest(ShowMessageRequest.type, ({ message }) => {
      asked.push(message);
      return answer;
    });
    await signOff(uri, 'Ada Lund');
    expect(signed).toEqual([]);
    answer = { title: 'Sign Off as It Stands' };
    await signOff(uri, 'Ada Lund');
    expect(signed).toHaveLength(1);
    expect(asked).toEqual(
      Array(2).fill('This manuscript has mistakes or warnings. Sign it off all the same?'),
    );
  });

  it('says why it cannot be signed', async () => {
    const { client, signed, signOff } = await editor(text('2 1/4"', '2¼"'), 'an older text');
    await signOff(uri, 'Ada Lund');
    await signOff(uri, '  ');
    await signOff('file:///patterns/closed.md', 'Ada Lund');
    expect(client.messages).toEqual([
      'Save the manuscript first, then sign it off.',
      'Say who signs the manuscript off.',
      'Open a manuscript first, then sign it off.',
    ]);
    expect(signed).toEqual([]);
  });
});

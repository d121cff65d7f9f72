/** A manuscript's way through the real server: seen, explained, corrected, clean. */
import { describe, expect, it } from 'vitest';
import type { Hover, MarkupContent, TextDocumentEdit, TextEdit } from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { CAPABILITIES, PULLING, type TestClient } from '../client.ts';
import { start } from './start.ts';

const uri = 'untitled:Untitled-1';
const at = (line: number, start: number, end: number) => ({
  start: { line, character: start },
  end: { line, character: end },
});

/** With emoji, CR LF and a number that emphasis splits. */
const TEXT = [
  '# 🧵 Kettle Pond',
  '',
  '```measure',
  'sizes: [wall, throw]',
  'finished: { wall: 36" x 48", throw: 54" x 72" }',
  'binding: { strip: 2 1/4", grain: straight }',
  'states:',
  '  binding.length: { wall: 180", throw: 250" }',
  '```',
  '',
  '🧵🧵 Cut 4 <!-- = binding.strips @ wall --> strips **2½**" <!-- = binding.strip --> wide.',
  '',
].join('\r\n');

async function opened(text = TEXT, capabilities = PULLING): Promise<TestClient> {
  const { client } = start();
  await client.initialize(capabilities);
  await client.open(uri, text);
  return client;
}

async function findings(client: TestClient) {
  const report = await client.pull(uri);
  if (report.kind !== 'full') throw new Error('a full report was expected');
  return report.items;
}

const markdown = (hover: Hover | null) => (hover?.contents as MarkupContent | undefined)?.value;

describe('A manuscript', () => {
  it('has every mistake underlined at its exact place', async () => {
    const client = await opened();

    expect((await findings(client)).map(({ code, range }) => [code, range])).toEqual([
      ['short-figure', at(7, 39, 43)],
      ['short-figure', at(10, 9, 10)],
      ['wrong-figure', at(10, 53, 58)],
    ]);
  });

  it('has the same findings pushed to a client that does not pull', async () => {
    const client = await opened(TEXT, CAPABILITIES);

    expect((await client.pushed(uri, 1)).map(({ range }) => range.start.line)).toEqual([7, 10, 10]);
  });

  it('is clean after all fixes, and only its numbers have changed', async () => {
    const client = await opened();
    const [fixAll] = await client.actions(uri, at(0, 0, 0), { only: ['source.fixAll'] });
    const [change] = (fixAll?.edit?.documentChanges ?? []) as TextDocumentEdit[];
    if (!change) throw new Error('there is nothing to fix');
    const fixed = TextDocument.applyEdits(
      TextDocument.create(uri, 'markdown', 1, TEXT),
      change.edits as TextEdit[],
    );
    await client.change(uri, { text: fixed });

    expect(await findings(client)).toEqual([]);
    expect(fixed).toBe(
      TEXT.replace('throw: 250"', 'throw: 264"').replace('Cut 4', 'Cut 5').replace('**2½**"', '**2¼**"'),
    );
  });

  it('follows edits between emoji and CR LF', async () => {
    const client = await opened();
    await client.change(uri, { range: at(10, 4, 4), text: '🧵' }, { range: at(7, 39, 43), text: '264' });

    expect((await findings(client)).map(({ range }) => range)).toEqual([at(10, 11, 12), at(10, 55, 60)]);
  });
});

describe('Hover', () => {
  it('explains a tied number: what it should be, for every size, step by step, and why', async () => {
    const client = await opened();
    const hover = await client.hover(uri, 10, 9);

    expect(hover?.range).toEqual(at(10, 9, 10));
    expect(markdown(hover)).toBe(
      [
        '**The number of binding strips** for wall: at least 5',
        '',
        '1. 2 × (36" + 48") = 168" around.',
        '2. 168" around plus 12" to join is 180".',
        '3. A strip is 40" long; each diagonal join takes 2¼".',
        '4. 5 strips joined give 191".',
        '',
        '|  | wall | throw |',
        '| :-- | --: | --: |',
        '| at least | 5 | 7 |',
        '',
        '*Why this number: a tag behind the number names it.*',
      ].join('\n'),
    );
  });

  it('explains a value that the block states', async () => {
    const client = await opened();
    const hover = await client.hover(uri, 7, 41);

    expect(hover?.range).toEqual(at(7, 39, 43));
    expect(markdown(hover)).toContain(' for throw: at least 264"\n\n1. 2 × (54" + 72") = 252" around.');
  });

  it('lists what follows from an entry of the block', async () => {
    const client = await opened();

    const text = markdown(await client.hover(uri, 5, 2));
    expect(text?.split('\n').slice(0, 6)).toEqual([
      '**What follows from “binding”**',
      '',
      '|  | wall | throw |',
      '| :-- | --: | --: |',
      '| The edge to bind | 168" | 252" |',
      '| The length of binding, at least | 180" | 264" |',
    ]);
  });

  it('shows one figure with its working where the entry is that figure', async () => {
    const client = await opened();

    expect(markdown(await client.hover(uri, 5, 12))).toBe(
      '**The width of the binding strip**: 2¼"\n\n1. The measure block says so.',
    );
  });

  it('is plain text for a client that shows no Markdown', async () => {
    const client = await opened(TEXT, {
      textDocument: { hover: { contentFormat: ['plaintext'] }, diagnostic: {} },
    });
    const hover = await client.hover(uri, 10, 9);

    expect(hover?.contents).toEqual({
      kind: 'plaintext',
      value: [
        'The number of binding strips for wall: at least 5',
        '',
        '1. 2 × (36" + 48") = 168" around.',
        '2. 168" around plus 12" to join is 180".',
        '3. A strip is 40" long; each diagonal join takes 2¼".',
        '4. 5 strips joined give 191".',
        '',
        'In all sizes: at least wall 5, throw 7',
        '',
        'Why this number: a tag behind the number names it.',
      ].join('\n'),
    });
  });

  it('has nothing to say about ordinary words', async () => {
    const client = await opened();

    expect(await client.hover(uri, 0, 5)).toBeNull();
  });
});

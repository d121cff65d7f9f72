/** The manuscripts of a workspace and the house file that they share, through the protocol. */
import { describe, expect, it, vi } from 'vitest';
import {
  DidChangeWorkspaceFoldersNotification,
  DidRenameFilesNotification,
  FileChangeType,
  type WorkspaceDiagnosticReport,
  type WorkspaceDiagnosticReportPartialResult,
  WorkspaceDiagnosticRequest,
} from 'vscode-languageserver-protocol/node';
import { proofread } from '../../core/proof/proofread.ts';
import { WORKSPACE_STATUS_REQUEST, type WorkspaceStatus } from '../../shared/messages.ts';
import { CAPABILITIES, PULLING, type TestClient } from './client.ts';
import { startInProcess } from './inProcess.ts';
import { MemoryFiles } from './memoryFiles.ts';

const house = (strip: string) => `# House\n\n\`\`\`measure\nhouse: { binding strip: ${strip} }\n\`\`\`\n`;
const quilt = (strip: string, use = 'house.md') =>
  `\`\`\`measure\nuse: ${use}\nfinished: 36" x 48"\nbinding: { grain: straight }\n\`\`\`\n\nCut strips ${strip} <!-- = binding.strip --> wide.\n`;

const HOUSE = 'file:///line/house.md';
const LINE = {
  [HOUSE]: house('2 1/4"'),
  'file:///line/a.md': quilt('2¼"'),
  'file:///line/b.md': quilt('2 1/4"'),
  'file:///line/own.md': quilt('3"').replace('use: house.md', 'house: { binding strip: 3" }'),
  'file:///line/note.md': 'Bring 3 pins.',
};

const WATCHING = {
  ...CAPABILITIES,
  workspace: { ...CAPABILITIES.workspace, didChangeWatchedFiles: { dynamicRegistration: true } },
};
const WATCHING_AND_PULLING = { ...PULLING, workspace: WATCHING.workspace };

async function start(texts: Readonly<Record<string, string>> = LINE, capabilities = WATCHING) {
  const files = new MemoryFiles(texts);
  const client = startInProcess({ proofread, files });
  client.folders = ['file:///line'];
  await client.initialize(capabilities);
  // The answer comes when the server has looked through all files.
  const status = (): Promise<WorkspaceStatus> => client.connection.sendRequest(WORKSPACE_STATUS_REQUEST);
  return { client, files, status };
}

/** The codes that stand at a file when all is quiet. */
const published = (client: TestClient, uri: string) =>
  client.published.findLast((params) => params.uri === uri)?.diagnostics.map(({ code }) => code);

const reports = ({ items }: WorkspaceDiagnosticReport) =>
  items.map((item) => [
    item.uri.slice('file:///line/'.length),
    'items' in item ? item.items.map(({ code }) => code) : item.kind,
  ]);

const ids = ({ items }: WorkspaceDiagnosticReport) =>
  items.map(({ uri, resultId }) => ({ uri, value: resultId ?? '' }));

describe('A house file that is edited and not saved', () => {
  it('makes every dependent be proofread again at once, open or not', async () => {
    const { client, status } = await start();
    await status();
    await client.open('file:///line/a.md', LINE['file:///line/a.md']);
    expect(await client.pushed('file:///line/a.md', 1)).toEqual([]);
    await client.open(HOUSE, LINE[HOUSE]);
    await client.change(HOUSE, { text: house('2 1/2"') });
    await client.until(
      () =>
        published(client, 'file:///line/a.md')?.length === 1 &&
        published(client, 'file:///line/b.md')?.length === 1,
    );

    expect(published(client, 'file:///line/a.md')).toEqual(['stale-figure']);
    expect(published(client, 'file:///line/b.md')).toEqual(['stale-figure']);
    expect(published(client, 'file:///line/own.md')).toBeUndefined();
  });

  it('counts no more when it is closed without saving', async () => {
    const { client, status } = await start();
    await status();
    await client.open(HOUSE, LINE[HOUSE]);
    await client.change(HOUSE, { text: house('2 1/2"') });
    await client.until(() => published(client, 'file:///line/b.md')?.length === 1);
    await client.close(HOUSE);
    await client.until(() => published(client, 'file:///line/b.md')?.length === 0);
  });

  it('troubles nobody with changes outside of its blocks', async () => {
    const files = new MemoryFiles(LINE);
    const counting = vi.fn(proofread);
    const client = startInProcess({ proofread: counting, files });
    client.folders = ['file:///line'];
    await client.initialize(WATCHING);
    await client.open('file:///line/a.md', LINE['file:///line/a.md']);
    await client.pushed('file:///line/a.md', 1);
    await client.open(HOUSE, `${LINE[HOUSE]}\nOur house rules.`);
    await client.pushed(HOUSE, 1);
    await client.change(HOUSE, { text: house('3"') });
    await client.until(() => published(client, 'file:///line/a.md')?.length === 1);

    const proofs = counting.mock.calls.filter(([{ source }]) => source === LINE['file:///line/a.md']);
    expect(proofs).toHaveLength(2);
  });

  it('is felt over several steps, and points at the rule in its file', async () => {
    const far = 'file:///line/rules/far.md';
    const { client, status } = await start({
      [far]: house('2 1/4"'),
      [HOUSE]: '```measure\nuse: rules/far.md\n```\n',
      'file:///line/sub/a.md': quilt('2¼"', '../house.md'),
    });
    await status();
    await client.open(far, house('2 1/4"'));
    await client.change(far, { text: house('2 1/2"') });
    await client.until(() => published(client, 'file:///line/sub/a.md')?.length === 1);
    const [diagnostic] =
      client.published.findLast(({ uri }) => uri === 'file:///line/sub/a.md')?.diagnostics ?? [];

    expect(diagnostic?.relatedInformation).toEqual([
      {
        location: { uri: far, range: { start: { line: 3, character: 24 }, end: { line: 3, character: 30 } } },
        message: 'It follows from “binding strip” of the house rules of rules/far.md.',
      },
    ]);
  });
});

describe('A house file on disk', () => {
  it('is followed when it changes, goes away and comes back', async () => {
    const { client, files, status } = await start();
    await status();
    const waitFor = (code: string | undefined) =>
      client.until(() => published(client, 'file:///line/b.md')?.[0] === code);

    files.texts.set(HOUSE, house('2 1/2"'));
    await client.filesChanged(FileChangeType.Changed, HOUSE);
    await waitFor('stale-figure');

    files.texts.delete(HOUSE);
    await client.filesChanged(FileChangeType.Deleted, HOUSE);
    await waitFor('use-missing');

    files.texts.set(HOUSE, house('2 1/4"'));
    await client.filesChanged(FileChangeType.Created, HOUSE);
    await client.until(() => published(client, 'file:///line/b.md')?.length === 0);
  });

  it('is followed when its folder is renamed', async () => {
    const { client, files, status } = await start({
      'file:///line/rules/house.md': house('2 1/4"'),
      'file:///line/a.md': quilt('2¼"', 'rules/house.md'),
    });
    await status();
    files.texts.set('file:///line/old/house.md', house('2 1/4"'));
    files.texts.delete('file:///line/rules/house.md');
    await client.connection.sendNotification(DidRenameFilesNotification.type, {
      files: [{ oldUri: 'file:///line/rules', newUri: 'file:///line/old' }],
    });
    await client.until(() => published(client, 'file:///line/a.md')?.[0] === 'use-missing');
  });
});

describe('The way to a used file', () => {
  const codes = async (text: string, more: (files: MemoryFiles, client: TestClient) => void = () => {}) => {
    const { client, files } = await start({
      ...LINE,
      'file:///secret.md': house('9"'),
      'file:///other/house.md': house('2 1/4"'),
    });
    more(files, client);
    await client.open('file:///line/sub/new.md', text);
    return (await client.pushed('file:///line/sub/new.md', 1)).map(({ code }) => code);
  };

  it.each(['../../secret.md', '../x/../../secret.md', '/secret.md', 'file:///secret.md'])(
    'does not lead out of the workspace: %s',
    async (path) => {
      expect(await codes(quilt('9"', path))).toEqual(['use-outside']);
    },
  );

  it('does not lead out by a link', async () => {
    const link = (files: MemoryFiles) => files.links.set('file:///line/sub/link.md', 'file:///secret.md');

    expect(await codes(quilt('9"', 'link.md'), link)).toEqual(['use-outside']);
  });

  it('may lead by a link within the workspace', async () => {
    const link = (files: MemoryFiles) => files.links.set('file:///line/sub/link.md', HOUSE);

    expect(await codes(quilt('9"', 'link.md'), link)).toEqual(['wrong-figure']);
  });

  it('leads into another folder of the workspace, once it is one', async () => {
    const { client } = await start({ ...LINE, 'file:///other/house.md': house('2 1/4"') });
    const uri = 'file:///line/new.md';
    await client.open(uri, quilt('2¼"', '../other/house.md'));
    expect((await client.pushed(uri, 1)).map(({ code }) => code)).toEqual(['use-outside']);

    client.folders.push('file:///other');
    await client.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, {
      event: { added: [{ uri: 'file:///other', name: 'other' }], removed: [] },
    });
    await client.until(() => published(client, uri)?.length === 0);
  });

  it('ends in the own folder of a file outside of the workspace', async () => {
    const { client } = await start({ ...LINE, 'file:///elsewhere/house.md': house('2 1/4"') });
    await client.open('file:///elsewhere/a.md', quilt('2¼"'));
    expect(await client.pushed('file:///elsewhere/a.md', 1)).toEqual([]);
    await client.open('file:///elsewhere/b.md', quilt('2¼"', '../line/house.md'));
    expect((await client.pushed('file:///elsewhere/b.md', 1)).map(({ code }) => code)).toEqual([
      'use-outside',
    ]);
  });

  it.each(['untitled:Untitled-1', 'vscode-vfs://host/line/a.md'])('does not begin at %s', async (uri) => {
    const { client } = await start();
    await client.open(uri, quilt('9"'));

    expect((await client.pushed(uri, 1)).map(({ code }) => code)).toEqual(['use-unreachable']);
  });

  it('ends at a file that is open and not saved yet', async () => {
    const { client } = await start();
    await client.open('file:///line/sub/fresh.md', house('2 1/4"'));
    await client.open('file:///line/sub/new.md', quilt('9"', 'fresh.md'));

    expect((await client.pushed('file:///line/sub/new.md', 1)).map(({ code }) => code)).toEqual([
      'wrong-figure',
    ]);
  });
});

describe('Diagnostics of the whole workspace', () => {
  it('tell of every manuscript, and of those that did not change that they did not', async () => {
    const { client } = await start({ ...LINE, 'file:///line/b.md': quilt('9"') }, WATCHING_AND_PULLING);
    const first = await client.pullWorkspace();
    expect(reports(first)).toEqual([
      ['house.md', []],
      ['a.md', []],
      ['b.md', ['wrong-figure']],
      ['own.md', []],
    ]);
    await client.open(HOUSE, LINE[HOUSE]);
    await client.change(HOUSE, { text: house('9"') });

    expect(reports(await client.pullWorkspace(ids(first)))).toEqual([
      ['house.md', []],
      ['a.md', ['stale-figure']],
      ['b.md', []],
      ['own.md', 'unchanged'],
    ]);
    await client.until(() => client.refreshes > 0);
    expect(client.published).toEqual([]);
  });

  it('take back what was found in a file that is gone', async () => {
    const { client, files } = await start({ 'file:///line/b.md': `${quilt('9"')}` }, WATCHING_AND_PULLING);
    const first = await client.pullWorkspace();
    files.texts.delete('file:///line/b.md');
    await client.filesChanged(FileChangeType.Deleted, 'file:///line/b.md');

    expect(reports(first)).toEqual([['b.md', ['use-missing']]]);
    expect(reports(await client.pullWorkspace(ids(first)))).toEqual([['b.md', []]]);
  });

  it('come piece by piece to a client that takes pieces', async () => {
    const { client } = await start(LINE, WATCHING_AND_PULLING);
    const pieces: string[] = [];
    client.connection.onProgress(
      WorkspaceDiagnosticRequest.partialResult,
      'pieces',
      ({ items }) => void pieces.push(...items.map(({ uri }) => uri)),
    );
    const end = await client.connection.sendRequest(WorkspaceDiagnosticRequest.type, {
      previousResultIds: [],
      partialResultToken: 'pieces',
    });

    expect(end).toEqual({ items: [] } satisfies WorkspaceDiagnosticReportPartialResult);
    expect(pieces).toEqual([HOUSE, 'file:///line/a.md', 'file:///line/b.md', 'file:///line/own.md']);
  });

  it('end what was pushed before, so that no finding is shown twice', async () => {
    const { client, status } = await start(LINE, WATCHING_AND_PULLING);
    await status();
    await client.open(HOUSE, LINE[HOUSE]);
    await client.change(HOUSE, { text: house('9"') });
    await client.until(() => published(client, 'file:///line/b.md')?.length === 1);
    await client.pullWorkspace();

    expect(published(client, 'file:///line/b.md')).toEqual([]);
  });
});

describe('The status of the workspace', () => {
  it('is the coverage of the whole line', async () => {
    const { status } = await start({ ...LINE, 'file:///line/b.md': quilt('9"') });

    expect(await status()).toEqual({
      manuscripts: 4,
      needWork: 1,
      coverage: {
        verified: 2,
        measured: 3,
        mistakes: 1,
        label: '2 of 3 checked',
        sentence: '2 of 3 measurements are checked and right, and 1 is wrong.',
      },
      sentence:
        '1 of 4 manuscripts needs a second look. 2 of 3 measurements are checked and right, and 1 is wrong.',
    });
  });
});

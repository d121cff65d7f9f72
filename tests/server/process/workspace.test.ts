import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { ExecuteCommandRequest } from 'vscode-languageserver-protocol/node';
import { COMMANDS } from '../../../shared/messages.ts';
import { folderWith, manuscript } from '../../command-line/run.ts';
import { start } from './start.ts';

it('proofreads the manuscripts of a folder on disk, but not those that Git ignores', async () => {
  const folder = await folderWith({
    'a/wall (1).md': manuscript('160"'),
    'b/clean.markdown': manuscript('168"'),
    'drafts/old.md': manuscript('1"'),
    'note.md': 'Bring 3 pins.',
    '.gitignore': 'drafts/\n',
  });
  const { client } = start();
  client.folders = [pathToFileURL(folder).href];
  await client.initialize();
  await client.connection.sendRequest(ExecuteCommandRequest.type, { command: COMMANDS.proofreadWorkspace });

  expect(client.messages).toEqual([
    '1 of 2 manuscripts needs a second look. 1 of 2 measurements is checked and right, and 1 is wrong.',
  ]);
  const published = client.published.map(({ uri, diagnostics }) => [
    decodeURIComponent(uri.slice(uri.indexOf(encodeURI(folder)) + folder.length)),
    diagnostics.map(({ code }) => code),
  ]);
  expect(published).toEqual([
    ['/a/wall (1).md', ['wrong-figure']],
    ['/b/clean.markdown', []],
  ]);
});

/** A house file that is edited and not saved, with the real server and files on disk. */
import { symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { WORKSPACE_STATUS_REQUEST } from '../../../shared/messages.ts';
import { folderWith } from '../../command-line/run.ts';
import { CAPABILITIES } from '../client.ts';
import { start } from './start.ts';

const house = (strip: string) => `\`\`\`measure\nhouse: { binding strip: ${strip} }\n\`\`\`\n`;
const quilt = (use: string) =>
  `\`\`\`measure\nuse: ${use}\nfinished: 36" x 48"\nbinding: { grain: straight }\n\`\`\`\n\nCut the binding strips 2¼" wide.\n`;

async function opened(files: Readonly<Record<string, string>>) {
  const folder = await folderWith(files);
  const { client } = start();
  client.folders = [pathToFileURL(folder).href];
  await client.initialize(CAPABILITIES);
  const uri = (name: string) => pathToFileURL(join(folder, name)).href;
  const last = (name: string) =>
    client.published
      .findLast((params) => params.uri === uri(name))
      ?.diagnostics.map(({ code, message }) => [code, message]);
  return { client, folder, uri, last };
}

it('is felt in an open dependent and in a closed one', async () => {
  const { client, uri, last } = await opened({
    'house.md': house('2 1/4"'),
    'wall/open.md': quilt('../house.md'),
    'wall/closed.md': quilt('../house.md'),
    'drafts/ignored.md': quilt('../house.md'),
    '.gitignore': 'drafts/\n',
  });
  // Answered when all files were looked through.
  await client.connection.sendRequest(WORKSPACE_STATUS_REQUEST);
  await client.open(uri('wall/open.md'), quilt('../house.md'));
  await client.open(uri('house.md'), house('2 1/4"'));
  expect(await client.pushed(uri('wall/open.md'), 1)).toEqual([]);
  await client.change(uri('house.md'), { text: house('2 1/2"') });
  await client.until(() => last('wall/open.md')?.length === 1 && last('wall/closed.md')?.length === 1);

  const stale = [
    [
      'stale-figure',
      'The width of the binding strip is 2½", not 2¼": it was right until “binding strip” of the house rules changed from 2 1/4" to 2 1/2".',
    ],
  ];
  expect(last('wall/open.md')).toEqual(stale);
  expect(last('wall/closed.md')).toEqual(stale);
  expect(last('drafts/ignored.md')).toBeUndefined();
});

it('is not reached by a link that leads out of the workspace', async () => {
  const elsewhere = await folderWith({ 'house.md': house('9"') });
  const { client, folder, uri, last } = await opened({ 'a.md': quilt('link/house.md') });
  await symlink(elsewhere, join(folder, 'link'));
  await client.open(uri('a.md'), quilt('link/house.md'));
  await client.pushed(uri('a.md'), 1);

  expect(last('a.md')).toEqual([
    ['use-outside', '“link/house.md” leads out of the workspace, and nothing is read from there.'],
  ]);
});

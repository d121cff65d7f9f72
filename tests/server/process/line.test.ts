/** A line of thirty manuscripts on disk, with the real server: the house is edited and not saved. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';
import { WORKSPACE_STATUS_REQUEST, type WorkspaceStatus } from '../../../shared/messages.ts';
import { folderWith } from '../../command-line/run.ts';
import { HOUSE_NAME, houseFile, isRight, patternLine, STRIPS } from '../../support/line.ts';
import { start } from './start.ts';

const line = patternLine();

it('has just the numbers stale that depend on the strip, in open and in closed manuscripts', async () => {
  const folder = await folderWith({
    [HOUSE_NAME]: houseFile('2 1/4"'),
    ...Object.fromEntries(line.map(({ name, source }) => [name, source])),
  });
  const uri = (name: string) => pathToFileURL(join(folder, name)).href;
  const { client } = start();
  client.folders = [pathToFileURL(folder).href];
  await client.initialize();
  const status: WorkspaceStatus = await client.connection.sendRequest(WORKSPACE_STATUS_REQUEST);
  expect(status).toMatchObject({ manuscripts: 31, needWork: 0 });

  const open = line.slice(0, 3);
  for (const { name, source } of open) {
    await client.open(uri(name), source);
    expect(await client.pushed(uri(name), 1), name).toEqual([]);
  }
  await client.open(uri(HOUSE_NAME), houseFile('2 1/4"'));
  await client.change(uri(HOUSE_NAME), { text: houseFile('2 1/2"') });
  const last = (name: string) =>
    client.published.findLast((params) => params.uri === uri(name))?.diagnostics ?? [];
  await client.until(() => line.every(({ name }) => last(name).length > 0));

  for (const { name, source, numbers } of line) {
    const lines = source.split('\n');
    const stale = last(name).map(({ code, range }) => [
      code,
      lines[range.start.line]?.slice(range.start.character, range.end.character),
    ]);
    expect(stale, name).toEqual(
      numbers
        .filter((number) => !isRight(number, STRIPS.after))
        .map((number) => ['stale-figure', source.slice(number.start, number.end)]),
    );
  }
});

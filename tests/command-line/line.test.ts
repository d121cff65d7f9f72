/** A line of thirty manuscripts on disk: the house changes its strip, and one command restates every number. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { JsonReport } from '../../core/report/json.ts';
import { HOUSE_NAME, houseFile, isRight, patternLine, STRIPS, withoutNumbers } from '../support/line.ts';
import { folderWith, run } from './run.ts';

const line = patternLine();

it('flags just the numbers that depend on the strip, in all files, and corrects them and nothing else', async () => {
  const folder = await folderWith({
    [HOUSE_NAME]: houseFile('2 1/2"'),
    ...Object.fromEntries(line.map(({ name, source }) => [name, source])),
  });
  const found = JSON.parse((await run(folder, ['proof', '--format', 'json'])).stdout) as JsonReport;
  const places = new Map(
    found.documents.map(({ path, findings }) => [path, findings.map(({ start }) => start.offset)]),
  );
  for (const { name, numbers } of line)
    expect(places.get(name), name).toEqual(
      numbers.filter((number) => !isRight(number, STRIPS.after)).map(({ start }) => start),
    );
  expect(places.get(HOUSE_NAME)).toEqual([]);

  const fixed = await run(folder, ['proof', '--fix', '--quiet']);
  expect(fixed.status).toBe(0);
  expect(await readFile(join(folder, HOUSE_NAME), 'utf8')).toBe(houseFile('2 1/2"'));
  for (const { name, source } of line) {
    const now = await readFile(join(folder, name), 'utf8');
    expect(now, name).not.toBe(source);
    expect(withoutNumbers(now), name).toBe(withoutNumbers(source));
  }
});

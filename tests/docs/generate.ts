/** Writes the reference: `npm run generate`. Pages that are no longer generated are removed. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { committedPages, generatedPages, REFERENCE } from './reference.ts';

mkdirSync(REFERENCE, { recursive: true });
const pages = generatedPages();
const before = new Map(committedPages().map(({ path, text }) => [path, text]));
for (const path of before.keys())
  if (!pages.some((page) => page.path === path)) rmSync(join(REFERENCE, path));

const changed = pages.filter(({ path, text }) => before.get(path) !== text);
for (const { path, text } of changed) {
  mkdirSync(dirname(join(REFERENCE, path)), { recursive: true });
  writeFileSync(join(REFERENCE, path), text);
}
console.log(`${pages.length} pages of the reference, ${changed.length} of them changed.`);

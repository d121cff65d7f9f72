/** The manuscripts of which every number is right, as they stand and without what ties their numbers to figures. */
import { readdirSync, readFileSync } from 'node:fs';
import { readAnnotated } from '../../manuscripts/annotated.ts';

export interface RightManuscript {
  readonly name: string;
  readonly source: string;
}

const ANNOTATED = ['corpus', 'open'].map((name) => new URL(`../../manuscripts/${name}/`, import.meta.url));
const SAMPLES = new URL('../../../shared/samples/', import.meta.url);

export function rightManuscripts(): RightManuscript[] {
  const read = (folder: URL) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.md'))
      .map((name) => ({ name, source: readFileSync(new URL(name, folder), 'utf8') }));
  const corpus = ANNOTATED.flatMap(read).map(({ name, source }) => ({
    name,
    source: readAnnotated(source).source,
  }));
  return [...corpus, ...read(SAMPLES)].flatMap(({ name, source }) => [
    { name, source },
    { name: `${name} without tags and blocks`, source: withoutTies(source) },
  ]);
}

function withoutTies(source: string): string {
  return source.replace(/```measure\n[\s\S]*?```/g, '').replace(/\s*<!--\s*=[\s\S]*?-->/g, '');
}

/** The manuscripts of which every number is right, as they stand and without what ties their numbers to figures. */
import { plainManuscriptsIn } from '../../manuscripts/annotated.ts';
import { CORPUS, type ManuscriptFile, OPEN, SAMPLES } from '../../support/manuscripts.ts';

export function rightManuscripts(): ManuscriptFile[] {
  return [CORPUS, OPEN, SAMPLES].flatMap(plainManuscriptsIn).flatMap(({ name, source }) => [
    { name, source },
    { name: `${name} without tags and blocks`, source: withoutTies(source) },
  ]);
}

function withoutTies(source: string): string {
  return source.replace(/```measure\n[\s\S]*?```/g, '').replace(/\s*<!--\s*=[\s\S]*?-->/g, '');
}

/** How many wrong numbers are found: the table that `npm run mutating` prints, for each so manieth mutant. */
import { readdirSync, readFileSync } from 'node:fs';
import { proofread } from '../../core/proof/proofread.ts';
import { readAnnotated } from './annotated.ts';
import { judgeMutant, mutantsOf } from './mutants.ts';

const [folder = 'corpus', each = '1'] = process.argv
  .slice(2)
  .filter((argument) => !argument.startsWith('--'));
const shows = process.argv.includes('--missed');
const place = new URL(`./${folder}/`, import.meta.url);
let [all, flagged, exact, mended] = [0, 0, 0, 0];

for (const name of readdirSync(place).filter((file) => file.endsWith('.md'))) {
  const { source } = readAnnotated(readFileSync(new URL(name, place), 'utf8'));
  const mutants = mutantsOf(source, proofread({ source })).filter((_, index) => index % Number(each) === 0);
  for (const mutant of mutants) {
    const { isFlagged, isMended } = judgeMutant(mutant, source);
    all++;
    if (isFlagged) flagged++;
    if (isFlagged && mutant.isExact) exact++;
    if (isFlagged && mutant.isExact && isMended) mended++;
    if (shows && !isFlagged)
      console.log(
        `  ${name}:${source.slice(0, mutant.start).split('\n').length}: ${mutant.wrong} for ${mutant.right}`,
      );
  }
  console.log(`${name.padEnd(36)} ${mutants.length} wrong numbers`);
}

const percent = (part: number, of: number) => `${((100 * part) / Math.max(1, of)).toFixed(1)} %`;
console.log(
  `${all} wrong numbers, found ${percent(flagged, all)}, given back by the fix ${percent(mended, exact)}`,
);

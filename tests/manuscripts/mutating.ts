/** How many wrong numbers are found: the table that `npm run mutating` prints, for each so manieth mutant. */
import { proofread } from '../../core/proof/proofread.ts';
import { annotatedIn } from './annotated.ts';
import { judgeMutant, mutantsOf } from './mutants.ts';
import { percent } from './quality.ts';

const [folder = 'corpus', each = '1'] = process.argv
  .slice(2)
  .filter((argument) => !argument.startsWith('--'));
const shows = process.argv.includes('--missed');
let [all, flagged, exact, mended] = [0, 0, 0, 0];

for (const { name, source } of annotatedIn(`tests/manuscripts/${folder}/`)) {
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

console.log(
  `${all} wrong numbers, found ${percent(flagged, all)}, given back by the fix ${percent(mended, exact)}`,
);

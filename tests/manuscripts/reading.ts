/** How well manuscripts are read: the table that `npm run reading` prints. */
import { proofread } from '../../core/proof/proofread.ts';
import { annotatedIn } from './annotated.ts';
import { measure, percent, type Quality } from './quality.ts';

const folders = process.argv.slice(2);
const shows = folders.includes('--differences');
const sum: Quality[] = [];

for (const folder of folders
  .filter((each) => !each.startsWith('--'))
  .concat(folders.length ? [] : 'corpus')) {
  for (const { name, source, expected } of annotatedIn(`tests/manuscripts/${folder}/`)) {
    const quality = measure(proofread({ source }), expected);
    sum.push(quality);
    print(name, quality);
    if (shows)
      for (const { start, number, expected: wanted, got } of quality.differences)
        console.log(`  line ${source.slice(0, start).split('\n').length}: ${number}: ${wanted}; ${got}`);
  }
}

const total = (of: (quality: Quality) => number) => sum.reduce((a, b) => a + of(b), 0);
print('all', {
  numbers: total((q) => q.numbers),
  kindsRight: total((q) => q.kindsRight),
  measuring: total((q) => q.measuring),
  tiesRight: total((q) => q.tiesRight),
  verified: total((q) => q.verified),
  alarms: total((q) => q.alarms),
  differences: [],
});

function print(name: string, quality: Quality): void {
  const { numbers, kindsRight, measuring, tiesRight, verified, alarms } = quality;
  console.log(
    `${name.padEnd(36)} ${String(numbers).padStart(5)} numbers, kinds ${percent(kindsRight, numbers)}, ` +
      `ties ${percent(tiesRight, measuring)}, coverage ${percent(verified, measuring)}, false alarms ${alarms}`,
  );
}

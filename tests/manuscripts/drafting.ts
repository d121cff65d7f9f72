/** How much of the manuscripts a drafted block verifies: the table that `npm run drafting` prints. */
import { draftAnew, FOLDERS, standingAlone } from './anew.ts';

const wanted = process.argv.slice(2).filter((each) => !each.startsWith('--'));
const shows = process.argv.includes('--blocks');
let [before, again, alarms] = [0, 0, 0];

for (const folder of FOLDERS)
  for (const manuscript of standingAlone(folder)) {
    const isMeant = (each: string) => folder.endsWith(`/${each}/`) || manuscript.name.includes(each);
    if (wanted.length > 0 && !wanted.some(isMeant)) continue;
    const anew = draftAnew(manuscript);
    before += anew.before;
    again += anew.again;
    alarms += anew.alarms.length + anew.errors.length;
    print(anew.name, anew.again, anew.before, anew.alarms.length + anew.errors.length, anew.findings.length);
    for (const alarm of [...anew.alarms, ...anew.errors]) console.log(`  false alarm: ${alarm}`);
    if (shows) console.log(anew.block);
  }
print('all', again, before, alarms);

function print(name: string, again: number, before: number, alarms: number, gaps?: number): void {
  const percent = ((100 * again) / Math.max(1, before)).toFixed(0).padStart(3);
  console.log(
    `${name.padEnd(36)} ${String(again).padStart(5)} of ${String(before).padStart(4)} verified again, ${percent} %, ` +
      `false alarms ${alarms}${gaps === undefined ? '' : `, left open ${gaps}`}`,
  );
}

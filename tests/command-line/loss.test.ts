/** Whatever happens to the program while it writes, a file holds its old or its new text. */
import { spawn } from 'node:child_process';
import { watch } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readRecord } from '../../core/record/read.ts';
import { folderWith, manuscript, program, run } from './run.ts';

/** Long enough that writing it takes a while. */
const LONG = `${manuscript('160"')}\n${'Rest a while, and have some tea.\n\n'.repeat(4_000)}`;

/**
 * Runs the program and kills it, as soon as it begins to write beside a file, or after a time.
 *
 * @param delay in milliseconds, from the first sign that it writes
 */
async function killed(folder: string, args: readonly string[], delay: number): Promise<void> {
  const child = spawn(process.execPath, [program, ...args], { cwd: folder, stdio: 'ignore' });
  const watcher = watch(folder, (_, name) => {
    if (name?.startsWith('.')) setTimeout(() => child.kill('SIGKILL'), delay);
  });
  await new Promise((resolve) => child.once('close', resolve));
  watcher.close();
}

describe('A program that is killed while it writes', () => {
  it('leaves the old or the new text of a manuscript that it corrects', { timeout: 300_000 }, async () => {
    const fixed = LONG.replace('160"', '168"');
    const seen = new Set<string>();
    for (let delay = 0; delay < 8; delay++) {
      const folder = await folderWith({ 'wall.md': LONG });
      await killed(folder, ['proof', '--fix', 'wall.md'], delay / 2);
      const text = await readFile(join(folder, 'wall.md'), 'utf8');
      seen.add(text === LONG ? 'old' : text === fixed ? 'new' : 'broken');
    }
    // Whether it is killed in time depends on the machine; what it leaves must not.
    expect(seen).not.toContain('broken');
  });

  it('leaves the record as it was or with the whole signature, and the next one can sign', {
    timeout: 300_000,
  }, async () => {
    for (let delay = 0; delay < 4; delay++) {
      const folder = await folderWith({ 'wall.md': manuscript('168"') });
      await run(folder, ['sign-off', 'wall.md', '--by', 'Ada Lund']);
      await killed(folder, ['sign-off', 'wall.md', '--by', 'Bo Reed'], delay / 2);
      const names = async () => {
        const { signatures, problems } = readRecord(await readFile(join(folder, 'wall.signed.yaml'), 'utf8'));
        expect(problems).toEqual([]);
        return signatures.map(({ by }) => by);
      };
      const before = await names();
      expect([['Ada Lund'], ['Ada Lund', 'Bo Reed']]).toContainEqual(before);
      expect((await run(folder, ['sign-off', 'wall.md', '--by', 'Cy Marsh'])).status).toBe(0);
      expect(await names()).toEqual([...before, 'Cy Marsh']);
    }
  });
});

describe('Programs that write at the same time', () => {
  it('lose none of their signatures', { timeout: 300_000 }, async () => {
    const folder = await folderWith({ 'wall.md': manuscript('168"') });
    const signers = ['Ada Lund', 'Bo Reed', 'Cy Marsh', 'Di Holm'];
    const outcomes = await Promise.all(signers.map((by) => run(folder, ['sign-off', 'wall.md', '--by', by])));
    expect(outcomes.map(({ status, stderr }) => [status, stderr])).toEqual(signers.map(() => [0, '']));
    const { signatures, problems } = readRecord(await readFile(join(folder, 'wall.signed.yaml'), 'utf8'));
    expect(problems).toEqual([]);
    expect(signatures.map(({ by }) => by).sort()).toEqual(signers);
    expect((await readdir(folder)).sort()).toEqual(['wall.md', 'wall.signed.yaml']);
  });
});

/** The plugin in unified's own command line, `remark-cli`, as a project that uses it has it. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, inject, it } from 'vitest';
import { folderWith, manuscript } from './run.ts';

const plugin = join(inject('programs'), 'remark.mjs');
const remark = join(import.meta.dirname, '../../node_modules/remark-cli/cli.js');

function check(folder: string, args: readonly string[]): Promise<{ status: number | null; stderr: string }> {
  const child = spawn(process.execPath, [remark, '--no-color', '--no-stdout', '--quiet', ...args], {
    cwd: folder,
  });
  child.stdin.end();
  let stderr = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    stderr += text;
  });
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (status) => resolve({ status, stderr }));
  });
}

const configured = (options: object) =>
  `export default { plugins: [[(await import(${JSON.stringify(pathToFileURL(plugin).href)})).default, ${JSON.stringify(options)}]] };\n`;

describe('measure-twice/remark', () => {
  it('tells in remark’s own command line what is wrong and where', async () => {
    const folder = await folderWith({ 'wall.md': manuscript('160"'), '.remarkrc.mjs': configured({}) });
    const { status, stderr } = await check(folder, ['--frail', 'wall.md']);

    expect(status).toBe(1);
    expect(stderr).toMatch(
      /7:6-7:10\s+warning\s+The length of the finished edge is 168", not 160".*wrong-figure\s+measure-twice/,
    );
  });

  it('says nothing of a right manuscript', async () => {
    const folder = await folderWith({ 'wall.md': manuscript('168"'), '.remarkrc.mjs': configured({}) });

    expect(await check(folder, ['--frail', 'wall.md'])).toEqual({ status: 0, stderr: '' });
  });
});

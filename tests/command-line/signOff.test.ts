import { execFile } from 'node:child_process';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { readRecord } from '../../core/record/read.ts';
import { folderWith, manuscript, run } from './run.ts';

const git = (folder: string, ...args: string[]) =>
  promisify(execFile)('git', ['-c', 'user.name=A', '-c', 'user.email=a@example.org', ...args], {
    cwd: folder,
  });

const signOff = (folder: string, by: string, ...more: string[]) =>
  run(folder, ['sign-off', 'wall.md', '--by', by, ...more]);
const record = async (folder: string) => readRecord(await readFile(join(folder, 'wall.signed.yaml'), 'utf8'));

describe('sign-off', () => {
  it('writes a record beside the manuscript, and tells what was signed', async () => {
    const folder = await folderWith({ 'wall.md': manuscript('168"') });
    const { status, stdout } = await signOff(folder, ' Ada   Lund ');

    expect(status).toBe(0);
    expect(stdout).toMatch(
      /^Ada Lund signed off wall\.md on \d{4}-\d\d-\d\d: 1 number was verified\.\nThe record is wall\.signed\.yaml\.\n$/,
    );
    expect((await record(folder)).signatures).toMatchObject([
      { by: 'Ada Lund', lines: [{ numbers: [{ account: 'verified', figure: 'finished.edge' }] }] },
    ]);
    expect((await readdir(folder)).sort()).toEqual(['wall.md', 'wall.signed.yaml']);
  });

  it('signs nothing that has mistakes, unless it is accepted as it stands', async () => {
    const folder = await folderWith({ 'wall.md': manuscript('160"') });
    const { status, stdout } = await signOff(folder, 'Ada Lund');
    expect(status).toBe(1);
    expect(stdout).toContain('Mistake  wall.md:7:6');
    expect(stdout).toContain('It was not signed off.');
    expect(await readdir(folder)).toEqual(['wall.md']);

    expect((await signOff(folder, 'Ada Lund', '--as-it-stands')).status).toBe(0);
    expect((await record(folder)).signatures[0]?.lines[0]?.numbers).toMatchObject([
      { account: 'wrong', figure: 'finished.edge' },
    ]);
  });

  it('keeps every earlier signature', async () => {
    const folder = await folderWith({ 'wall.md': manuscript('168"') });
    await signOff(folder, 'Ada Lund');
    const first = await readFile(join(folder, 'wall.signed.yaml'), 'utf8');
    await signOff(folder, 'Bo Reed');
    const second = await readFile(join(folder, 'wall.signed.yaml'), 'utf8');
    expect(second.startsWith(first)).toBe(true);
    expect((await record(folder)).signatures.map(({ by }) => by)).toEqual(['Ada Lund', 'Bo Reed']);
  });

  it('leaves a record alone that cannot be read, and says where', async () => {
    const broken = 'record: 1\nsigned by: [\n';
    const folder = await folderWith({ 'wall.md': manuscript('168"'), 'wall.signed.yaml': broken });
    const { status, stderr } = await signOff(folder, 'Ada Lund');
    expect(status).toBe(2);
    expect(stderr).toMatch(/^measure-twice: wall\.signed\.yaml:\d+:\d+: This signature cannot be read/);
    expect(await readFile(join(folder, 'wall.signed.yaml'), 'utf8')).toBe(broken);
  });

  it.each([
    [['sign-off', 'wall.md'], "required option '--by <name>'"],
    [['sign-off', 'wall.md', '--by', '  '], 'Say who signs it off.'],
    [['sign-off', '.', '--by', 'Ada'], 'Name one file; . is a folder.'],
    [
      ['sign-off', 'note.md', '--by', 'Ada'],
      'note.md has no measure block, so there is nothing to sign off.',
    ],
    [['sign-off', 'none.md', '--by', 'Ada'], 'Cannot read none.md: there is no such file or folder.'],
  ])('cannot run %s', async (args, message) => {
    const folder = await folderWith({ 'wall.md': manuscript('168"'), 'note.md': 'A note.' });
    const { status, stderr } = await run(folder, args);
    expect(status).toBe(2);
    expect(stderr).toContain(message);
    expect((await readdir(folder)).sort()).toEqual(['note.md', 'wall.md']);
  });
});

describe('proof of a manuscript that was signed off', () => {
  it('tells what the signature covers, and what became stale', async () => {
    const folder = await folderWith({ 'wall.md': manuscript('168"') });
    await signOff(folder, 'Ada Lund');
    expect((await run(folder, ['proof'])).stdout).toMatch(
      /Signed off by Ada Lund on [\d-]+, just as it stands\./,
    );

    const wider = manuscript('168"').replace('36" x', '40" x');
    await writeFile(join(folder, 'wall.md'), wider);
    const { status, stdout } = await run(folder, ['proof'], { COLUMNS: '120' });
    expect(status).toBe(1);
    expect(stdout.replace(/\s+/g, ' ')).toContain(
      'The length of the finished edge is 176", not 168": it was right until “finished” changed from 36" x 48" to 40" x 48".',
    );
    expect(stdout.replace(/\s+/g, ' ')).toMatch(
      /Signed off by Ada Lund on [\d-]+; not covered by the signature: 1 number is right no more \(line 7\)\./,
    );

    await run(folder, ['proof', '--fix']);
    expect((await run(folder, ['proof'])).stdout.replace(/\s+/g, ' ')).toContain(
      'not covered by the signature: 1 number has changed (line 7).',
    );
  });

  it('goes on without a record that cannot be read, and names the place', async () => {
    const folder = await folderWith({ 'wall.md': manuscript('168"'), 'wall.signed.yaml': 'pages: 7\n' });
    const { status, stderr, stdout } = await run(folder, ['proof']);
    expect(status).toBe(0);
    expect(stderr).toBe(
      'measure-twice: wall.signed.yaml:1:1: This signature does not count: “record” cannot be read.\n',
    );
    expect(stdout).not.toContain('Signed off');
  });
});

describe('corrections', () => {
  const QUILT = manuscript('168"').replace('Wall hanging', 'Wall & <2');

  it('lists what has changed since the last sign-off, in Markdown', async () => {
    const folder = await folderWith({ 'wall.md': QUILT });
    await signOff(folder, 'Ada Lund');
    await writeFile(join(folder, 'wall.md'), QUILT.replace('36" x', '40" x').replace('168"', '176"'));
    const { status, stdout } = await run(folder, ['corrections', 'wall.md']);
    expect(status).toBe(0);
    expect(stdout.split('\n')).toEqual([
      expect.stringMatching(/^# Corrections to Wall \\?& \\?<2$/),
      '',
      expect.stringMatching(
        /^One number has changed since Ada Lund signed it off on \d+ \w+ \d{4}\. Please write it into your copy\.$/,
      ),
      '',
      '| Where | In the words | Printed | Should be |',
      '| - | - | - | - |',
      expect.stringMatching(/^\| Wall \\?& \\?<2 \| Bind \*168"\* of edge\. \| 168" \| \*\*176"\*\* \|$/),
      '',
    ]);
  });

  it('writes an HTML page that holds everything, with the text of the author escaped', async () => {
    const folder = await folderWith({ 'wall.md': QUILT });
    await signOff(folder, 'Ada Lund');
    await writeFile(join(folder, 'wall.md'), QUILT.replace('36" x', '40" x').replace('168"', '176"'));
    const { stdout } = await run(folder, [
      'corrections',
      'wall.md',
      '--format',
      'html',
      '--out',
      'list.html',
    ]);
    expect(stdout).toBe('');
    const page = await readFile(join(folder, 'list.html'), 'utf8');
    expect(page).toMatch(/^<!doctype html><html lang="en">/);
    expect(page).toContain('<h1>Corrections to Wall &#x26; &#x3C;2</h1>');
    expect(page).toContain('<td><strong>176"</strong></td>');
    expect(page).not.toMatch(/<2|https?:|src=/);
  });

  it('compares with a revision in git', async () => {
    const folder = await folderWith({ 'deep/wall.md': QUILT });
    await git(folder, 'init', '-q');
    await git(folder, 'add', '.');
    await git(folder, 'commit', '-qm', 'First printing');
    await git(folder, 'tag', 'v1');
    await writeFile(join(folder, 'deep/wall.md'), QUILT.replace('36" x', '40" x').replace('168"', '176"'));
    await writeFile(join(folder, 'deep/new.md'), QUILT);
    const { stdout } = await run(folder, ['corrections', 'deep', '--since', 'v1']);
    expect(stdout).toContain('One number has changed since revision v1.');
    expect(stdout).toContain('| 168" | **176"** |');
    expect(stdout.match(/^# /gm)).toHaveLength(1);
  });

  it('says why there is nothing to compare with', async () => {
    const folder = await folderWith({ 'wall.md': QUILT });
    const said = async (args: string[], env = {}) => {
      const { status, stderr, stdout } = await run(folder, ['corrections', 'wall.md', ...args], env);
      expect([status, stdout]).toEqual([2, '']);
      return stderr;
    };
    expect(await said([])).toBe(
      'measure-twice: Nothing is there to compare wall.md with: it has not been signed off. Name a git revision with --since.\n',
    );
    expect(await said(['--since', 'v1'])).toBe(
      'measure-twice: Cannot read wall.md in revision v1: its folder is in no git repository.\n',
    );
    expect(await said(['--since', '--help'])).toBe('measure-twice: “--help” is no revision.\n');
    expect(await said(['--since', 'v1'], { PATH: '' })).toBe(
      'measure-twice: Cannot read wall.md in revision v1: git is not installed.\n',
    );
    await git(folder, 'init', '-q');
    await git(folder, 'commit', '-q', '--allow-empty', '-m', 'Nothing yet');
    expect(await said(['--since', 'v1'])).toBe(
      'measure-twice: Cannot read wall.md in revision v1: git knows no such revision.\n',
    );
    expect(await said(['--since', 'HEAD'])).toBe(
      'measure-twice: Nothing is there to compare wall.md with: revision HEAD does not have it.\n',
    );
  });
});

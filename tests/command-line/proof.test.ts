import { chmod, lstat, mkdir, readdir, readFile, stat, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { folderWith, manuscript, run } from './run.ts';

const right = manuscript('168"');
const wrong = manuscript('160"');

describe('proof', () => {
  it('finds no mistake in a clean manuscript, and ends with status 0', async () => {
    const folder = await folderWith({ 'wall.md': right });

    expect(await run(folder, ['proof', 'wall.md'])).toEqual({
      status: 0,
      stdout: 'No mistake found in 1 manuscript.\nThe one measurement is checked and right.\n',
      stderr: '',
    });
  });

  it('shows a mistake with its place, the reason, the line and the fix, and ends with status 1', async () => {
    const folder = await folderWith({ 'wall.md': wrong });
    const { status, stdout } = await run(folder, ['proof', 'wall.md']);

    expect(status).toBe(1);
    expect(stdout).toContain('Mistake  wall.md:7:6\n');
    expect(stdout).toContain('168", not 160"');
    expect(stdout).toContain('     7 │ Bind 160" <!-- = finished.edge --> of edge.\n       │      ^^^^\n');
    expect(stdout).toContain('  To fix it: Change to 168"\n');
    expect(stdout).toContain('1 mistake in 1 manuscript.\n');
    expect(stdout).toContain('It can be corrected for you: run the same command with --fix.\n');
  });

  it('takes every Markdown file of this folder that Git does not ignore', async () => {
    const folder = await folderWith({
      'a/one.md': right,
      'a/two.markdown': right,
      'a/three.MD': right,
      'a/four.txt': wrong,
      'drafts/old.md': wrong,
      'node_modules/x/README.md': wrong,
      '.gitignore': 'drafts/\n',
    });
    const { status, stdout } = await run(folder, ['proof', '--format', 'json']);
    const report = JSON.parse(stdout) as { documents: { path: string }[] };

    expect(status).toBe(0);
    expect(report.documents.map(({ path }) => path)).toEqual(['a/one.md', 'a/three.MD', 'a/two.markdown']);
  });

  it('knows what the repository around a folder ignores', async () => {
    const folder = await folderWith({
      '.git/HEAD': 'ref: refs/heads/main\n',
      '.gitignore': 'patterns/old/\n',
      'patterns/new.md': right,
      'patterns/old/wall.md': wrong,
    });
    const { status, stdout } = await run(folder, ['proof', 'patterns', '--format', 'json']);

    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ documents: [{ path: 'patterns/new.md' }] });
  });

  it('reads a file that is named once, even when it is named twice, ignored, or no .md', async () => {
    const folder = await folderWith({ 'draft.txt': wrong, '.gitignore': 'draft.txt\n' });
    const { status, stdout } = await run(folder, [
      'proof',
      '--format',
      'json',
      'draft.txt',
      './draft.txt',
      '.',
    ]);

    expect(status).toBe(1);
    expect(JSON.parse(stdout)).toMatchObject({
      documents: [{ path: 'draft.txt' }],
      summary: { documents: 1 },
    });
  });

  it('says when a folder holds no manuscript', async () => {
    const folder = await folderWith({});

    expect(await run(folder, ['proof'])).toEqual({
      status: 0,
      stdout: 'There is no manuscript here.\n',
      stderr: '',
    });
  });

  it('lists the coverage of several manuscripts, and of notes that have no measure block', async () => {
    const folder = await folderWith({ 'a.md': right, 'b.md': wrong, 'note.md': 'Bring 3 pins.' });
    const { stdout } = await run(folder, ['proof']);

    expect(stdout).toContain('1 mistake in 1 of 3 manuscripts.\n');
    expect(stdout).toContain(
      '  ✓   1 of 1 checked  a.md\n  ✗   0 of 1 checked  b.md\n  · no measure block  note.md\n',
    );
  });

  it('says nothing beyond mistakes when it is asked to be quiet', async () => {
    const folder = await folderWith({ 'a.md': right, 'b.md': wrong });

    expect(await run(folder, ['proof', 'a.md', '--quiet'])).toEqual({ status: 0, stdout: '', stderr: '' });
    const { stdout } = await run(folder, ['proof', '--quiet']);
    expect(stdout).toMatch(/^Mistake {2}b\.md:7:6\n/);
    expect(stdout).not.toContain('manuscript');
  });

  it('counts numbers that no figure accounts for as findings when it is strict', async () => {
    const folder = await folderWith({ 'wall.md': `${right}\nCut 5 strips.\n` });
    expect((await run(folder, ['proof'])).status).toBe(0);

    const { status, stdout } = await run(folder, ['proof', '--strict']);
    expect(status).toBe(1);
    expect(stdout).toContain('Warning  wall.md:9:5\n');
    const json = JSON.parse((await run(folder, ['proof', '--strict', '--format', 'json'])).stdout);
    expect(json.documents[0].findings).toMatchObject([
      { code: 'unaccounted', severity: 'warning', fixes: [] },
    ]);
  });

  it('writes colours only where they are wanted', async () => {
    const folder = await folderWith({ 'wall.md': wrong });
    const colour = '\u001b[';

    expect((await run(folder, ['proof'])).stdout).not.toContain(colour);
    expect((await run(folder, ['proof'], { CI: 'true' })).stdout).not.toContain(colour);
    expect((await run(folder, ['proof'], { FORCE_COLOR: '1' })).stdout).toContain(colour);
    expect((await run(folder, ['proof'], { NO_COLOR: '1', FORCE_COLOR: '' })).stdout).not.toContain(colour);
  });
});

describe('proof --format sarif', () => {
  it('writes a report for code hosts, in which each rule links to its page', async () => {
    const folder = await folderWith({ 'patterns/wall.md': wrong });
    const { status, stdout } = await run(folder, ['proof', '--format', 'sarif']);
    const elsewhere = ['proof', '--format', 'sarif', '--reference', 'https://pages.example/reference'];
    const ruleOf = (report: string) => JSON.parse(report).runs[0].tool.driver.rules[0];

    expect(status).toBe(1);
    expect(JSON.parse(stdout)).toMatchObject({
      version: '2.1.0',
      runs: [{ results: [{ ruleId: 'wrong-figure', level: 'error' }] }],
    });
    expect(ruleOf(stdout).helpUri).toMatch(/^file:.*\/shared\/reference\/findings\/wrong-figure\.md$/);
    expect(ruleOf((await run(folder, elsewhere)).stdout).helpUri).toBe(
      'https://pages.example/reference/findings/wrong-figure.md',
    );
  });
});

describe('proof --format html', () => {
  it('writes the proof sheet, one page for all manuscripts', async () => {
    const folder = await folderWith({ 'a.md': right, 'b.md': wrong });
    const { status, stdout } = await run(folder, ['proof', '--format', 'html', '--out', 'sheet.html']);
    const sheet = await readFile(join(folder, 'sheet.html'), 'utf8');

    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(sheet).toMatch(/^<!doctype html><html lang="en">/);
    expect(sheet).toContain('<title>Proof sheets: 2 manuscripts</title>');
    expect(sheet).toMatch(/<\/html>\n$/);
  });
});

describe('proof --out', () => {
  it('writes the report into the file and nothing else', async () => {
    const folder = await folderWith({ 'wall.md': wrong });
    const { status, stdout } = await run(folder, ['proof', '--out', 'report.txt'], { FORCE_COLOR: '1' });

    expect({ status, stdout }).toEqual({ status: 1, stdout: '' });
    expect(await readFile(join(folder, 'report.txt'), 'utf8')).toMatch(/^Mistake {2}wall\.md:7:6\n/);
    expect(await readdir(folder)).toEqual(['report.txt', 'wall.md']);
  });

  it('corrects nothing when the report has nowhere to go', async () => {
    const folder = await folderWith({ 'wall.md': wrong });
    const { status, stdout, stderr } = await run(folder, ['proof', '--fix', '--out', 'nowhere/report.txt']);

    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toBe('measure-twice: Cannot write nowhere/report.txt: there is no such file or folder.\n');
    expect(await readFile(join(folder, 'wall.md'), 'utf8')).toBe(wrong);
  });
});

describe('proof --fix', () => {
  it('changes the number and not one character more: byte order mark, line ends, tabs and emoji stay', async () => {
    const text = (edge: string) => `\ufeff${manuscript(edge)}\tend 🧵 \t \n`.replaceAll('\n', '\r\n');
    const folder = await folderWith({ 'wall.md': text('160"') });
    const { status, stdout } = await run(folder, ['proof', '--fix']);

    expect(status).toBe(0);
    expect(stdout).toBe(
      '1 mistake corrected.\nNo mistake found in 1 manuscript.\nThe one measurement is checked and right.\n',
    );
    expect(await readFile(join(folder, 'wall.md'), 'utf8')).toBe(text('168"'));
    expect(await readdir(folder)).toEqual(['wall.md']);
  });

  it('finds nothing left to fix in a second run, and then writes nothing', async () => {
    const folder = await folderWith({ 'wall.md': wrong });
    await run(folder, ['proof', '--fix']);
    const before = await stat(join(folder, 'wall.md'));
    const { stdout } = await run(folder, ['proof', '--fix']);

    expect(stdout).not.toContain('corrected');
    expect((await stat(join(folder, 'wall.md'))).ino).toBe(before.ino);
  });

  it('keeps the permissions, and writes through a link', async () => {
    const folder = await folderWith({ 'real/wall.md': wrong });
    await chmod(join(folder, 'real/wall.md'), 0o640);
    await symlink('real/wall.md', join(folder, 'link.md'));
    await run(folder, ['proof', '--fix', 'link.md']);

    expect(await readFile(join(folder, 'real/wall.md'), 'utf8')).toBe(right);
    expect((await stat(join(folder, 'real/wall.md'))).mode & 0o777).toBe(0o640);
    expect((await lstat(join(folder, 'link.md'))).isSymbolicLink()).toBe(true);
  });
});

describe('What cannot be read', () => {
  it('ends with status 2, names every such file, and nothing is written', async () => {
    const folder = await folderWith({
      'wall.md': wrong,
      'picture.md': new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 1, 2]),
      'latin.md': new Uint8Array([0x42, 0xbd, 0x22]),
    });
    const { status, stdout, stderr } = await run(folder, ['proof', '--fix', '.', 'gone.md']);

    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toBe(
      [
        'measure-twice: Cannot read gone.md: there is no such file or folder.',
        'measure-twice: Cannot read latin.md: it is not a text file in UTF-8.',
        'measure-twice: Cannot read picture.md: it is not a text file in UTF-8.',
        '',
      ].join('\n'),
    );
    expect(await readFile(join(folder, 'wall.md'), 'utf8')).toBe(wrong);
  });

  it.each([
    [['proof', '--format', 'xml'], 'Choose text, json, sarif or html.'],
    [['read', 'a.md', '--format', 'sarif'], 'Choose text or json.'],
    [['proof', '--reference', 'pages'], 'Give a whole address, such as https://….'],
    [['proof', '--colour'], "unknown option '--colour'"],
    [['prove'], "unknown command 'prove'"],
    [['read'], "missing required argument 'file'"],
    [['read', '.'], 'Name one file; . is a folder.'],
  ])('refuses %j with one clear line', async (args, message) => {
    const folder = await folderWith({});
    await mkdir(join(folder, 'empty'));
    const { status, stdout, stderr } = await run(folder, args);

    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr.split('\n')[0]).toContain(message);
  });
});

describe('Help and version', () => {
  it('are answers with status 0', async () => {
    const folder = await folderWith({});
    const help = await run(folder, ['proof', '--help']);
    const version = await run(folder, ['--version']);

    expect(help.status).toBe(0);
    expect(version).toMatchObject({ status: 0, stdout: expect.stringMatching(/^\d+\.\d+\.\d+\n$/) });
  });
});

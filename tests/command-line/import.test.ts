import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { wordFileOf } from '../support/wordFile.ts';
import { folderWith, run } from './run.ts';

const PAGE = `<html><head><style>p {}</style><script>steal()</script></head><body onload="steal()">
<!-- office --><h1>Skerry</h1>
<p>Cut 5 strips 31/2" wide, <b>2</b><b>½"</b> and 2<sup>3</sup>/<sub>4</sub>"; see 311/16".</p>
<table><tr><th>Fabric</th><th>Lap</th></tr><tr><td><p>A</p><p>slate</p></td><td>1⅞ yd</td></tr></table>
<p>Bind 168" <!-- = finished.edge --> of it. <a href="javascript:steal()">There</a>, <a href="https://pages.example/">here</a>.
<img src="data:image/png;base64,AAAA" alt="x"></p></body></html>`;

describe('import', () => {
  it('turns a web page into Markdown, and tells what it mended, doubts and left out', async () => {
    const folder = await folderWith({ 'quilt.html': PAGE });
    const { status, stdout, stderr } = await run(folder, ['import', 'quilt.html']);

    expect(status).toBe(0);
    expect(stdout.split('\n')).toEqual([
      '# Skerry',
      '',
      'Cut 5 strips 3 1/2" wide, **2½"** and 2 3/4"; see 311/16".',
      '',
      '| Fabric     | Lap   |',
      '| ---------- | ----- |',
      '| A<br>slate | 1⅞ yd |',
      '',
      expect.stringMatching(
        /^Bind 168" <!-- = finished\.edge --> ?of it\. There, \[here\]\(https:\/\/pages\.example\/\)\.$/,
      ),
      '',
    ]);
    expect(stderr.split('\n')).toEqual([
      'line 3: “31/2” is now “3 1/2”: the space behind the whole number was lost.',
      'line 3: “2³/₄” is now “2 3/4”: its digits were raised and lowered.',
      'line 3: please look at “311/16”: it may be 3 11/16 or 31 1/16. It was left as it is.',
      'Left out: a style sheet.',
      'Left out: a script.',
      'Left out: an unsafe link.',
      'Left out: a picture.',
      '',
    ]);
  });

  it('turns a word processor’s file into Markdown', async () => {
    const text = '# Skerry\n\n- Cut **5** strips 2½" wide.\n- Sew.\n\n| A | B |\n|---|---|\n| 1 | 2½" |\n';
    const folder = await folderWith({ 'quilt.docx': await wordFileOf(text) });
    const { status, stdout, stderr } = await run(folder, ['import', 'quilt.docx', '--out', 'quilt.md']);

    expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: '', stderr: '' });
    expect(await readFile(join(folder, 'quilt.md'), 'utf8')).toBe(
      '# Skerry\n\n- Cut **5** strips 2½" wide.\n- Sew.\n\n| A | B   |\n| - | --- |\n| 1 | 2½" |\n',
    );
  });

  it('turns the bullets and tabs of plain text into those of Markdown', async () => {
    const text = 'Skerry\r\n\r\n• Cut 31/2" <strips>\r\n    • Sew\r\n\r\nFabric\tLap\r\nA\t1 yd\r\n';
    const folder = await folderWith({ 'quilt.txt': text });
    const { stdout, stderr } = await run(folder, ['import', 'quilt.txt']);

    expect(stdout).toBe(
      'Skerry\n\n- Cut 3 1/2" \\<strips>\n- Sew\n\n| Fabric | Lap |\n| --- | --- |\n| A | 1 yd |\n',
    );
    expect(stderr).toMatch(/^line 3: “31\/2” is now “3 1\/2”/);
  });

  it('reads a page in the encoding that it names', async () => {
    const page = '<meta charset="windows-1252"><p>Cut 2½" strips.</p>';
    const folder = await folderWith({ 'old.htm': Uint8Array.from(page, (letter) => letter.charCodeAt(0)) });

    expect((await run(folder, ['import', 'old.htm'])).stdout).toBe('Cut 2½" strips.\n');
  });

  it('never writes over a file unless it is told to', async () => {
    const folder = await folderWith({ 'quilt.txt': 'New.', 'quilt.md': 'Old.' });
    const args = ['import', 'quilt.txt', '--out', 'quilt.md'];

    expect(await run(folder, args)).toEqual({
      status: 2,
      stdout: '',
      stderr: 'measure-twice: quilt.md is there already; add --force to write over it.\n',
    });
    expect(await readFile(join(folder, 'quilt.md'), 'utf8')).toBe('Old.');

    expect((await run(folder, [...args, '--force'])).status).toBe(0);
    expect(await readFile(join(folder, 'quilt.md'), 'utf8')).toBe('New.\n');
  });

  it.each([
    ['gone.docx', 'Cannot read gone.docx: there is no such file or folder.'],
    ['broken.docx', 'Cannot read broken.docx: it is damaged, or not a .docx file.'],
    ['old.doc', 'Cannot read old.doc: open it in the program that wrote it and save it as .docx first.'],
    ['done.md', 'Cannot read done.md: it is Markdown already.'],
    ['quilt.pdf', 'Cannot read quilt.pdf: only .docx, .html and .txt files can be imported.'],
    ['latin.txt', 'Cannot read latin.txt: it is not a text in UTF-8. Save it with this encoding first.'],
  ])('refuses %s with one clear line', async (file, message) => {
    const bytes = new Uint8Array([0x42, 0xbd, 0x22]);
    const folder = await folderWith({ 'broken.docx': bytes, 'latin.txt': bytes, 'old.doc': bytes });

    expect(await run(folder, ['import', file])).toEqual({
      status: 2,
      stdout: '',
      stderr: `measure-twice: ${message}\n`,
    });
  });
});

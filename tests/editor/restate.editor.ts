/**
 * A house file is changed in VS Code and not saved: a manuscript that uses it is out of date at once, and restating all
 * numbers asks in the preview panel about those that need a look. It leaves a picture in the folder `artefacts`.
 */
import { cp, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { repository, requireBuilt } from './places.ts';
import { removeFolder, temporaryFolder } from './programs.ts';
import { keepEvidenceOfFailures, openVisualStudioCode, type VisualStudioCode } from './vscode.ts';

const MANUSCRIPT = 'gull-wing-wall-quilt.md';
/** A number that only its sentence ties to its figure, which the samples have none of. */
const UNTAGGED = 'Trim the binding strips to 2¼" wide.';

let workspace: string;
let editor: VisualStudioCode;
/** The manuscript as the editor opens it. */
let before: string;
keepEvidenceOfFailures(() => editor);

beforeAll(async () => {
  workspace = join(await temporaryFolder('line'), 'line');
  await cp(join(repository, 'shared/samples'), workspace, { recursive: true });
  const file = join(workspace, MANUSCRIPT);
  // The sample says itself how wide its strip is; here the house says it.
  const sample = (await readFile(file, 'utf8')).replace(
    'binding: { from: C, strip: 2 1/4",',
    'binding: { from: C,',
  );
  before = `${sample}\n## Binding\n\n${UNTAGGED}\n`;
  await writeFile(file, before);
  editor = await openVisualStudioCode({
    workspace,
    vsix: requireBuilt('npm run package', 'measure-twice.vsix', 'dist/measure-twice.vsix'),
  });
});

afterAll(async () => {
  await editor?.dispose();
  await removeFolder(join(workspace, '..'));
});

describe('a house file that is changed and not saved, in VS Code', () => {
  it('makes the numbers of a dependent manuscript stale, and restating previews them', async () => {
    await editor.openFile(MANUSCRIPT);
    await editor.waitForStatus(/\d+ of \d+ checked/);
    await editor.openFile('house.md');
    await editor.placeCursor('binding strip: 2 1/4"', 'binding strip: 2 '.length);
    for (let deleted = 0; deleted < '1/4'.length; deleted++) await editor.page.keyboard.press('Delete');
    await editor.page.keyboard.type('1/2');
    await editor.openFile(MANUSCRIPT);
    const problems = await editor.waitForProblems((all) =>
      all.some(({ code, file }) => code === 'stale-figure' && file === MANUSCRIPT),
    );
    const stale = problems.filter(({ code, file }) => code === 'stale-figure' && file === MANUSCRIPT);
    expect(stale.length).toBeGreaterThan(1);
    for (const { message } of stale) expect(message).toContain('it was right until');

    await editor.runCommand('Measure Twice: Restate All Numbers of Manuscripts That Share This House File');
    const apply = editor.page.getByRole('button', { name: 'Apply', exact: true });
    await apply.waitFor();
    await editor.screenshot('restate-preview');

    await apply.click();
    await editor.waitForNotification(/restated\.$/);
    const after = await editor.text();
    expect(after).toContain(UNTAGGED);
    expect(after).toContain('2½" <!-- = binding.strip -->');
    // Numbers only: everything else is as it was.
    const words = (text: string) => text.replace(/[\d½¼¾⅛⅜⅝⅞]+/g, '#');
    expect(words(after)).toBe(words(before));
  });
});

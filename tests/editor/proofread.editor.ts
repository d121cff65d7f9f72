/**
 * The product in real editors, as packaged: an author opens a flawed manuscript, sees what is wrong, asks why,
 * and takes the fix. VS Code runs the extension; Neovim runs `measure-twice serve --stdio`.
 *
 * What both show is compared with what the command line says of the same file.
 */
import { existsSync, readdirSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Diagnostic, type NeovimReport, runInNeovim } from './neovim.ts';
import { repository, requireBuilt } from './places.ts';
import type { Place, Problem } from './problems.ts';
import { run } from './programs.ts';
import { keepEvidenceOfFailures, openVisualStudioCode, type Theme, type VisualStudioCode } from './vscode.ts';

/** Everything about the product that these checks take as given. */
const product = {
  vsix: ['measure-twice.vsix', 'dist/measure-twice.vsix'],
  program: 'dist/measure-twice.mjs',
  /** The name that stands behind each finding in the editor. */
  source: 'Measure Twice',
  /** Stands in each hover over a number that a figure accounts for. */
  explanation: /Why this number/,
  coverage: /\d+ of \d+ checked/,
  samples: join(repository, 'shared/samples'),
  /** The folder of flawed manuscripts among the samples. */
  flawed: 'before-proofreading',
};

const themes: Theme[] = ['light', 'dark'];

/** One finding of `measure-twice proof --format json`, as far as an editor shows it. */
interface Finding {
  code: string;
  severity: string;
  message: string;
  start: Place;
  end: Place;
}

/** The manuscript, relative to the samples. */
let file: string;
/** What the command line says of it, from the top down. */
let expected: Finding[];

beforeAll(async () => {
  file = join(product.flawed, firstManuscript(join(product.samples, product.flawed)));
  const program = requireBuilt('npm run build', product.program);
  // Status 1 says that there are findings.
  const json = await run(process.execPath, [program, 'proof', '--format', 'json', file], {
    cwd: product.samples,
    accept: [1],
  });
  const { documents } = JSON.parse(json) as { documents: { findings: Finding[] }[] };
  expected = (documents[0]?.findings ?? []).filter(isMarked).sort(byPlace);
});

describe('a flawed manuscript in VS Code', () => {
  let editor: VisualStudioCode;
  let problems: Problem[];
  /** The first error from the top. */
  let target: Problem;
  keepEvidenceOfFailures(() => editor);

  beforeAll(async () => {
    const vsix = requireBuilt('npm run package', ...product.vsix);
    // An old package would be compared with a new command line.
    if (statSync(vsix).mtimeMs < statSync(requireBuilt('npm run build', product.program)).mtimeMs) {
      fail(`${basename(vsix)} is older than ${product.program}. Run \`npm run package\` first.`);
    }
    editor = await openVisualStudioCode({ workspace: product.samples, vsix });
    await editor.openFile(file);
    problems = (await editor.waitForProblems((all) => all.some(isOurs))).filter(isOurs).sort(byPlace);
    target = problems.find(({ severity }) => severity === 'error') ?? fail('There is no error.');
  });

  afterAll(async () => {
    if (target === undefined) await editor?.keepEvidence('failed-to-proofread');
    await editor?.dispose();
  });

  it('shows in the Problems panel what the command line says', () => {
    expect(problems.filter(isMarked).map(asFinding)).toEqual(expected.map(asFinding));
  });

  it('underlines what is wrong', async () => {
    await editor.placeCursorAt(target.start);
    await editor.waitForSquiggle('error');
  });

  it('shows the coverage in the status bar', async () => {
    expect(await editor.waitForStatus(product.coverage)).toMatch(product.coverage);
  });

  it.each(themes)('says what is wrong in the hover, in the %s theme', async (theme) => {
    await editor.setTheme(theme);
    await editor.placeCursorAt(target.start);
    expect(await editor.hover(target.message, product.explanation)).toContain(product.source);
    await editor.screenshot(`proofread-hover-${theme}`);
    await editor.escape();
  });

  it.each(themes)('offers fixes, in the %s theme', async (theme) => {
    await editor.setTheme(theme);
    await editor.placeCursorAt(target.start);
    expect(await editor.quickFixes()).not.toEqual([]);
    await editor.screenshot(`proofread-quick-fix-${theme}`);
    await editor.escape();
  });

  it('changes only the number when the first fix is taken, and the finding goes', async () => {
    await editor.setTheme('light');
    await editor.placeCursorAt(target.start);
    const before = await editor.text();
    const [title = fail('There is no quick fix.')] = await editor.quickFixes();
    await editor.chooseQuickFix(title);
    await editor.waitForProblems((now) => !now.some((problem) => isSame(problem, target)));
    expectChangeWithin(before, await editor.text(), target);
    await editor.screenshot('proofread-after-fix');
  });

  function isOurs(problem: Problem): boolean {
    return problem.source === product.source && problem.file === file;
  }
});

describe('a flawed manuscript in Neovim', () => {
  let report: NeovimReport;

  beforeAll(async () => {
    const server = [process.execPath, requireBuilt('npm run build', product.program), 'serve', '--stdio'];
    report = await runInNeovim({ workspace: product.samples, file, server });
  });

  it('has the diagnostics that the command line says', () => {
    const sources = new Set(report.diagnostics.map(({ source }) => source));
    expect([...sources]).toEqual([product.source]);
    const ours = report.diagnostics.map(asProblem).filter(isMarked).sort(byPlace);
    expect(ours.map(asFinding)).toEqual(expected.map(asFinding));
  });

  it('explains the first error in the hover', () => {
    expect(report.hover).toMatch(product.explanation);
  });

  it('changes only the number when the first code action is applied, and the diagnostic goes', () => {
    const first = report.diagnostics.find(({ severity }) => severity === 'error');
    const target = asProblem(first ?? fail('There is no error.'));
    expect(report.diagnosticsAfter.map(asProblem).some((diagnostic) => isSame(diagnostic, target))).toBe(
      false,
    );
    expectChangeWithin(report.before, report.after, target);
  });

  it('ends the server in good order', () => {
    expect(report.exit).toEqual({ code: 0, signal: 0 });
  });

  function asProblem({ start, end, message, code, severity }: Diagnostic) {
    const place = ({ line, character }: Diagnostic['start']) => ({ line: line + 1, column: character + 1 });
    return { start: place(start), end: place(end), message, code: String(code), severity };
  }
});

function firstManuscript(folder: string): string {
  const names = existsSync(folder) ? readdirSync(folder).sort() : [];
  return names.find((name) => name.endsWith('.md')) ?? fail(`There is no manuscript in ${folder}.`);
}

function fail(message: string): never {
  throw new Error(message);
}

type Shown = Pick<Problem, 'severity' | 'message' | 'code' | 'start' | 'end'>;

/** Only what all three ways of proofreading tell of a finding. */
function asFinding({ severity, message, code, start, end }: Shown | Finding) {
  const place = ({ line, column }: Place) => `${line}:${column}`;
  return { severity, message, code, start: place(start), end: place(end) };
}

/** Errors and warnings; a hint is not in the Problems panel. */
function isMarked({ severity }: { severity: string }): boolean {
  return severity === 'error' || severity === 'warning';
}

/** From the top down; findings at one place by their text. */
function byPlace(a: Shown | Finding, b: Shown | Finding): number {
  return a.start.line - b.start.line || a.start.column - b.start.column || a.message.localeCompare(b.message);
}

function isSame(a: Shown, b: Shown): boolean {
  return a.message === b.message && a.start.line === b.start.line && a.start.column === b.start.column;
}

/** The text has changed, and all that changed lies within the range of the finding. */
function expectChangeWithin(before: string, after: string, { start, end }: Shown): void {
  const head = before.slice(0, offsetOf(before, start));
  const tail = before.slice(offsetOf(before, end));
  expect(after).not.toBe(before);
  expect(after.slice(0, head.length)).toBe(head);
  expect(after.slice(Math.max(head.length, after.length - tail.length))).toBe(tail);
}

function offsetOf(text: string, { line, column }: Place): number {
  let lineStart = 0;
  for (let passed = 1; passed < line; passed++) lineStart = text.indexOf('\n', lineStart) + 1;
  return lineStart + column - 1;
}

/** The Problems panel of VS Code, read the way a person would pass it on: select all, copy. */
import { isAbsolute, relative } from 'node:path';
import type { Page } from 'playwright-core';
import { until } from './programs.ts';

export type Severity = 'error' | 'warning' | 'info' | 'hint';

/** Counts from 1; columns in UTF-16 code units. */
export interface Place {
  line: number;
  column: number;
}

/** A row of the Problems panel. `end` is exclusive. */
export interface Problem {
  /** Relative to the workspace folder. */
  file: string;
  severity: Severity;
  message: string;
  source: string | undefined;
  code: string | undefined;
  start: Place;
  end: Place;
}

/** One element of the JSON that VS Code puts on the clipboard. */
interface Marker {
  resource: string;
  code?: string | { value: string };
  severity: number;
  message: string;
  source?: string;
  startLineNumber: number;
  startColumn: number;
  endLineNumber: number;
  endColumn: number;
}

const severities: Record<number, Severity> = { 8: 'error', 4: 'warning', 2: 'info', 1: 'hint' };

/** The rows of the Problems panel, which must be open; sorted by file and place. */
export async function copyProblems(page: Page, folder: string): Promise<Problem[]> {
  const nothing = 'nothing copied';
  const list = page.locator('.markers-panel .monaco-list').first();
  let copied = nothing;
  await page.evaluate(`navigator.clipboard.writeText('${nothing}')`);
  const done = await until(async () => {
    // An empty panel copies nothing, and so leaves the clipboard as it is.
    if ((await list.locator('.monaco-list-row').count()) === 0) return true;
    // Without this, a slow panel leaves the keys to the editor.
    await list.focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.press('Control+C');
    copied = await page.evaluate<string>('navigator.clipboard.readText()');
    return copied !== nothing;
  }, 10_000);
  if (!done) throw new Error('The Problems panel has rows, but they cannot be copied.');
  if (copied === nothing) return [];
  return (JSON.parse(copied) as Marker[]).map((marker) => asProblem(marker, folder)).sort(byPlace);
}

function asProblem(marker: Marker, folder: string): Problem {
  return {
    file: isAbsolute(marker.resource) ? relative(folder, marker.resource) : marker.resource,
    severity: severities[marker.severity] ?? 'hint',
    message: marker.message,
    source: marker.source,
    code: typeof marker.code === 'object' ? marker.code.value : marker.code,
    start: { line: marker.startLineNumber, column: marker.startColumn },
    end: { line: marker.endLineNumber, column: marker.endColumn },
  };
}

function byPlace(a: Problem, b: Problem): number {
  return a.file.localeCompare(b.file) || a.start.line - b.start.line || a.start.column - b.start.column;
}

/** For failure messages: one problem a line. */
export function listProblems(problems: readonly Problem[]): string {
  if (problems.length === 0) return '  (the Problems panel is empty)';
  return problems
    .map(({ file, start, severity, message, source, code }) => {
      return `  ${file}:${start.line}:${start.column} ${severity} ${message} [${source ?? ''} ${code ?? ''}]`;
    })
    .join('\n');
}

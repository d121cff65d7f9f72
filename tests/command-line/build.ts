/** Builds the programs into a folder of their own, so that tests never meet an old or half-written one. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { bundle } from '../../esbuild.config.mjs';

export default async function build(project: TestProject): Promise<() => Promise<void>> {
  const folder = await mkdtemp(join(tmpdir(), 'measure-twice-programs-'));
  await bundle(folder, { only: ['measure-twice.mjs', 'remark.mjs', 'server.cjs', 'server.browser.js'] });
  project.provide('programs', folder);
  return () => rm(folder, { recursive: true, force: true });
}

declare module 'vitest' {
  export interface ProvidedContext {
    /** The folder that holds the built programs. */
    readonly programs: string;
  }
}

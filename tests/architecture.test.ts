/** The arrows of the house hold: the linter refuses every import against them, and the core needs no shim in a browser. */
import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const repository = dirname(import.meta.dirname);
const biome = join(repository, 'node_modules/.bin/biome');

/** Files with one import each, and whether the linter must refuse it. */
const IMPORTS: readonly (readonly [file: string, from: string, refused: boolean])[] = [
  ['core/quantity/a.ts', '../geometry/edges.ts', true],
  ['core/geometry/a.ts', '../quantity/real.ts', false],
  ['core/geometry/a.ts', '../trade/binding.ts', true],
  ['core/trade/a.ts', '../geometry/edges.ts', false],
  ['core/trade/deep/a.ts', '../../block/pattern.ts', true],
  ['core/block/a.ts', '../trade/binding.ts', false],
  ['core/block/a.ts', '../figures/ledger.ts', true],
  ['core/figures/a.ts', '../block/pattern.ts', false],
  ['core/figures/rooms/a.ts', '../figure.ts', false],
  ['core/figures/rooms/a.ts', '../../manuscript/manuscript.ts', true],
  ['core/manuscript/a.ts', '../quantity/read.ts', false],
  ['core/manuscript/a.ts', '../findings/finding.ts', false],
  ['core/manuscript/a.ts', '../block/read.ts', true],
  ['core/reading/a.ts', '../manuscript/manuscript.ts', false],
  ['core/reading/a.ts', '../figures/ledger.ts', false],
  ['core/reading/a.ts', '../proof/proof.ts', true],
  ['core/figures/a.ts', '../reading/lexicon.ts', true],
  ['core/manuscript/a.ts', '../reading/lexicon.ts', true],
  ['core/proof/a.ts', '../reading/readPhrases.ts', false],
  ['core/proof/a.ts', '../manuscript/manuscript.ts', false],
  ['core/proof/a.ts', '../report/lines.ts', true],
  ['core/proof/a.ts', '../record/signature.ts', true],
  ['core/proof/a.ts', '../revise/sizes.ts', true],
  ['core/record/a.ts', '../proof/proof.ts', false],
  ['core/record/a.ts', '../revise/sizes.ts', true],
  ['core/record/a.ts', '../report/lines.ts', true],
  ['core/revise/a.ts', '../proof/proof.ts', false],
  ['core/revise/a.ts', '../record/signature.ts', true],
  ['core/revise/a.ts', '../report/lines.ts', true],
  ['core/proof/a.ts', '../draft/draft.ts', true],
  ['core/draft/a.ts', '../proof/proof.ts', false],
  ['core/draft/a.ts', '../revise/sizes.ts', true],
  ['core/draft/a.ts', '../record/signature.ts', true],
  ['core/draft/a.ts', '../report/lines.ts', true],
  ['core/revise/a.ts', '../draft/draft.ts', true],
  ['core/record/a.ts', '../draft/draft.ts', true],
  ['core/report/a.ts', '../proof/proof.ts', false],
  ['core/report/a.ts', '../record/signature.ts', false],
  ['core/findings/a.ts', '../quantity/rational.ts', true],
  ['core/quantity/a.ts', 'fraction.js', false],
  ['core/proof/a.ts', 'node:fs', true],
  ['core/proof/a.ts', 'fs', true],
  ['core/report/a.ts', 'vscode-languageserver', true],
  ['core/report/a.ts', '../../server/server.ts', true],
  ['core/report/a.ts', '../../client/extension.ts', true],
  ['core/report/a.ts', '../../shared/settings.ts', true],
  ['client/a.ts', '../shared/settings.ts', false],
  ['client/a.ts', 'vscode', false],
  ['client/a.ts', '../core/report/lines.ts', true],
  ['client/a.ts', '../server/server.ts', true],
  ['server/features/a.ts', '../../core/proof/proof.ts', false],
  ['server/features/a.ts', '../../shared/messages.ts', false],
  ['server/features/a.ts', 'vscode', true],
  ['server/features/a.ts', '../../client/statusBar.ts', true],
  ['server/features/a.ts', 'node:path', true],
  ['server/a.ts', 'vscode-languageserver/node', true],
  ['server/a.ts', './entry/nodeFiles.ts', true],
  ['server/entry/a.ts', 'node:path', false],
  ['server/command-line/a.ts', 'node:path', false],
  ['shared/a.ts', './settings.ts', false],
  ['shared/a.ts', '../core/proof/proof.ts', true],
  ['shared/a.ts', 'vscode', true],
];

describe('The linter', () => {
  let folder: string;
  let refused: ReadonlySet<string>;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'measure-twice-'));
    await cp(join(repository, 'biome.json'), join(folder, 'biome.json'));
    for (const [index, [file, from]] of IMPORTS.entries()) {
      const path = join(folder, numbered(file, index));
      await mkdir(dirname(path), { recursive: true });
      await writeFile(path, `import { x } from '${from}';\nconsole.log(x);\n`);
    }
    refused = await refusedFiles(folder);
  }, 60_000);
  afterAll(() => rm(folder, { recursive: true, force: true }));

  for (const [index, [file, from, expected]] of IMPORTS.entries()) {
    it(`${expected ? 'refuses' : 'allows'} an import of ${from} in ${dirname(file)}`, () => {
      expect(refused.has(numbered(file, index))).toBe(expected);
    });
  }
});

describe('The core', () => {
  it('bundles for a browser without a shim', async () => {
    const files = await readdir(join(repository, 'core'), { recursive: true });
    const modules = files
      .filter((file) => file.endsWith('.ts'))
      .map((file) => `./${file.replaceAll('\\', '/')}`);
    expect(modules).toContain('./report/text.ts');

    const { outputFiles, metafile } = await build({
      stdin: {
        contents: modules.map((file) => `import '${file}';`).join('\n'),
        resolveDir: join(repository, 'core'),
      },
      bundle: true,
      platform: 'browser',
      format: 'esm',
      write: false,
      metafile: true,
      logLevel: 'silent',
    });

    expect(outputFiles).toHaveLength(1);
    // Nothing may be left for the browser to find, and nothing may come from Node.js.
    expect(Object.values(metafile.outputs).flatMap(({ imports }) => imports)).toEqual([]);
    expect(Object.keys(metafile.inputs).filter((input) => input.startsWith('node:'))).toEqual([]);
  }, 60_000);
});

/** Each import stands in a file of its own. */
function numbered(file: string, index: number): string {
  return file.replace(/a\.ts$/, `a${index}.ts`);
}

async function refusedFiles(folder: string): Promise<Set<string>> {
  const command = promisify(execFile)(
    biome,
    ['lint', '--vcs-enabled=false', '--reporter=json', '--max-diagnostics=none', '.'],
    { cwd: folder },
  );
  // The linter's exit status says that it refused something; which, stands in its report.
  const { stdout } = await command.catch((error: { stdout: string }) => error);
  const { diagnostics } = JSON.parse(stdout) as { diagnostics: Diagnostic[] };
  return new Set(
    diagnostics
      .filter(({ category }) => ARROW_RULES.has(category))
      .map(({ location }) => location.path.replaceAll('\\', '/').replace(/^\.\//, '')),
  );
}

const ARROW_RULES = new Set(['lint/style/noRestrictedImports', 'lint/correctness/noNodejsModules']);

interface Diagnostic {
  readonly category: string;
  readonly location: { readonly path: string };
}

// Bundles the programs: `npm run build`, or `npm run build -- --dev` with source maps for debugging.
import { readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const repository = import.meta.dirname;

const node = { platform: 'node', target: 'node20' };
// A worker has no document, so libraries must not come in their version for pages.
const worker = { platform: 'browser', conditions: ['worker'], target: 'es2022' };

/** The name of each program in the output folder, and how it is built. */
const PROGRAMS = {
  'client.cjs': {
    ...node,
    entryPoints: ['client/extension.ts'],
    format: 'cjs',
    external: ['vscode'],
  },
  'server.cjs': { ...node, entryPoints: ['server/entry/stdio.ts'], format: 'cjs' },
  'measure-twice.mjs': {
    ...node,
    entryPoints: ['server/entry/command-line.ts'],
    format: 'esm',
    banner: {
      // Some libraries are CommonJS and ask for Node's own modules with `require`.
      js: [
        '#!/usr/bin/env node',
        "import { createRequire as requireFor } from 'node:module';",
        'const require = requireFor(import.meta.url);',
      ].join('\n'),
    },
  },
  // Remark runs in browsers too.
  'remark.mjs': { ...worker, entryPoints: ['server/entry/remark.ts'], format: 'esm' },
  'server.browser.js': {
    ...worker,
    entryPoints: ['server/entry/browser.ts'],
    format: 'iife',
  },
};

/**
 * @param {string} outdir
 * @param {{ dev?: boolean, only?: string[] }} [options]
 */
export async function bundle(outdir, { dev = false, only = Object.keys(PROGRAMS) } = {}) {
  const results = await Promise.all(
    only.map((name) =>
      build({
        ...PROGRAMS[name],
        outfile: join(outdir, name),
        absWorkingDir: repository,
        bundle: true,
        minify: !dev,
        keepNames: true,
        sourcemap: dev,
        legalComments: 'none', // whole licence texts stand in THIRD-PARTY.txt
        logLevel: 'warning',
        metafile: true,
      }),
    ),
  );
  await writeFile(join(outdir, 'THIRD-PARTY.txt'), await licences(results));
}

/** The licences of all packages that are bundled: most of them ask to be shipped along. */
async function licences(results) {
  const packages = new Set(
    results
      .flatMap(({ metafile }) => Object.keys(metafile.inputs))
      .flatMap((input) => /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0] ?? []),
  );
  const texts = await Promise.all([...packages].sort().map(licence));
  return texts.join(`\n${'-'.repeat(80)}\n\n`);
}

async function licence(folder) {
  const at = join(repository, folder);
  const { name, version, license } = JSON.parse(await readFile(join(at, 'package.json'), 'utf8'));
  const names = ['LICENSE', 'LICENSE.md', 'LICENSE.txt', 'license', 'License.txt', 'LICENCE', 'license.md'];
  const texts = await Promise.all(
    names.map((file) => readFile(join(at, file), 'utf8').catch(() => undefined)),
  );
  return `${name} ${version} (${license})\n\n${texts.find((text) => text !== undefined)?.trim() ?? ''}\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await bundle(join(dirname(fileURLToPath(import.meta.url)), 'dist'), {
    dev: process.argv.includes('--dev'),
  });
}

/**
 * The proof sheet in a real browser: light, dark and on paper, looked through by axe-core, the accessibility checker.
 * It leaves pictures in the folder `artefacts`.
 */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { AxeResults } from 'axe-core';
import { type Browser, type Page, chromium as playwright } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { artefacts, chromium, repository, requireBuilt, requireEditor } from './places.ts';
import { removeFolder, run, temporaryFolder } from './programs.ts';

const SAMPLES = ['before-proofreading/slack-water-bed-quilt.md', 'pebble-chair-pads.md'];

let folder: string;
let browser: Browser;
let page: Page;
/** What the browser complained of, and what it asked for besides the page. */
const complaints: string[] = [];

beforeAll(async () => {
  requireEditor(chromium);
  folder = await temporaryFolder('sheet');
  const file = join(folder, 'sheet.html');
  const program = requireBuilt('npm run build', 'dist/measure-twice.mjs');
  await run(process.execPath, [program, 'proof', '--format', 'html', '--out', file, ...SAMPLES], {
    cwd: join(repository, 'shared/samples'),
    accept: [1],
  });
  browser = await playwright.launch({
    executablePath: chromium,
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
  page = await browser.newPage({ viewport: { width: 900, height: 1200 } });
  const address = pathToFileURL(file).href;
  page.on('console', (message) => complaints.push(message.text()));
  page.on('request', (request) => {
    if (request.url() !== address) complaints.push(`asked for ${request.url()}`);
  });
  await page.goto(address);
});

afterAll(async () => {
  await browser?.close();
  if (folder) await removeFolder(folder);
});

describe('the proof sheet', () => {
  it.each(['light', 'dark'] as const)('is accessible in the %s', async (colorScheme) => {
    await page.emulateMedia({ media: 'screen', colorScheme });
    await page.evaluate('scrollTo(0, 0)');
    await page.screenshot({ path: join(artefacts, `sheet-${colorScheme}.png`) });
    const [drawing] = await page.locator('figure.wide').all();
    await drawing?.screenshot({ path: join(artefacts, `sheet-drawing-${colorScheme}.png`) });

    expect(await violations()).toEqual([]);
  });

  it('follows the device into the dark, and prints dark on white wherever it is', async () => {
    await page.emulateMedia({ media: 'screen', colorScheme: 'dark' });
    const [paper, ink] = await colours();
    expect(paper).toBeLessThan(0.2);
    expect(ink).toBeGreaterThan(0.8);

    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const [printPaper, printInk] = await colours();
    expect(printPaper).toBe(1);
    expect(printInk).toBeLessThan(0.2);
    await page.evaluate('scrollTo(0, 0)');
    await page.screenshot({ path: join(artefacts, 'sheet-print.png') });
  });

  it.each([
    ['A4', 210 - 30],
    ['Letter', 215.9 - 30],
  ])('fits the width of %s', async (format, millimetres) => {
    await page.emulateMedia({ media: 'print', colorScheme: 'light' });
    await page.setViewportSize({ width: Math.floor((millimetres / 25.4) * 96), height: 900 });
    expect(await overflow()).toEqual([]);

    const pdf = await page.pdf({ format, path: join(artefacts, `sheet-${format}.pdf`) });
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? [];
    expect(pages.length).toBeGreaterThan(4);
    expect(pages.length).toBeLessThan(60);
  });

  it('fits a telephone', async () => {
    await page.emulateMedia({ media: 'screen', colorScheme: 'light' });
    await page.setViewportSize({ width: 360, height: 800 });
    expect(await overflow()).toEqual([]);
  });

  it('asks for nothing, and the browser has nothing to complain of', () => {
    expect(complaints).toEqual([]);
  });
});

async function violations(): Promise<string[]> {
  const checker = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
  await page.evaluate(await readFile(checker, 'utf8'));
  const { violations: found } = (await page.evaluate('axe.run()')) as AxeResults;
  return found.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

/** How light paper and ink are, from 0 to 1. */
async function colours(): Promise<number[]> {
  const shown = (await page.evaluate(
    '(({ backgroundColor, color }) => [backgroundColor, color])(getComputedStyle(document.body))',
  )) as string[];
  return shown.map((colour) => {
    const parts = [...colour.matchAll(/\d+/g)].map(Number);
    return parts.reduce((sum, part) => sum + part, 0) / (255 * parts.length);
  });
}

/** What reaches beyond the right edge, unless it can be scrolled to. */
async function overflow(): Promise<string[]> {
  return (await page.evaluate(
    `[...document.body.querySelectorAll('*')]
      .filter((one) => !one.closest('.scroll') && !one.closest('svg'))
      .filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 1)
      .map((one) => one.outerHTML.slice(0, 120))`,
  )) as string[];
}

/** The proof sheet as a browser reads it: parsed by an HTML parser, and looked through as a tree. */
import type { Element, Nodes, Root } from 'hast';
import rehypeParse from 'rehype-parse';
import { unified } from 'unified';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { FINDING_WORDS } from '../../core/report/findingWords.ts';
import { toReport } from '../../core/report/proofread.ts';
import { htmlSheet } from '../../core/report/sheet/page.ts';
import { sample as read } from '../support/manuscripts.ts';

const TOOL = { name: 'Measure Twice', version: '1.2.3' };

function sheet(manuscripts: Readonly<Record<string, string>>, strict = false): Root {
  const documents = Object.entries(manuscripts).map(([path, source]) =>
    toReport(path, proofread({ source }), strict),
  );
  return unified().use(rehypeParse).parse(htmlSheet(documents, TOOL));
}

function all(node: Nodes, test: (element: Element) => boolean): Element[] {
  const own = node.type === 'element' && test(node) ? [node] : [];
  return [...own, ...('children' in node ? node.children.flatMap((child) => all(child as Nodes, test)) : [])];
}
const named = (node: Nodes, ...names: string[]) => all(node, ({ tagName }) => names.includes(tagName));
const classed = (node: Nodes, name: string) =>
  all(node, ({ properties }) => Array.isArray(properties.className) && properties.className.includes(name));
const textOf = (node: Nodes): string =>
  node.type === 'text'
    ? node.value
    : 'children' in node
      ? node.children.map((child) => textOf(child as Nodes)).join('')
      : '';
const rowsOf = (node: Nodes) => named(node, 'tr').map((row) => named(row, 'th', 'td').map(textOf));

const QUILT = [
  '# Skerry Throw',
  '',
  '```measure',
  'sizes: [lap, twin]',
  'finished: { lap: 54" x 66", twin: 72" x 90" }',
  'fabrics: { A: Slate }',
  'binding: { from: A, strip: 2 1/2" }',
  '```',
  '',
  '## Binding',
  '',
  'Cut 7 (8) strips, 2½" × WOF. Lay 3 of them aside.',
].join('\n');

describe('The proof sheet', () => {
  const page = sheet({ 'quilts/skerry.md': QUILT });

  it('opens with the pattern, its file and how much of it is checked', () => {
    expect(textOf(named(page, 'title')[0] as Element)).toBe('Proof sheet: Skerry Throw');
    expect(named(page, 'h1', 'h2', 'h3').map(textOf)).toEqual([
      'Proof sheet',
      'Skerry Throw',
      'What has been checked',
      'What to look at',
      'What nobody has checked',
      'How each figure is worked out',
      'Cutting layouts',
      'Remarks',
      'Signature',
      'What the findings mean',
    ]);
    expect(textOf(classed(page, 'path')[0] as Element)).toBe('quilts/skerry.md');
    expect(textOf(classed(page, 'summary')[0] as Element)).toMatch(
      /^2 of 4 measurements are checked and right/,
    );
  });

  it('counts what is checked by section and by size', () => {
    expect(rowsOf(classed(page, 'coverage')[0] as Element)).toEqual([
      ['Section', 'Measurements', 'Checked and right', 'To correct', 'Nobody has checked'],
      ['Binding', '4', '2', '1', '1'],
      ['Size', 'Measurements', 'Checked and right', 'To correct', 'Nobody has checked'],
      ['lap', '1', '1', '0', '0'],
      ['twin', '1', '0', '1', '0'],
      ['The same in all sizes', '1', '1', '0', '0'],
      ['No figure known', '1', '0', '0', '1'],
      ['All', '4', '2', '1', '1'],
    ]);
  });

  it('shows each finding with its sentence, its fix and a box to tick', () => {
    const findings = classed(page, 'finding');
    const [finding] = findings as [Element];

    expect(findings).toHaveLength(1);
    expect(textOf(classed(finding, 'place')[0] as Element)).toBe('Mistake in line 12 settled');
    expect(textOf(classed(finding, 'message')[0] as Element)).toContain('must be at least 9, not 8');
    expect(textOf(named(finding, 'blockquote')[0] as Element)).toBe('Cut 7 (8) strips, 2½" × WOF.');
    expect(named(finding, 'mark').map(textOf)).toEqual(['8']);
    expect(textOf(classed(finding, 'fix')[0] as Element)).toBe('To fix it: Change to 9.');
  });

  it('lists what nobody has checked', () => {
    const section = classed(page, 'unchecked')[0] as Element;

    expect(rowsOf(section)).toEqual([
      ['Line', 'Sentence'],
      ['12', 'Lay 3 of them aside.'],
    ]);
    expect(named(section, 'mark').map(textOf)).toEqual(['3']);
  });

  it('works out every figure that is stated, in every size that is stated', () => {
    const section = classed(page, 'workings')[0] as Element;

    expect(named(section, 'h4').map(textOf)).toEqual([
      'The number of binding strips',
      'The width of the binding strip: 2½"',
    ]);
    expect(rowsOf(section).map((row) => row.slice(0, 3))).toEqual([
      ['Size', 'Figure', 'Stated as'],
      ['lap', 'at least 7', '7 in line 12'],
      ['twin', 'at least 9', '8 in line 12'],
    ]);
    expect(rowsOf(section)[2]?.[3]).toContain('324" around');
  });

  it('draws how each fabric is cut, in each size', () => {
    const figures = named(classed(page, 'layouts')[0] as Element, 'figure');

    expect(figures.map((figure) => textOf(named(figure, 'figcaption')[0] as Element))).toEqual([
      'A cutting layout of fabric A (lap)',
      'A cutting layout of fabric A (twin)',
    ]);
    expect(figures.map((figure) => named(figure, 'rect').length > 5)).toEqual([true, true]);
  });

  it('explains the findings on the page itself, where each of them leads', () => {
    const [link] = named(classed(page, 'finding')[0] as Element, 'a');
    const target = all(page, ({ properties }) => `#${properties.id}` === link?.properties.href)[0];

    expect(target && textOf(target)).toBe(FINDING_WORDS['short-figure']?.title);
  });

  it('runs nothing and loads nothing', () => {
    const [policy] = all(page, ({ properties }) => properties.httpEquiv !== undefined);

    expect(policy?.properties.content).toBe(
      "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'",
    );
    expect(named(page, 'script', 'link', 'img', 'iframe', 'object')).toEqual([]);
    expect(named(page, 'a').filter(({ properties }) => !String(properties.href).startsWith('#'))).toEqual([]);
    expect(textOf(named(page, 'style')[0] as Element)).not.toMatch(/url\(|@import/);
  });

  it('shows whatever an author writes as text', () => {
    const evil = '<img src=x onerror=alert(1)>';
    const source = `# ${'\\'}${evil} & "so"\n\n\`\`\`measure\nsizes: ['${evil}', b]\nfinished: 36" x 48"\n\`\`\`\n\nBind 160" <!-- = finished.edge --> ${'\\'}${evil}.\n`;
    const hostile = sheet({ [`${evil}.md`]: source });

    expect(named(hostile, 'img', 'script')).toEqual([]);
    expect(textOf(named(hostile, 'h2')[0] as Element)).toBe(`${evil} & "so"`);
    expect(textOf(classed(hostile, 'path')[0] as Element)).toBe(`${evil}.md`);
  });

  it('has no identifier twice, and every link and label finds its target', () => {
    const many = sheet({ 'a.md': QUILT, 'b.md': QUILT, 'c.md': read('pebble-chair-pads.md') });
    const ids = all(many, ({ properties }) => properties.id !== undefined).map(({ properties }) =>
      String(properties.id),
    );
    const wanted = [
      ...named(many, 'a').map(({ properties }) => String(properties.href).slice(1)),
      ...all(many, ({ properties }) => properties.ariaLabelledBy !== undefined).flatMap(({ properties }) =>
        [properties.ariaLabelledBy].flat().flatMap((value) => String(value).split(' ')),
      ),
    ];

    expect(ids).toEqual([...new Set(ids)]);
    expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it('begins with a table of contents when there are several manuscripts', () => {
    const many = sheet({ 'a.md': QUILT, 'note.md': 'Bring 3 pins.' });
    const [nav] = named(many, 'nav');

    expect(textOf(named(many, 'title')[0] as Element)).toBe('Proof sheets: 2 manuscripts');
    expect(nav && rowsOf(nav)).toEqual([
      ['Manuscript', 'File', 'Mistakes', 'Warnings', 'Checked'],
      ['Skerry Throw', 'a.md', '1', '0', '2 of 4 checked'],
      ['note.md', 'note.md', '0', '0', 'no measure block'],
    ]);
    expect(named(page, 'nav')).toEqual([]);
  });

  it('says so when there is no manuscript', () => {
    expect(textOf(named(sheet({}), 'main')[0] as Element)).toBe('There is no manuscript here.');
  });

  it.each([
    ['a sample in three sizes', read('slack-water-bed-quilt.md')],
    ['no block', 'Cut 5 strips 2½" × WOF; subcut 90 squares 2½".'],
    ['a broken block', '```measure\nfinished: 36" x 48"\nbinding: { strip: 2 1/4"\n```\n'],
    ['nothing', ''],
  ])('keeps its headings in order for %s', (_, source) => {
    const levels = named(sheet({ 'a.md': source }, true), 'h1', 'h2', 'h3', 'h4').map(({ tagName }) =>
      Number(tagName[1]),
    );

    expect(levels[0]).toBe(1);
    for (const [index, level] of levels.entries())
      expect(level).toBeLessThanOrEqual((levels[index - 1] ?? 0) + 1);
  });
});

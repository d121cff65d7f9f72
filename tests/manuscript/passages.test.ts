import { describe, expect, test } from 'vitest';
import { readManuscript } from '../../core/manuscript/read.ts';

const texts = (source: string) => readManuscript(source).passages.map(({ kind, text }) => `${kind}: ${text}`);
/** The context of the passage with this text. */
const contextOf = (source: string, text: string) => {
  const passage = readManuscript(source).passages.find((each) => each.text === text);
  if (!passage) throw new Error(`no passage reads ${text}`);
  return passage.context;
};

describe('The text of a passage', () => {
  test.each([
    ['# Kettle Pond\n\nCut *four* **strips**.', ['heading: Kettle Pond', 'paragraph: Cut four strips.']],
    ['one\ntwo  \nthree\\\nfour', ['paragraph: one\ntwo\nthree\nfour']],
    ['a `5"` b ![7"](x) c[^1]\n\n[^1]: note', ['paragraph: a \ufffc b \ufffc c\ufffc', 'paragraph: note']],
    ['see https://shop.example/40118 and <https://a.example/7>', ['paragraph: see \ufffc and \ufffc']],
    ['[nine 9" blocks](https://shop.example/40118 "12")', ['paragraph: nine 9" blocks']],
    ['write to a.b7@shop.example today', ['paragraph: write to \ufffc today']],
    ['a <b>5</b>" <!-- a note 7 --> b<br>c <img src="7"> d', ['paragraph: a 5"  b\nc \ufffc d']],
    ['| a | b |\n|---|---|\n| 1 | 2 |', ['cell: a', 'cell: b', 'cell: 1', 'cell: 2']],
    ['---\nsizes: 4\n---\n\ntext', ['paragraph: text']],
    ['+++\nsizes = 4\n+++\n\ntext', ['paragraph: text']],
    ['    5" of code\n\n```\n6"\n```\n\ntext', ['paragraph: text']],
    ['<p align="center">A <b>5"</b> block</p>', ['paragraph: \nA 5" block\n']],
  ])('of %j', (source, expected) => {
    expect(texts(source)).toEqual(expected);
  });

  test.each([
    '<style>\np { margin: 5px }\n</style>',
    '<script>\nlet a = 5 < 6;\n</script>',
    '<!-- 5" squares -->',
  ])('leaves out what nobody sees: %j', (source) => {
    expect(texts(source)).toEqual([]);
  });

  test('is the same with Windows line endings, old Mac ones and a byte order mark', () => {
    const source = '# Top\n\n> Cut 4\n> strips\n\n| a | b |\n|---|---|\n| 1 | 2 |\n';
    const expected = texts(source);
    expect(texts(source.replaceAll('\n', '\r\n'))).toEqual(expected);
    expect(texts(source.replaceAll('\n', '\r'))).toEqual(expected);
    expect(texts(`\ufeff${source}`)).toEqual(expected);
  });
});

describe('Markdown that is nested too deeply to be read', () => {
  test('is read as plain text, so that no number is lost', () => {
    const { numbers } = readManuscript(`${'> '.repeat(20_000)}cut 5" squares`);
    expect(numbers.map(({ text }) => text)).toEqual(['5"']);
  });
});

describe('The context of a passage', () => {
  test('holds the headings above it, and no heading of a closed section', () => {
    const source = '# A\n\n## B\n\n### C\n\n## D\n\ntext';
    expect(contextOf(source, 'text').headings).toEqual([
      { depth: 1, text: 'A' },
      { depth: 2, text: 'D' },
    ]);
    expect(contextOf(source, 'C').headings.map(({ text }) => text)).toEqual(['A', 'B']);
  });

  test('forgets the headings of a block quote at its end', () => {
    const source = '# A\n\n> # B\n>\n> in\n\nout';
    expect(contextOf(source, 'in').headings.map(({ text }) => text)).toEqual(['B']);
    expect(contextOf(source, 'out').headings.map(({ text }) => text)).toEqual(['A']);
  });

  test('counts list items as they are numbered', () => {
    const source = '4. four\n5. five\n   - bullet\n     1. inner';
    expect(contextOf(source, 'five').list).toEqual([{ number: 5, index: 1 }]);
    expect(contextOf(source, 'bullet').list).toEqual([
      { number: 5, index: 1 },
      { number: undefined, index: 0 },
    ]);
    expect(contextOf(source, 'inner').list.map(({ number }) => number)).toEqual([5, undefined, 1]);
  });

  test('counts block quotes, and names the footnote', () => {
    const source = '> > deep\n\nplain[^b]\n\n[^b]: note';
    expect(contextOf(source, 'deep').quoteDepth).toBe(2);
    expect(contextOf(source, 'plain\ufffc').quoteDepth).toBe(0);
    expect(contextOf(source, 'note').footnote).toBe('b');
  });

  test('places a table cell under its column and beside the first cell of its row', () => {
    const source = '| Fabric | Cut |\n|---|---|\n| A \\| B | 5" |\n| C | 7 |';
    expect(contextOf(source, '5"').cell).toEqual({
      row: 1,
      column: 1,
      columnHeader: 'Cut',
      rowHeader: 'A | B',
    });
    expect(contextOf(source, '7').cell).toEqual({ row: 2, column: 1, columnHeader: 'Cut', rowHeader: 'C' });
    expect(contextOf(source, 'Cut').cell).toMatchObject({ row: 0, column: 1 });
  });
});

import fc from 'fast-check';
import type { Nodes } from 'mdast';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';
import type { Passage } from '../../core/manuscript/manuscript.ts';
import { readManuscript } from '../../core/manuscript/read.ts';
import { hostileMarkdown } from './hostile.ts';

/** What a stretch of source may show as one unit of text, other than itself. */
function mayShow(written: string, shown: string): boolean {
  if (shown === '\ufffc') return true;
  if (shown === '\n')
    return /^(?:\r\n|\n|\r|\\(?:\r\n|\n|\r)|[ \t]{2,}(?:\r\n|\n|\r)|<[\s\S]*)$/.test(written);
  if (written === '\0') return shown === '\ufffd';
  if (written === '\t') return shown === ' '; // a tab that a list item uses up in part
  return /^&[^;]+;$/.test(written) || (written.startsWith('\\') && written === `\\${shown}`);
}

function mismatches(source: string, { text, offsets, ends }: Passage): string[] {
  const wrong: string[] = [];
  for (let unit = 0; unit < text.length; unit++) {
    const written = source.slice(offsets[unit], ends[unit]);
    const shown = text.charAt(unit);
    if (written !== shown && !mayShow(written, shown))
      wrong.push(`${JSON.stringify(written)} shows ${JSON.stringify(shown)}`);
  }
  return wrong;
}

/** Units that do not begin where the one before ends, or behind that. */
function disorder({ text, offsets, ends }: Passage): number[] {
  const lengths = offsets.length === text.length + 1 && ends.length === text.length;
  const wrong = lengths && (text === '' || offsets[text.length] === ends[text.length - 1]) ? [] : [-1];
  for (let unit = 1; unit < text.length; unit++) {
    const sameReference = offsets[unit] === offsets[unit - 1] && ends[unit] === ends[unit - 1];
    if (!sameReference && (offsets[unit] ?? 0) < (ends[unit - 1] ?? 0)) wrong.push(unit);
  }
  return wrong;
}

const plainMarkdown = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(remarkFrontmatter, ['yaml', 'toml'])
  .freeze();

/** All text that the tree of the library holds, outside raw HTML. */
function textOf(node: Nodes): string {
  if (node.type === 'text') return node.value;
  return 'children' in node ? node.children.map(textOf).join('') : '';
}

const withoutSpace = (text: string) => text.replace(/[\s\ufffc]+/g, '');

const RUNS = 600;

describe('The place of every character', () => {
  test('is that of the character itself, or of the reference or escape that shows it', () => {
    fc.assert(
      fc.property(hostileMarkdown, (source) => {
        for (const passage of readManuscript(source).passages)
          expect(mismatches(source, passage)).toEqual([]);
      }),
      { numRuns: RUNS },
    );
  });

  test('never goes backwards, and ends where the last character ends', () => {
    fc.assert(
      fc.property(hostileMarkdown, (source) => {
        for (const passage of readManuscript(source).passages) expect(disorder(passage)).toEqual([]);
      }),
      { numRuns: RUNS },
    );
  });

  test('leaves out nothing of the text that a Markdown library finds', () => {
    // Reference: remark-parse with remark-gfm, without our reading of positions.
    // It repeats characters that stand before a NUL, so there are none here.
    const withoutHtml = hostileMarkdown.map((source) => source.replaceAll('<', '(').replaceAll('\0', ''));
    fc.assert(
      fc.property(withoutHtml, (source) => {
        const ours = readManuscript(source)
          .passages.map(({ text }) => text)
          .join('');
        expect(withoutSpace(ours)).toBe(withoutSpace(textOf(plainMarkdown.parse(source))));
      }),
      { numRuns: RUNS },
    );
  });
});

describe('A stretch of a passage in the source', () => {
  const pieces = (source: string, shown: string) => {
    for (const { text, toSource } of readManuscript(source).passages) {
      const at = text.indexOf(shown);
      if (at >= 0) return toSource(at, at + shown.length).map(({ start, end }) => source.slice(start, end));
    }
    return undefined;
  };

  test.each([
    ['cut 2½" strips', '2½"', ['2½"']],
    ['cut **2**½" strips', '2½"', ['2', '½"']],
    ['cut 2&frac12;&quot; strips', '2½"', ['2&frac12;&quot;']],
    ['cut 2&#189;\\" strips', '2½"', ['2&#189;\\"']],
    ['cut &#50;&#xBD;" strips', '2½"', ['&#50;&#xBD;"']],
    ['&#x1F9F5; 5"', '🧵 5', ['&#x1F9F5; 5']],
    ['🧵 5"', '5"', ['5"']],
    ['cut 2\n1/2" strips', '2\n1/2"', ['2\n1/2"']],
    ['cut 2  \n1/2" strips', '2\n1/2"', ['2  \n1/2"']],
    ['cut 2\r\n1/2" strips', '2\n1/2"', ['2\r\n1/2"']],
    ['> cut 2\n> 1/2" strips', '2\n1/2"', ['2\n', '1/2"']],
    ['> cut 2\n1/2" strips', '2\n1/2"', ['2\n1/2"']],
    ['> > cut 2\n> > 1/2" strips', '2\n1/2"', ['2\n', '1/2"']],
    ['> \\> 2\n> > 1/2" strips', '1/2"', ['1/2"']],
    ['- a\n  - cut 2 \n    1/2" strips', '2\n1/2"', ['2', '\n', '1/2"']],
    ['\tcode\n\n1.\tcut 2\n\t1/2" strips', '2\n1/2"', ['2\n', '1/2"']],
    ['| a | b |\n|-|-|\n| 1 \\| 2 | 5" |', '1 | 2', ['1 \\| 2']],
    ['\ufeff5" and 6"', '6"', ['6"']],
    ['\ufeff\ufeff5" and 6"', '6"', ['6"']],
    ['a\0b 5"', '5"', ['5"']],
    ['[5"](x "7") wide', '5" wide', ['5"', ' wide']],
    ['5 \\* 6"', '* 6', ['\\* 6']],
    ['5\\\n6"', '5\n6', ['5\\\n6']],
    ['Top 5"\n===', '5"', ['5"']],
    ['## Top 5" ##', '5"', ['5"']],
    ['- [x] 5" strips', '5"', ['5"']],
    ['<div>\n5&frac12;" <b>w</b>ide\n</div>', '5½" wide', ['5&frac12;" ', 'w', 'ide']],
    ['> <div>\n> 5" wide', '5"', ['5"']],
    ['[^1]\n\n[^1]: 5"\n    6"', '5"\n6"', ['5"\n', '6"']],
  ])('%j shows %j from %j', (source, shown, expected) => {
    expect(pieces(source, shown)).toEqual(expected);
  });
});

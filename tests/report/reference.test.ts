/** The reference is written from the tables and schemas that the program follows, so it cannot say anything else. */
import { describe, expect, it } from 'vitest';
import { ENTRIES } from '../../core/block/entries/index.ts';
import type { Entry } from '../../core/block/entry.ts';
import { ROOMS } from '../../core/figures/rooms.ts';
import { CODES } from '../../core/findings/codes.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { findingPath } from '../../core/report/findingWords.ts';
import { EXAMPLE_PATTERNS, useOfExamples } from '../../core/report/reference/examplePatterns.ts';
import { table } from '../../core/report/reference/markdown.ts';
import { UNACCOUNTED } from '../../core/report/unaccounted.ts';
import { UNIT_KINDS } from '../../core/trade/units/kinds.ts';
import { SETTINGS } from '../../shared/settings.ts';
import { committedPages, generatedPages } from '../docs/reference.ts';
import { patternOf } from '../support/pattern.ts';

const pages = new Map(generatedPages().map(({ path, text }) => [path, text]));
const text = (path: string) => {
  const found = pages.get(path);
  if (found === undefined) throw new Error(`there is no page ${path}`);
  return found;
};

describe('The committed reference', () => {
  const committed = new Map(committedPages().map(({ path, text }) => [path, text]));

  it('has just the pages that are generated', () => {
    expect([...committed.keys()].sort(), 'run `npm run generate`').toEqual([...pages.keys()].sort());
  });

  it.each([...pages])('has the generated text in %s', (path, expected) => {
    expect(committed.get(path), 'run `npm run generate`').toBe(expected);
  });
});

describe('The page of the measure block', () => {
  const page = text('measure-block.md');

  it.each(Object.entries<Entry<unknown>>(ENTRIES))('has a section for %s with its example', (name, entry) => {
    const section = page.split(/^### /m).find((part) => part.startsWith(`${name}\n`));

    expect(section).toContain(entry.summary);
    expect(section).toContain(`\`\`\`yaml\n${entry.example}\n\`\`\``);
  });

  it('lists the words of an entry with meaning, value and need', () => {
    expect(page).toContain(
      '| `strip` | Cut width of the strip; left out, the “binding strip” of the house. | a length, such as `2 1/4"` | yes |',
    );
    expect(page).toContain(
      '| `join` | How strips are joined, where it differs from the house. | `diagonal` or `straight` |  |',
    );
  });

  it('lists the words inside of a word, and of every kind of item of a list', () => {
    for (const heading of ['#### layout: sashing', '#### blocks: unit', '#### blocks: piece'])
      expect(page.split('\n')).toContain(heading);
    expect(page).toContain('| `cornerstones` | The fabric of the squares where sashes cross;');
    expect(page).toContain('| `method` | How the units are made; left out, the usual way. |');
    expect(page).toContain('| `corners` | How the corners meet; butted if left out, sides first. |');
  });

  it('says what holds where the house is silent, in inches and in centimetres', () => {
    expect(page).toContain('| ¼", or 0.75 cm in a metric house |');
    expect(page).toContain('| ⅛ yd, or 0.1 m in a metric house |');
  });

  it.each(UNIT_KINDS.map(({ name, methods }) => [name, methods] as const))(
    'names the kind of unit %s with its ways',
    (name, methods) => {
      const row = page.split('\n').find((line) => line.startsWith(`| ${name} |`));
      for (const method of methods) expect(row).toContain(`\`${method.name}\``);
    },
  );
});

describe('The examples of the entries', () => {
  it.each(Object.entries<Entry<unknown>>(ENTRIES))('can be read: %s', (_, { example }) => {
    const { pattern } = patternOf(example);
    const unread = pattern.findings.filter(({ code }) =>
      ['block-syntax', 'unknown-entry', 'missing-entry', 'duplicate-entry', 'bad-value'].includes(code),
    );
    expect(unread).toEqual([]);
  });
});

describe('The pages of findings', () => {
  it.each([...Object.keys(CODES), UNACCOUNTED])('tell %s with the message that the program gives', (code) => {
    expect(text(findingPath(code))).toMatch(/## What the program says\n\nIn line \d+[^\n]*:\n\n> \S/);
    expect(text('findings.md')).toContain(`(${findingPath(code)}) | \`${code}\` |`);
  });

  it('show what the fix makes of the line', () => {
    expect(text('findings/wrong-figure.md')).toContain(
      'It offers the fix **Change to 168"**, and then the line reads:\n\n```markdown\nBind 168" <!-- = finished.edge --> of edge.\n```',
    );
  });
});

describe('The page of figures', () => {
  const page = text('figures.md');
  const proofs = EXAMPLE_PATTERNS.map((source) => proofread({ source, use: useOfExamples }));

  it('takes its examples from patterns without a finding', () => {
    expect(proofs.map(({ findings }) => findings)).toEqual(proofs.map(() => []));
  });

  it('takes them from patterns that use every entry of the block', () => {
    const used = new Set(proofs.flatMap(({ pattern }) => Object.keys(pattern.entries)));
    const missing = Object.keys(ENTRIES).filter((entry) => !used.has(entry));

    expect(missing, 'use them in core/report/reference/examplePatterns.ts').toEqual([]);
  });

  it('shows figures of every room', () => {
    const silent = ROOMS.filter(
      (room) =>
        !proofs.some(({ pattern, ledger }) =>
          room.define(pattern).some(({ id }) => ledger.figure(id) && page.includes(`| \`${id}\` |`)),
        ),
    );
    expect(silent, 'let an example pattern in core/report/reference/examplePatterns.ts have them').toEqual(
      [],
    );
  });

  it('shows a figure with its rule, its values and its working', () => {
    expect(page).toContain(
      '| `binding.strips` | The number of binding strips | at least wall 7, throw 8 | For wall:<br>2 × (48" + 62") = 220" around.<br>220" around plus 12" to join is 232".',
    );
    expect(page).toMatch(/\| `binding\.passes` \| [^|]* \| at least 4<br>in Pebble Cushion \|/);
  });

  it('shows each figure once, however many parts and sizes have it', () => {
    const ids = [...page.matchAll(/^\| `([^`]+)` \|/gm)].map(([, id]) => id ?? '');
    const kinds = ids.map((id) => id.replace(/\.(Lantern|Float|label|window|\d+)(?=\.)/g, '.…'));

    expect(kinds).toEqual([...new Set(kinds)]);
  });
});

describe('The page of settings', () => {
  it.each(Object.entries(SETTINGS))('tells every value of %s', (name, { values, meanings }) => {
    const section = text('settings.md')
      .split(/^## /m)
      .find((part) => part.startsWith(`measureTwice.${name}\n`));
    for (const value of values) expect(section).toContain(`| \`${value}\``);
    for (const meaning of meanings) expect(section).toContain(meaning);
  });
});

describe('A table of the reference', () => {
  it('keeps bars and lines inside their cell, and leaves out columns without content', () => {
    expect(table(['A', 'B', 'C'], [['`a|b`', '', 'one\ntwo']])).toBe(
      '| A | C |\n|---|---|\n| `a\\|b` | one<br>two |',
    );
  });
});

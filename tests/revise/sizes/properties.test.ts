/** What holds of every manuscript: what adding writes, dropping takes away again, and nothing else is touched. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newLines, revised } from './revise.ts';

const NAMES = ['crib', 'lap', 'twin bed', 'queen'] as const;
const SIZES = ['36" x 48"', '54" x 66"', '72" x 90"', '90" x 106"'] as const;
/** Batting 4" wider and longer on each side, and strips for an edge of 168", 240", 324" and 392" and 12" more. */
const BATTING = ['44" × 56"', '62" × 74"', '80" × 98"', '98" × 114"'];
const STRIPS = ['5', '7', '9', '11'];

type Write = (values: readonly string[], names: readonly string[]) => string;

const bracket: Write = ([first, ...others]) => `${first} (${others.join(', ')})`;
const enumerated: Write = (values, names) => {
  const items = values.map((value, index) => `${value} for the ${names[index]}`);
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
};

const FORMS: readonly Write[] = [
  (_, names) =>
    `It comes as ${names
      .slice(0, -1)
      .map((name) => `a ${name}`)
      .join(', ')} or a ${names.at(-1)}. 🧵`,
  (_, names) => `Sizes: ${names.join(' / ')}`,
  (strips) => `Cut ${bracket(strips, [])} <!-- = binding.strips --> strips for the binding.`,
  (strips) => `Cut ${strips.join('/')} <!-- = binding.strips --> strips`,
  (strips, names) => `Cut binding strips: ${enumerated(strips, names)}.`,
  (strips, names) =>
    ['', ...names].map((name) => `| ${name} `).join('') +
    '|\n' +
    '|-'.repeat(names.length + 1) +
    '|\n| 🧵 binding strips | ' +
    `${strips.join(' | ')} |`,
  (strips, names) => names.map((name, index) => `- ${name}: ${strips[index]} binding strips`).join('\n'),
  (strips, names) =>
    `| Size | Strips |\n|---|---|\n${names.map((name, at) => `| ${name} | ${strips[at]} <!-- = binding.strips --> |`).join('\n')}`,
  () => 'Nothing but 7 (9 or more) words, ½ a “cup” & 12" <!-- measure skip -->.  ',
  (_, names) => `The ${names[0]} is tied, the ${names.at(-1)} quilted.`,
];

const manuscript = fc
  .record({
    sizes: fc.subarray([0, 1, 2, 3], { minLength: 2, maxLength: 3 }),
    forms: fc.array(fc.nat(FORMS.length - 1), { minLength: 1, maxLength: 6 }),
    isListed: fc.boolean(),
    lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
    mark: fc.constantFrom('', '\ufeff'),
    end: fc.constantFrom('', '\n', '\n\n'),
  })
  .map(({ sizes, forms, isListed, lineEnd, mark, end }) => {
    const names = sizes.map((index) => NAMES[index] ?? '');
    const of = (values: readonly string[]) => sizes.map((index) => values[index] ?? '');
    const finished = isListed
      ? `[${of(SIZES).join(', ')}]`
      : `{ ${of(SIZES)
          .map((size, index) => `${names[index]}: ${size}`)
          .join(', ')} }`;
    const block = [
      '```measure',
      `sizes: [${names.join(', ')}]`,
      `finished: ${finished}`,
      'binding: { strip: 2 1/2" }',
      'batting: {}',
      '```',
    ];
    const batting = `Batting: ${bracket(of(BATTING), [])} <!-- = batting.width x batting.length -->.`;
    const text = forms.map((form) => FORMS[form]?.(of(STRIPS), names) ?? '');
    const source = [block.join('\n'), batting, ...text].join('\n\n') + end;
    return { source: mark + source.replaceAll('\n', lineEnd), names };
  });

const request = (names: readonly string[]) =>
  fc.record({ after: fc.constantFrom(null, ...names), isKnown: fc.boolean() });

describe('Of every manuscript', () => {
  it('is the same again when a size is added and dropped', () => {
    fc.assert(
      fc.property(
        manuscript.chain((one) => request(one.names).map((asked) => ({ ...one, ...asked }))),
        ({ source, after, isKnown }) => {
          const values = isKnown ? { finished: '108" x 120"' } : {};
          const { text } = revised(source, { kind: 'add', name: 'king', after, values });

          expect(text).not.toBe(source);
          expect(revised(text, { kind: 'drop', name: 'king' }).text).toBe(source);
        },
      ),
      { numRuns: 25 },
    );
  });

  it('keeps every line that does not speak of each size when one is added', () => {
    fc.assert(
      fc.property(manuscript, ({ source }) => {
        const { text, edits } = revised(source, { kind: 'add', name: 'king' });
        const added = newLines(source, text);

        expect(text.match(/\r\n|\r|\n/g)?.[0]).toBe(source.match(/\r\n|\r|\n/g)?.[0]);
        expect(added.filter((line) => /measure skip|🧵\.|^```/.test(line))).toEqual([]);
        expect(edits.every(({ start }, index) => start >= (edits[index - 1]?.end ?? 0))).toBe(true);
      }),
      { numRuns: 15 },
    );
  });

  it('is the same again when its sizes are turned around twice', () => {
    fc.assert(
      fc.property(manuscript, ({ source, names }) => {
        const { text } = revised(source, { kind: 'order', names: [...names].reverse() });

        expect(revised(text, { kind: 'order', names }).text).toBe(source);
      }),
      { numRuns: 15 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { patternOf, summary } from '../support/pattern.ts';
import { type Stated, statementsOf } from '../support/randomManuscript.ts';
import { blockOf, randomPattern } from '../support/randomPattern.ts';

const HEAD = `sizes: [lap, twin]
finished: { lap: 54" x 66", twin: 400" x 400" }
binding: { strip: 2 1/2", grain: straight }
`;

const inFence = (block: string) => `\`\`\`measure\n${block}\n\`\`\`\n`;

/** The findings of a statement as `[code, text]`, and the block's last line when all fixes are applied. */
function check(states: string): [found: string[][], fixed: string] {
  const source = inFence(`${HEAD}states: ${states}`);
  const { findings } = proofread({ source });
  const fixed = applyEdits(
    source,
    findings.flatMap(({ fixes }) => fixes[0]?.edits ?? []),
  );
  expect(proofread({ source: fixed }).findings.filter(({ fixes }) => fixes.length > 0)).toEqual([]);
  return [
    findings.map((finding) => summary(finding, source).slice(0, 2)),
    fixed.slice(fixed.indexOf('states: ') + 8, fixed.lastIndexOf('\n```')),
  ];
}

describe('a stated value', () => {
  it.each<[title: string, states: string, underlined: string, fixed: string]>([
    ['bare', '{ binding.strip: 2" }', '2"', '{ binding.strip: 2½" }'],
    ['in single quotation marks', `{ binding.strip: '2"' }`, `'2"'`, `{ binding.strip: '2½"' }`],
    [
      'with two single quotation marks for inches, in such marks',
      `{ binding.strip: '2''''' }`,
      `'2'''''`,
      `{ binding.strip: '2½''''' }`,
    ],
    ['in double quotation marks', '{ binding.strip: "2\\"" }', '"2\\""', '{ binding.strip: "2½\\"" }'],
    ['in words', '{ binding.strip: two inches }', 'two inches', '{ binding.strip: two and a half inches }'],
    ['in a list by size', '{ binding.strips: [6, 42] }', '6', '{ binding.strips: [7, 43] }'],
  ])('is checked when it stands %s', (_, states, underlined, fixed) => {
    const [found, text] = check(states);
    expect(found[0]?.[1]).toBe(underlined);
    expect(text).toBe(fixed);
  });

  it('over several lines is checked, but not mended', () => {
    const [found, text] = check('\n  binding.strip: >\n    2"');
    expect(found).toEqual([['wrong-figure', '>\n    2"']]);
    expect(text).toBe('\n  binding.strip: >\n    2"');
  });

  it('is mended in quotation marks where a comma would end it', () => {
    const [found, text] = check('{ finished.edge: { lap: 240", twin: 900" } }');
    expect(found).toEqual([['wrong-figure', '900"']]);
    expect(text).toBe(`{ finished.edge: { lap: 240", twin: '1,600"' } }`);
  });

  it('that stands for all sizes is mended to one value for each where they differ', () => {
    const source = inFence(`${HEAD}states: { finished.width: 54" }`);
    const [finding] = proofread({ source }).findings;
    expect(finding?.message).toBe(
      'The finished width differs between the sizes: it is 54" for “lap” and 400" for “twin”.',
    );
    expect(check('{ finished.width: 54" }')).toEqual([
      [['wrong-figure', '54"']],
      '{ finished.width: [54", 400"] }',
    ]);
  });

  it('that stands for all sizes is enough when it is enough for the one that takes most', () => {
    expect(check('{ binding.strips: 43 }')).toEqual([[], '{ binding.strips: 43 }']);
    expect(check('{ binding.yardage: 3 yd }')).toEqual([[], '{ binding.yardage: 3 yd }']);
    expect(check('{ binding.strips: 8 }')).toEqual([[['short-figure', '8']], '{ binding.strips: 43 }']);
  });

  it('of a figure that does not exist is reported at its name', () => {
    expect(check('{ binding.stripes: 43 }')).toEqual([
      [['unknown-figure', 'binding.stripes']],
      '{ binding.stripes: 43 }',
    ]);
  });

  it('that measures something else is told so', () => {
    expect(check('{ binding.strips: [7", 43] }')[0]).toEqual([['wrong-unit', '7"']]);
  });
});

/** Ways to put a text into YAML. */
const QUOTED = [
  (text: string) => text,
  (text: string) => `'${text.replaceAll("'", "''")}'`,
  (text: string) => JSON.stringify(text),
] as const;

interface Entry {
  readonly numbers: readonly Stated[];
  readonly quoted: (text: string) => string;
  /** By name, or in a list. */
  readonly named: boolean;
}

const blocks = randomPattern.chain((random) => {
  const block = blockOf(random);
  const { pattern } = patternOf(block);
  // A length without its unit cannot be stated in a block, and each figure can be stated once.
  const usable = statementsOf(pattern)
    .map((ways) => ways.filter((numbers) => numbers.every(isReadable)))
    .filter((ways) => ways[0]?.length === random.sizes.length);
  const entry = (ways: (typeof usable)[number]): fc.Arbitrary<Entry> =>
    fc.record({
      numbers: fc.constantFrom(...ways),
      quoted: fc.constantFrom(...QUOTED),
      named: fc.boolean(),
    });
  return fc.record({
    block: fc.constant(block),
    entries: fc
      .tuple(...usable.map(entry))
      .chain((all) => fc.shuffledSubarray(all, { minLength: 1, maxLength: Math.min(8, usable.length) })),
    lineEnd: fc.constantFrom('\n', '\r\n'),
  });
});

const isReadable = ({ right }: Stated) => /["”″']$|[a-z]\.?$/.test(right) || /^\d+$/.test(right);

function write(
  { block, entries, lineEnd }: { block: string; entries: readonly Entry[]; lineEnd: string },
  isWrong: (index: number) => boolean,
) {
  let source = `\`\`\`measure\n${block}\nstates:\n`.replaceAll('\n', lineEnd);
  const places: { start: number; end: number }[] = [];
  for (const { numbers, quoted, named } of entries) {
    source += `  ${numbers[0]?.id}: `;
    const single = numbers.length === 1;
    if (!single) source += named ? '{ ' : '[';
    for (const [index, number] of numbers.entries()) {
      if (index > 0) source += ', ';
      if (!single && named) source += `${number.size}: `;
      const start = source.length;
      source += quoted(isWrong(places.length) ? number.wrong : number.right);
      places.push({ start, end: source.length });
    }
    if (!single) source += named ? ' }' : ']';
    source += lineEnd;
  }
  return { source: `${source}\`\`\`${lineEnd}`, places };
}

describe('random statements', () => {
  it('have one finding at exactly the value that is put wrong, and its fix restores the block', () => {
    fc.assert(
      fc.property(blocks, fc.nat(), (statements, which) => {
        const right = write(statements, () => false);
        expect(
          proofread(right).findings.map(({ message }) => message),
          right.source,
        ).toEqual([]);
        const at = which % right.places.length;
        const { source, places } = write(statements, (index) => index === at);
        const { findings } = proofread({ source });
        expect(
          findings.map(({ start, end }) => ({ start, end })),
          source,
        ).toEqual([places[at]]);
        expect(applyEdits(source, findings[0]?.fixes[0]?.edits ?? [])).toBe(right.source);
      }),
      { seed: 20_261_129, numRuns: 150 },
    );
  });
});

/** How each form in which a manuscript tells its sizes takes up another one. */
import { describe, expect, it } from 'vitest';
import { findings, newLines, refusal, revised } from './revise.ts';

/** Edges of 240" and 324", and of 392" for the queen: 7, 9 and 11 strips of 40" with their seams. */
const throwQuilt = (...text: string[]) =>
  [
    '```measure',
    'sizes: [throw, twin]',
    'finished: { throw: 54" x 66", twin: 72" x 90" }',
    'binding: { strip: 2 1/2" }',
    'batting: {}',
    '```',
    '',
    ...text,
    '',
  ].join('\n');
const QUEEN = { kind: 'add', name: 'queen', values: { finished: '90" x 106"' } } as const;

function both(before: string, request: Parameters<typeof revised>[1] = QUEEN) {
  const { text, open } = revised(before, request);
  const back = request.kind === 'add' ? revised(text, { kind: 'drop', name: request.name }).text : undefined;
  return { lines: newLines(before, text).slice(2), text, open, back };
}

describe('A size is added', () => {
  it.each<[form: string, before: readonly string[], after: readonly string[]]>([
    [
      'to lists in brackets, with the noun behind them',
      ['Cut 7 (9) strips for the binding.'],
      ['Cut 7 (9, 11) strips for the binding.'],
    ],
    [
      'to lists with slashes, whose last number carries the unit',
      ['Batting width: 62/80 inches <!-- = batting.width -->.'],
      ['Batting width: 62/80/98 inches <!-- = batting.width -->.'],
    ],
    [
      'to lists in bold letters',
      ['Cut **7** (**9**) <!-- = binding.strips --> strips.'],
      ['Cut **7** (**9**, **11**) <!-- = binding.strips --> strips.'],
    ],
    [
      'to lists of sizes in inches',
      ['Batting: 62" × 74" (80" × 98") <!-- = batting.width x batting.length -->.'],
      ['Batting: 62" × 74" (80" × 98", 98" × 114") <!-- = batting.width x batting.length -->.'],
    ],
    [
      'to sentences that name the size behind each number',
      ['Cut 7 binding strips for the throw and 9 binding strips for the twin.'],
      [
        'Cut 7 binding strips for the throw, 9 binding strips for the twin and 11 binding strips for the queen.',
      ],
    ],
    [
      'to sentences that name the size before each number',
      ['Batting width for the throw 62" and for the twin 80".'],
      ['Batting width for the throw 62", for the twin 80" and for the queen 98".'],
    ],
    [
      'to names in a row, with the right article',
      ['It comes as a throw or a twin.', 'Choose throw / twin.'],
      ['It comes as a throw, a twin or a queen.', 'Choose throw / twin / queen.'],
    ],
    [
      'to the sentence that says how numbers are listed',
      ['The first number is for the throw; the twin follows in brackets.'],
      ['The first number is for the throw; the twin and the queen follow in brackets.'],
    ],
    [
      'to a table with a row for each size',
      [
        '| Size | Batting |',
        '|------|---------|',
        '| Throw | 62" × 74" <!-- = batting.width x batting.length --> |',
        '| Twin | 80" × 98" <!-- = batting.width x batting.length --> |',
      ],
      ['| Queen | 98" × 114" <!-- = batting.width x batting.length --> |'],
    ],
    [
      'to a list with an item for each size',
      ['- Throw: 7 binding strips', '- Twin: 9 binding strips'],
      ['- Queen: 11 binding strips'],
    ],
    [
      'to sections with the name of a size as their heading',
      [
        '## Throw',
        '',
        'Cut 7 <!-- = binding.strips --> strips.',
        '',
        '## Twin',
        '',
        'Cut 9 <!-- = binding.strips --> strips.',
      ],
      ['## Queen', 'Cut 11 <!-- = binding.strips --> strips.'],
    ],
  ])('%s', (_, before, after) => {
    const manuscript = throwQuilt(...before);
    const { lines, open, text, back } = both(manuscript);

    expect(lines).toEqual(after);
    expect(open).toEqual([]);
    expect(findings(text)).toEqual(findings(manuscript));
    expect(back).toBe(manuscript);
  });

  it('and its article fits the new name', () => {
    const manuscript = throwQuilt('It comes as a throw or a twin.');

    expect(both(manuscript, { ...QUEEN, name: 'oversized queen' }).lines).toEqual([
      'It comes as a throw, a twin or an oversized queen.',
    ]);
  });

  it('and a column keeps the pipes below each other where they were so', () => {
    const manuscript = throwQuilt(
      '|                |   Throw | Twin  |',
      '|:---------------|--------:|-------|',
      '| Binding strips |       7 | 9     |',
    );
    expect(both(manuscript, { ...QUEEN, name: 'full', after: 'throw' }).lines).toEqual([
      '|                |   Throw | Full | Twin  |',
      '|:---------------|--------:|-----:|-------|',
      '| Binding strips |       7 |   11 | 9     |',
    ]);
    expect(both(manuscript).lines).toEqual([
      '|                |   Throw | Twin  | Queen |',
      '|:---------------|--------:|-------|-------|',
      '| Binding strips |       7 | 9     | 11    |',
    ]);
    expect(both(manuscript).back).toBe(manuscript);
  });

  it('and a table without pipes at its sides keeps none', () => {
    const manuscript = throwQuilt('| | Throw | Twin', '|-|-|-', '| Binding strips | 7 | 9');

    expect(both(manuscript).lines).toEqual([
      '| | Throw | Twin | Queen',
      '|-|-|- | -',
      '| Binding strips | 7 | 9 | 11',
    ]);
    expect(both(manuscript).back).toBe(manuscript);
  });
});

describe('A number that was the same for all sizes', () => {
  const manuscript = [
    '```measure',
    'sizes: [lap, twin]',
    'finished: { lap: 54" x 66", twin: 56" x 66" }',
    'binding: { strip: 2 1/2" }',
    'backing: {}',
    '```',
    '',
    'Join 2 <!-- = backing.panels --> panels with 1 <!-- = backing.seams --> seam. The strip is 2½" <!-- = binding.strip --> wide.',
    '',
  ].join('\n');

  it('becomes a list when the new size needs another, and is one number again without it', () => {
    const { lines, back } = both(manuscript, {
      kind: 'add',
      name: 'king',
      values: { finished: '108" x 108"' },
    });

    expect(lines).toEqual([
      'Join 2 (2, 3) <!-- = backing.panels --> panels with 1 (1, 2) <!-- = backing.seams --> seams. The strip is 2½" <!-- = binding.strip --> wide.',
    ]);
    expect(back).toBe(manuscript);
  });
});

describe('The block', () => {
  const block = (...lines: string[]) => ['```measure', ...lines, '```', ''].join('\n');

  it.each<[form: string, before: readonly string[], after: readonly string[]]>([
    [
      'mappings and lists on lines of their own, with their comments',
      [
        'sizes:',
        '  - lap # the small one',
        '  - twin',
        'finished:',
        '  lap:  54" x 66"',
        '  twin: 72" x 90" # longer',
      ],
      ['  - queen', '  queen: 90" x 106"'],
    ],
    [
      'values that are listed in the order of the sizes',
      ['sizes: [lap, twin]', 'finished: [54" x 66", 72" x 90"]'],
      ['sizes: [lap, twin, queen]', 'finished: [54" x 66", 72" x 90", 90" x 106"]'],
    ],
    [
      'values that were the same for all sizes',
      ['sizes: [lap, twin]', 'finished: 54" x 66"'],
      ['sizes: [lap, twin, queen]', 'finished: { lap: 54" x 66", twin: 54" x 66", queen: 90" x 106" }'],
    ],
    [
      'statements, whose new value is computed',
      [
        'sizes: [lap, twin]',
        'finished: { lap: 54" x 66", twin: 72" x 90" }',
        'binding: { strip: 2 1/2" }',
        'states: { binding.strips: [7, 9] }',
      ],
      [
        'sizes: [lap, twin, queen]',
        'finished: { lap: 54" x 66", twin: 72" x 90", queen: 90" x 106" }',
        'states: { binding.strips: [7, 9, 11] }',
      ],
    ],
  ])('takes up a size in %s', (_, before, after) => {
    const manuscript = block(...before);
    const { text } = revised(manuscript, { ...QUEEN, name: 'queen' });

    expect(newLines(manuscript, text)).toEqual(after);
    expect(findings(text)).toEqual([]);
    expect(revised(text, { kind: 'drop', name: 'queen' }).text).toBe(manuscript);
  });

  it('reorders values that stand in the order of the sizes', () => {
    const manuscript = block('sizes: [lap, twin]', 'finished: [54" x 66", 72" x 90"]');

    expect(revised(manuscript, { kind: 'order', names: ['twin', 'lap'] }).text).toBe(
      block('sizes: [twin, lap]', 'finished: [72" x 90", 54" x 66"]'),
    );
  });
});

describe('What cannot be computed', () => {
  it('is a gap in the block and wherever it follows from it, and goes with its size', () => {
    const manuscript = throwQuilt('Cut 7 (9) <!-- = binding.strips --> strips.');
    const { lines, text, back } = both(manuscript, { kind: 'add', name: 'queen' });

    expect(text).toContain('finished: { throw: 54" x 66", twin: 72" x 90", queen: … }');
    expect(lines).toEqual(['Cut 7 (9, [queen: …]) <!-- = binding.strips --> strips.']);
    expect(findings(text)).toEqual(['gap: …', 'gap: [queen: …]']);
    expect(back).toBe(manuscript);
  });

  it('is a gap in a list whose numbers no figure accounts for', () => {
    const manuscript = throwQuilt('Sew on 7 (9) buttons of twelve (12).');
    const { lines, back } = both(manuscript);

    expect(lines).toEqual(['Sew on 7 (9, [queen: …]) buttons of twelve (12).']);
    expect(back).toBe(manuscript);
  });

  it('is a gap behind a sentence that says of each size something else', () => {
    const manuscript = throwQuilt('The throw is tied, the twin is quilted. Both are bound.');
    const { lines, text, back } = both(manuscript);

    expect(lines).toEqual(['The throw is tied, the twin is quilted [queen: …]. Both are bound.']);
    expect(findings(text)).toEqual(['gap: [queen: …]']);
    expect(back).toBe(manuscript);
  });

  it('is a gap in a column whose words differ from size to size', () => {
    const manuscript = throwQuilt(
      '| | Throw | Twin |',
      '|---|---|---|',
      '| Quilting | by hand | by machine |',
    );

    expect(both(manuscript).lines.at(-1)).toBe('| Quilting | by hand | by machine | [queen: …] |');
  });

  it('leaves a sentence about one size alone', () => {
    const manuscript = throwQuilt('For the twin, piece the batting.', 'Throw the scraps away.');

    expect(both(manuscript).lines).toEqual([]);
  });

  it('is told where a dropped size is still spoken of, and where a name may be another word', () => {
    const manuscript = throwQuilt('For the throw quilt, use scraps. Throw the rest away.');

    expect(revised(manuscript, { kind: 'drop', name: 'throw' }).open).toEqual([
      'For the throw quilt, use scraps',
      'Throw the rest away',
    ]);
    const renamed = revised(manuscript, { kind: 'rename', name: 'throw', to: 'lap' });
    expect(renamed.text).toContain('For the lap quilt, use scraps. Throw the rest away.');
    expect(renamed.open).toEqual(['Throw']);
  });
});

describe('A gap', () => {
  it('at the end of a list with slashes goes with its slash when its size is dropped', () => {
    const before = [
      '```measure',
      'sizes: [crib, lap, twin]',
      'finished: [36" x 48", 54" x 66", 72" x 90"]',
      'binding: { strip: 2 1/2" }',
      '```',
      '',
      'Cut 5/7/9 <!-- = binding.strips --> strips',
      '',
    ].join('\n');
    const { text } = revised(before, { kind: 'add', name: 'king', after: 'twin' });

    expect(text).toContain('Cut 5/7/9/[king: …]');
    expect(revised(text, { kind: 'drop', name: 'king' }).text).toBe(before);
  });
});

describe('A request', () => {
  const manuscript = throwQuilt();

  it.each<[Parameters<typeof refusal>[1], string]>([
    [{ kind: 'add', name: 'Twin' }, 'The pattern has a size “twin” already.'],
    [
      { kind: 'add', name: 'a @ b' },
      '“a @ b” cannot name a size: use letters, digits, spaces and hyphens only.',
    ],
    [{ kind: 'add', name: 'queen', after: 'twn' }, 'The pattern has no size “twn”. Did you mean “twin”?'],
    [
      { kind: 'add', name: 'queen', values: { layout: '9 x 11' } },
      'No entry “layout” of the block has a value for each size. Values for each size have finished.',
    ],
    [{ kind: 'drop', name: 'king' }, 'The pattern has no size “king”. Its sizes are throw and twin.'],
    [{ kind: 'rename', name: 'twin', to: 'throw' }, 'The pattern has a size “throw” already.'],
    [{ kind: 'order', names: ['twin'] }, 'Name every size once; the sizes are throw and twin.'],
  ])('that cannot be met is answered in a sentence: %j', (request, sentence) => {
    expect(refusal(manuscript, request)).toBe(sentence);
  });

  it('is refused where the pattern has no sizes, or one only', () => {
    const [none, one] = ['', 'sizes: [lap]\n'].map(
      (sizes) => `\`\`\`measure\n${sizes}finished: 54" x 66"\n\`\`\`\n`,
    );

    expect(refusal(none ?? '', QUEEN)).toBe(
      'The pattern has no “sizes” in its block yet; write there the name of the one that it has.',
    );
    expect(refusal(one ?? '', { kind: 'drop', name: 'lap' })).toBe(
      '“lap” is the only size, so it cannot be dropped.',
    );
  });
});

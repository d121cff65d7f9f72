import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { summary } from '../support/pattern.ts';

const BLOCK =
  '```measure\nsizes: [lap, twin]\nfinished: { lap: 54" x 66", twin: 72" x 90" }\nbinding: { strip: 2 1/4" }\n```\n\n';

const findings = (text: string) => {
  const source = BLOCK + text;
  return proofread({ source }).findings.map((finding) => summary(finding, source));
};

const accounts = (text: string) =>
  proofread({ source: BLOCK + text }).accounts.map(({ number, kind, tie }) => [
    number.text,
    kind,
    tie && [tie.figure.id, tie.size],
  ]);

const fixed = (text: string) => {
  const source = BLOCK + text;
  const edits = proofread({ source }).findings.flatMap(({ fixes }) => fixes[0]?.edits ?? []);
  return applyEdits(source, edits).slice(BLOCK.length);
};

describe('a tag', () => {
  it('ties the number before it, over the noun between them', () => {
    expect(accounts('Cut 2¼" strips <!-- = binding.strip -->.')).toEqual([
      ['2¼"', 'verified', ['binding.strip', null]],
    ]);
  });

  it('ties a number from between its numeral and its unit, and the fix leaves it there', () => {
    expect(accounts('Cut 2¼<!-- = binding.strip -->" strips.')).toEqual([
      ['2¼"', 'verified', ['binding.strip', null]],
    ]);
    expect(
      accounts('It is 54 <!-- = finished.width @ lap --> inches by 66" <!-- = finished.length @ lap -->.'),
    ).toEqual([
      ['54  inches', 'verified', ['finished.width', 'lap']],
      ['66"', 'verified', ['finished.length', 'lap']],
    ]);
    expect(fixed('Cut 2½<!-- = binding.strip -->" strips.')).toBe('Cut 2¼<!-- = binding.strip -->" strips.');
  });

  it('does not tie a fraction to the whole number on its other side', () => {
    expect(findings('Cut 2 <!-- = binding.strip -->¼" strips.')).toEqual([
      ['stray-tag', '<!-- = binding.strip -->', 'No number stands before this tag.'],
    ]);
  });

  it.each([
    ['at its beginning', 'Cut 2¼" <!--\n  = binding.strip --> strips.'],
    ['behind the sign', 'Cut 2¼" <!-- =\nbinding.strip --> strips.'],
    ['at its end', 'Cut 2¼" <!-- = binding.strip\n--> strips.'],
    ['so that it begins a line', 'Cut 2¼"\n<!-- = binding.strip --> strips.'],
    ['over three lines', 'Cut 2¼"\r\n<!--\r\n= binding.strip\r\n--> strips.'],
    ['in a list', '- Cut 2¼"\n  <!-- =\n  binding.strip --> strips.'],
    ['in a quotation', '> Cut 2¼" <!-- =\n> binding.strip --> strips.'],
  ])('may be wrapped %s', (_, text) => {
    expect(accounts(text)).toEqual([['2¼"', 'verified', ['binding.strip', null]]]);
  });

  it('ties both numbers of a size to two figures', () => {
    expect(accounts('It is 54" × 66" <!-- = finished.width x finished.length @ lap -->.')).toEqual([
      ['54"', 'verified', ['finished.width', 'lap']],
      ['66"', 'verified', ['finished.length', 'lap']],
    ]);
  });

  it('ties a size list element by element', () => {
    expect(accounts('The edge is 240" (324") <!-- = finished.edge -->.')).toEqual([
      ['240"', 'verified', ['finished.edge', 'lap']],
      ['324"', 'verified', ['finished.edge', 'twin']],
    ]);
  });

  it('takes the size from the column of a table', () => {
    expect(
      accounts(
        '| | Lap | Twin |\n|---|---|---|\n| Edge | 240" <!-- = finished.edge --> | 324" <!-- = finished.edge --> |',
      ),
    ).toEqual([
      ['240"', 'verified', ['finished.edge', 'lap']],
      ['324"', 'verified', ['finished.edge', 'twin']],
    ]);
  });

  it('takes the size from the heading above', () => {
    expect(accounts('## Twin size\n\nThe edge is 324" <!-- = finished.edge -->.')).toEqual([
      ['324"', 'verified', ['finished.edge', 'twin']],
    ]);
  });

  it('needs a size where nothing tells it, and offers each', () => {
    const source = `${BLOCK}The edge is 324" <!-- = finished.edge -->.`;
    const [finding] = proofread({ source }).findings;
    expect(finding && summary(finding, source)).toEqual([
      'size-needed',
      '<!-- = finished.edge -->',
      'The length of the finished edge differs between the sizes; say which one is meant, for example “@ lap”.',
    ]);
    expect(finding?.fixes.map(({ title }) => title)).toEqual([
      'This is the size “lap”',
      'This is the size “twin”',
    ]);
    expect(applyEdits(source, finding?.fixes[1]?.edits ?? [])).toContain('<!-- = finished.edge @ twin -->');
  });

  it('that names a figure of an entry which is missing says which entry', () => {
    expect(findings('Buy 4 yards <!-- = backing.yardage @ lap -->.')).toEqual([
      [
        'unknown-figure',
        'backing.yardage',
        'There is no figure “backing.yardage”. It needs the entry “backing” in the measure block.',
      ],
    ]);
  });

  it('that names a misspelled figure is answered with the nearest one', () => {
    expect(findings('It is 54" <!-- = finished.widht @ lap --> wide.')).toEqual([
      [
        'unknown-figure',
        'finished.widht',
        'There is no figure “finished.widht”. Did you mean “finished.width”?',
      ],
    ]);
  });
});

describe('a fix', () => {
  it.each([
    [
      'keeps the hyphen',
      'Cut 2-3/4" <!-- = binding.strip --> wide.',
      'Cut 2-1/4" <!-- = binding.strip --> wide.',
    ],
    [
      'keeps the word',
      'Cut six <!-- = binding.strips @ lap --> strips.',
      'Cut seven <!-- = binding.strips @ lap --> strips.',
    ],
    [
      'keeps the decimal point',
      'Cut 2.5" <!-- = binding.strip --> wide.',
      'Cut 2.25" <!-- = binding.strip --> wide.',
    ],
    [
      'gives the noun its plural',
      'Cut 1 strip <!-- = binding.strips @ lap -->.',
      'Cut 7 strips <!-- = binding.strips @ lap -->.',
    ],
    [
      'changes one element of a list',
      '240"/234" <!-- = finished.edge -->',
      '240"/324" <!-- = finished.edge -->',
    ],
    [
      'leaves emphasis where it is',
      'Cut **2**½" <!-- = binding.strip -->.',
      'Cut **2**¼" <!-- = binding.strip -->.',
    ],
  ])('%s', (_, wrong, right) => {
    expect(fixed(wrong)).toBe(right);
    expect(findings(right)).toEqual([]);
  });

  it('is not offered where it would leave empty marks of emphasis behind', () => {
    const source = `${BLOCK}Cut **2½**" <!-- = binding.strip -->.`;
    const [finding] = proofread({ source }).findings;
    expect([finding?.code, finding?.fixes.length]).toEqual(['wrong-figure', 1]);
  });
});

describe('a mistake of the block', () => {
  it('is reported once, and not again at every number that depends on it', () => {
    const source =
      '```measure\nfinished: 36 x 48\nbinding: { strip: 2 1/4" }\n```\n\nBind 168" <!-- = finished.edge -->.';
    expect(proofread({ source }).findings.map(({ code }) => code)).toEqual(['bad-value']);
  });
});

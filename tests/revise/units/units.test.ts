import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../../core/findings/finding.ts';
import { proofread } from '../../../core/proof/proofread.ts';
import { reviseUnits, type UnitsRequest } from '../../../core/revise/units/reviseUnits.ts';
import { revisedUnits } from './revise.ts';

const METRIC: UnitsRequest = { kind: 'add', system: 'metric' };
const block = (house = '') =>
  [
    '```measure',
    house,
    'finished: 36" x 48"',
    'binding: { strip: 2 1/4" }',
    'batting: {}',
    '```',
    '',
    '',
  ].join('\n');
const added = (text: string, house?: string) => {
  const source = block(house) + text;
  const { text: now, open } = revisedUnits(source, METRIC);
  expect(now.startsWith(block(house))).toBe(true);
  return { text: now.slice(block(house).length), open };
};

describe('Adding metric equivalents', () => {
  it.each([
    ['a length', 'Fold it over by 2½".', 'Fold it over by 2½" (6.5 cm).'],
    [
      'a size, in one pair of brackets',
      'Cut a scrap 2½" × 4½".',
      'Cut a scrap 2½" × 4½" (6.5 cm × 11.5 cm).',
    ],
    [
      'a size with one mark',
      'Cut a scrap 2½ by 4½ inches.',
      'Cut a scrap 2½ by 4½ inches (6.5 cm by 11.5 cm).',
    ],
    [
      'a number with a tag, behind the tag',
      'Cut strips 2¼" <!-- = binding.strip --> wide.',
      'Cut strips 2¼" <!-- = binding.strip --> (5.5 cm) wide.',
    ],
    [
      'a size of which each side has a tag',
      '44" <!-- = batting.width --> × 56" <!-- = batting.length --> of batting',
      '44" <!-- = batting.width --> × 56" <!-- = batting.length --> (112 cm × 142.5 cm) of batting',
    ],
    ['a number in bold', 'Fold **2½"** over.', 'Fold **2½"** (6.5 cm) over.'],
    ['a number in a link', 'Fold [2½"](#cuff) over.', 'Fold [2½"](#cuff) (6.5 cm) over.'],
    [
      'a length in brackets, behind a stroke',
      'The cuff (2½") is folded.',
      'The cuff (2½" / 6.5 cm) is folded.',
    ],
    ['a seam, to the millimetre', 'Sew ¼" from the edge.', 'Sew ¼" (0.6 cm) from the edge.'],
    ['fabric, in metres that suffice', 'Buy 1⅛ yards of lining.', 'Buy 1⅛ yards (1.05 m) of lining.'],
    [
      'a cell of a table',
      '| Part | Length |\n|---|---|\n| Cuff | 2½" |\n',
      '| Part | Length |\n|---|---|\n| Cuff | 2½" (6.5 cm) |\n',
    ],
    ['an entity', 'Fold it 2&frac12;&quot; over.', 'Fold it 2&frac12;&quot; (6.5 cm) over.'],
    ['as the author writes elsewhere', 'Fold 2½" over, not 3cm.', 'Fold 2½" (6.5cm) over, not 3cm.'],
  ])('adds one to %s', (_, before, after) => {
    expect(added(before)).toEqual({ text: after, open: [] });
  });

  it('rounds to the step of the house, in its unit', () => {
    expect(added('Cut a scrap 2½" × 4½".', 'house: { convert to: 1 mm }').text).toBe(
      'Cut a scrap 2½" × 4½" (64 mm × 114 mm).',
    );
  });

  it.each([
    ['an id of a heading', '## The 12" block\n', '12"'],
    ['a list of lengths', 'Cut ties 24" (28", 30") long.', '24"|28"|30"'],
    ['a range', 'Use fabric 42-44" wide.', '42-44"'],
    ['a precut', 'Take a fat quarter, 18" × 21".', '18" × 21"'],
    ['a compound word', 'Take 2½"-wide tape.', '2½"'],
    ['a number that is wrong', 'Cut strips 2½" <!-- = binding.strip --> wide.', '2½"'],
    ['feet and inches', 'It is 5 ft 6 in long.', '5 ft|6 in'],
  ])('leaves %s alone and says so', (_, text, open) => {
    expect(added(text)).toEqual({ text, open: open.split('|') });
  });

  it.each([
    ['code', 'Write `2½"` there.'],
    ['a comment', 'It is long. <!-- 2½" of it -->'],
    ['what is switched off', '<!-- measure off -->\nNo. 4, 5" tall\n<!-- measure on -->'],
    ['a number that is skipped', 'Leave 2½" <!-- measure skip --> free.'],
    ['a length that has one already', 'Fold 2½" (6.5 cm) over, and 2½" × 4½" (6.5 × 11.5 cm).'],
    ['counts', 'Cut 7 (9) of 12 blocks.'],
  ])('never touches %s', (_, text) => {
    expect(added(text)).toEqual({ text, open: [] });
  });

  it('adds inches to a metric manuscript', () => {
    const source = '```measure\nhouse: { seam: 0.75 cm }\n```\n\nFold 6.5 cm over.\n';
    const { text } = revisedUnits(source, { kind: 'add', system: 'inch' });
    expect(text).toContain('Fold 6.5 cm (2½") over.');
  });

  it('refuses what the manuscript is written in', () => {
    expect(reviseUnits(block(), { kind: 'add', system: 'inch' })).toEqual({
      refusal: 'This manuscript is written in inches; add the metric equivalents instead.',
    });
  });

  it('verifies all that it adds to verified numbers', () => {
    const source = `${block()}Cut strips 2¼" <!-- = binding.strip --> wide. Batting: 44" × 56" <!-- = batting.width x batting.length -->`;
    const { text } = revisedUnits(source, METRIC);
    const proof = proofread({ source: text });
    expect(proof.findings).toEqual([]);
    expect(proof.accounts.map(({ number, kind }) => [number.text, kind])).toEqual([
      ['2¼"', 'verified'],
      ['5.5 cm', 'verified'],
      ['44"', 'verified'],
      ['56"', 'verified'],
      ['112 cm', 'verified'],
      ['142.5 cm', 'verified'],
    ]);
  });
});

describe('Removing the equivalents', () => {
  it('leaves one alone that is part of the sentence, and says so', () => {
    const source = `${block()}Buy 70 cm (¾ yd) and 2½ yd or 2.3 m.`;
    const revision = reviseUnits(source, { kind: 'remove' });
    expect('edits' in revision && applyEdits(source, revision.edits)).toBe(source);
    expect('open' in revision && revision.open.map(({ start, end }) => source.slice(start, end))).toEqual([
      '2.3 m',
    ]);
  });
});

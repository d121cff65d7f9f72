import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';

const BLOCK = [
  '```measure',
  'blocks: { Wave: { finished: 6" } }',
  'layout: { grid: 8 x 10 }',
  'borders: [{ finished: 2" }, { finished: 4" }]',
  '```',
  '',
  '',
].join('\n');

/** What is said of the text, and what each fix makes of it. */
function said(text: string) {
  const source = BLOCK + text;
  return proofread({ source }).findings.map(({ code, severity, message, start, end, fixes }) => ({
    code,
    severity,
    message,
    at: source.slice(start, end),
    fixes: fixes.map(({ title, preferred, edits }) => [
      title,
      preferred,
      applyEdits(source, edits).slice(BLOCK.length),
    ]),
  }));
}

describe('A number that may state one of two figures', () => {
  it('is told what both are where it is neither, and each is offered', () => {
    expect(said('Cut 5 border strips.')).toEqual([
      {
        code: 'unclear-figure',
        severity: 'warning',
        message:
          '5 is neither the number of strips for the inner border (6) nor the number of strips for the outer border (7).',
        at: '5',
        fixes: [
          ['Change to 6: the number of strips for the inner border', false, 'Cut 6 border strips.'],
          ['Change to 7: the number of strips for the outer border', false, 'Cut 7 border strips.'],
        ],
      },
    ]);
  });

  it('counts as wrong, since it is wrong either way', () => {
    const { accounts, coverage } = proofread({ source: `${BLOCK}Cut 5 border strips.` });

    expect(accounts.map(({ kind, code, tie }) => [kind, code, tie])).toEqual([
      ['wrong', 'unclear-figure', undefined],
    ]);
    expect(coverage.wrong).toBe(1);
  });

  it.each([
    ['is right as one of them', 'Cut 6 border strips.'],
    ['is right as the other', 'Cut 7 border strips.'],
    ['is both together', 'Cut 13 border strips.'],
    ['is no likely mistake for either', 'Cut 40 border strips.'],
    ['is told with reserve', 'Cut about 5 border strips.'],
    ['is left alone by the author', 'Cut 5 <!-- measure skip --> border strips.'],
  ])('is not complained about where it %s', (_, text) => {
    expect(said(text)).toEqual([]);
  });

  it('is taken for the one that a tag names', () => {
    expect(said('Cut 5 <!-- = border.2.strips --> border strips.').map(({ code }) => code)).toEqual([
      'short-figure',
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import type { Fix } from '../../core/findings/finding.ts';
import { fixAll } from '../../core/report/preferred.ts';

const fix = (start: number, end: number, text: string, preferred = true): Fix => ({
  title: text,
  preferred,
  edits: [{ start, end, text }],
});

describe('Fix all', () => {
  it('takes the preferred fix of every finding that has exactly one', () => {
    const findings = [
      { fixes: [fix(0, 1, 'a'), fix(0, 1, 'other', false)] },
      { fixes: [fix(2, 3, 'no', false)] },
      { fixes: [fix(4, 5, 'x'), fix(4, 5, 'y')] },
      { fixes: [] },
      { fixes: [fix(6, 7, 'b')] },
    ];

    expect(fixAll(findings)).toEqual({
      edits: [
        { start: 0, end: 1, text: 'a' },
        { start: 6, end: 7, text: 'b' },
      ],
      mended: 2,
    });
  });

  it('leaves a fix out whole when one of its edits meets an earlier one', () => {
    const both: Fix = {
      title: 'both',
      preferred: true,
      edits: [...fix(10, 11, 'q').edits, ...fix(1, 2, 'r').edits],
    };

    expect(fixAll([{ fixes: [fix(0, 2, 'a')] }, { fixes: [both] }])).toEqual({
      edits: [{ start: 0, end: 2, text: 'a' }],
      mended: 1,
    });
  });

  it('does not insert twice at one place, and takes neighbours', () => {
    expect(fixAll([{ fixes: [fix(3, 3, 'a')] }, { fixes: [fix(3, 3, 'b')] }]).mended).toBe(1);
    expect(fixAll([{ fixes: [fix(0, 3, 'a')] }, { fixes: [fix(3, 5, 'b')] }]).mended).toBe(2);
  });
});

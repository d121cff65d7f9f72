import { describe, expect, it } from 'vitest';
import { statusBarText } from '../../client/statusBar.ts';

const coverage = {
  verified: 41,
  measured: 47,
  mistakes: 0,
  label: '41 of 47 checked',
  sentence: '41 of 47 are right.',
};

describe('The status bar', () => {
  it('shows the coverage with a sign, and says it in full to a screen reader', () => {
    expect(statusBarText(coverage)).toEqual({
      text: '$(check) 41 of 47 checked',
      tooltip: '41 of 47 are right.\nClick to proofread this manuscript again.',
      label: 'Measure Twice: 41 of 47 are right.',
      warns: false,
    });
  });

  it('tells who signed the manuscript off', () => {
    const signature = 'Signed off by Ada Lund on 2026-11-25, just as it stands.';
    expect(statusBarText({ ...coverage, signature })).toMatchObject({
      tooltip: `41 of 47 are right.\n${signature}\nClick to proofread this manuscript again.`,
      label: `Measure Twice: 41 of 47 are right.\n${signature}`,
    });
  });

  it('warns when a number contradicts the pattern', () => {
    expect(statusBarText({ ...coverage, mistakes: 1 })).toMatchObject({
      text: '$(warning) 41 of 47 checked',
      warns: true,
    });
  });
});

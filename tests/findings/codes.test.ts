import { describe, expect, it } from 'vitest';
import { CODES, type Code } from '../../core/findings/codes.ts';
import { proofread } from '../../core/proof/proofread.ts';

describe('the table of findings', () => {
  it.each(Object.keys(CODES) as Code[])(
    'shows %s with an example in which the program reports it',
    (code) => {
      const { findings } = proofread({ source: CODES[code].example });
      expect(findings.map((finding) => [finding.code, finding.severity])).toContainEqual([
        code,
        CODES[code].severity,
      ]);
    },
  );

  it.each(Object.keys(CODES) as Code[])('shows %s without any other finding beside it', (code) => {
    const { findings } = proofread({ source: CODES[code].example });
    expect(new Set(findings.map((finding) => finding.code))).toEqual(new Set([code]));
  });
});

import { describe, expect, it } from 'vitest';
import { proofread } from '../../../core/proof/proofread.ts';
import { summary } from '../../support/pattern.ts';
import { useOfSamples as use } from '../../support/samples.ts';
import { rightManuscripts } from './right.ts';

describe('manuscripts whose numbers are right', () => {
  it.each(rightManuscripts())('have no finding: $name', ({ source }) => {
    expect(proofread({ use, source }).findings.map((finding) => summary(finding, source))).toEqual([]);
  });
});

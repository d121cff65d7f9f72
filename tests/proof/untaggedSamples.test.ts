import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { manuscriptsIn, SAMPLES, withoutTags } from '../support/manuscripts.ts';
import { useOfSamples as use } from '../support/samples.ts';

/** A sample as proofread, and again without the tags of its numbers. */
const samples = manuscriptsIn(SAMPLES).map(({ name, source }) => {
  const bare = proofread({ source: withoutTags(source), use });
  return { name, tagged: proofread({ source, use }), bare };
});

describe('The samples without their tags', () => {
  it.each(samples)('have no finding: $name', ({ bare }) => {
    expect(bare.findings.map(({ message }) => message)).toEqual([]);
  });

  it('still have most of their numbers verified', () => {
    const [tagged, bare] = (['tagged', 'bare'] as const).map((which) =>
      samples.reduce((sum, sample) => sum + sample[which].coverage.verified, 0),
    );
    expect((bare ?? 0) / (tagged ?? 1)).toBeGreaterThan(0.9);
  });
});

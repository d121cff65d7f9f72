import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { useOfSamples as use } from '../support/samples.ts';

const SAMPLES = new URL('../../shared/samples/', import.meta.url);
const names = readdirSync(SAMPLES).filter((name) => name.endsWith('.md'));

/** A sample as proofread, and again without the tags of its numbers. */
const samples = names.map((name) => {
  const source = readFileSync(new URL(name, SAMPLES), 'utf8');
  const bare = source.replace(/\s?<!-- = [^>]*-->/g, '');
  return { name, tagged: proofread({ source, use }), bare: proofread({ source: bare, use }) };
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

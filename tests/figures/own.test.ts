import { describe, expect, it } from 'vitest';
import { complaints } from '../support/pattern.ts';

const own = (...figures: string[]) => complaints(`finished: 36" x 50"\nfigures: { ${figures.join(', ')} }`);

describe("the author's own figures", () => {
  it('that come to less than nothing are called so', () => {
    expect(own('longer: finished.width - finished.length')).toEqual([
      [
        'negative-figure',
        'finished.width - finished.length',
        '“longer” comes to −14", which is less than nothing.',
      ],
    ]);
  });

  it('that count what cannot be broken are called so, with the way to round them', () => {
    expect(own('bows: finished.edge / 12"')).toEqual([
      [
        'broken-count',
        'finished.edge / 12"',
        '“bows” comes to 14.33, which is not a whole number: ceil(…) rounds it up, floor(…) down.',
      ],
    ]);
  });

  it('may be broken or negative where another figure goes on from them', () => {
    expect(own('rough: finished.edge / 12"', 'bows: ceil(rough)')).toEqual([]);
    expect(own('less: finished.width - finished.length', 'more: 0" - less')).toEqual([]);
  });

  it('may be broken where another figure cannot be computed, which may have gone on from them', () => {
    expect(own('rough: finished.edge / 12"', 'bows: ceil(rough) + 1"').map(([code]) => code)).toEqual([
      'bad-expression',
    ]);
  });

  it('may be nothing, and lengths may be broken', () => {
    expect(own('none: finished.width - 36"', 'third: finished.width / 7')).toEqual([]);
  });

  it('name the size and its place in a value per size', () => {
    const block = `sizes: [wall, throw]
finished: { wall: 36" x 48", throw: 54" x 72" }
figures: { bows: [4, finished.width / 12"] }`;
    expect(complaints(block)).toEqual([
      [
        'broken-count',
        'finished.width / 12"',
        '“bows” comes to 4.5 for the size “throw”, which is not a whole number: ceil(…) rounds it up, floor(…) down.',
      ],
    ]);
  });
});

import { describe, expect, it } from 'vitest';
import { hangingSleeve } from '../../core/trade/sleeve.ts';
import { inches, real, show } from '../quantity/inches.ts';

const wish = {
  quiltWidth: real('36'),
  finishedDepth: inches('4'),
  shortOfEdge: inches('1'),
  seam: inches('1/4'),
  hem: inches('1/4'),
  usableWidth: inches('40'),
};

describe('a hanging sleeve', () => {
  it('4 in deep and an inch short of either edge of a 36 in quilt is cut 8 1/2 by 35 in', () => {
    const sleeve = hangingSleeve(wish);
    expect(sleeve.finishedLength.exact && show(sleeve.finishedLength.exact)).toBe('34');
    expect(sleeve.cutLength.exact && show(sleeve.cutLength.exact)).toBe('35');
    expect(show(sleeve.cutDepth)).toBe('8 1/2');
    expect([sleeve.strips.pieces, show(sleeve.fabricLength)]).toEqual([1, '8 1/2']);
  });

  it('folds back to its finished measures when hems and seam are taken off', () => {
    const sleeve = hangingSleeve({ ...wish, quiltWidth: real('71 3/8'), hem: inches('1/2') });
    const ends = real('1/2').mul(real('4'));
    expect(sleeve.cutLength.sub(ends).compare(sleeve.finishedLength)).toBe(0);
    expect(sleeve.cutDepth.sub(wish.seam.mul(2)).div(2).equals(wish.finishedDepth)).toBe(true);
  });

  it('longer than the fabric is wide is joined from strips with straight seams', () => {
    const sleeve = hangingSleeve({ ...wish, quiltWidth: real('80 1/2') });
    // 78 1/2 finished, 79 1/2 cut: two strips of 40 in give 79 1/2 exactly.
    expect([sleeve.strips.pieces, show(sleeve.strips.joined)]).toEqual([2, '79 1/2']);
    expect(hangingSleeve({ ...wish, quiltWidth: real('80 5/8') }).strips.pieces).toBe(3);
    expect(show(sleeve.fabricLength)).toBe('17');
  });

  it('is refused when nothing of the width is left', () => {
    expect(() => hangingSleeve({ ...wish, shortOfEdge: inches('18') })).toThrow('none is left');
  });
});

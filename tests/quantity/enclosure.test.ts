import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as enclosure from '../../core/quantity/enclosure.ts';
import { type Rational, rational } from '../../core/quantity/rational.ts';
import { inches } from './inches.ts';

const rationals = fc
  .tuple(fc.bigInt({ min: -(10n ** 6n), max: 10n ** 6n }), fc.bigInt({ min: 1n, max: 10n ** 4n }))
  .map(([n, d]) => rational(n, d));
const precisions = fc.integer({ min: 8, max: 300 });

function contains({ lo, hi }: enclosure.Enclosure, x: Rational, bits: number): boolean {
  const scaled = x.mul(1n << BigInt(bits), 1n);
  return rational(lo).compare(scaled) <= 0 && rational(hi).compare(scaled) >= 0;
}

describe('enclosures of rational values', () => {
  it('contain sum, product and negative of what they enclose', () => {
    fc.assert(
      fc.property(rationals, rationals, precisions, (x, y, bits) => {
        const [a, b] = [enclosure.encloseRational(x, bits), enclosure.encloseRational(y, bits)];
        expect(contains(a, x, bits)).toBe(true);
        expect(contains(enclosure.add(a, b), x.add(y), bits)).toBe(true);
        expect(contains(enclosure.negate(a), x.neg(), bits)).toBe(true);
        expect(contains(enclosure.multiply(a, b, bits), x.mul(y), bits)).toBe(true);
      }),
    );
  });

  it('contain the quotient, or say that the divisor cannot be told from zero', () => {
    fc.assert(
      fc.property(rationals, rationals, precisions, (x, y, bits) => {
        const b = enclosure.encloseRational(y, bits);
        const quotient = enclosure.divide(enclosure.encloseRational(x, bits), b, bits);
        if (quotient) expect(contains(quotient, x.div(y), bits)).toBe(true);
        else expect(b.lo <= 0n && b.hi >= 0n).toBe(true);
      }),
    );
  });

  it('bound a square root by bounds whose squares bound the value', () => {
    fc.assert(
      fc.property(rationals, precisions, (x, bits) => {
        const root = enclosure.squareRoot(enclosure.encloseRational(x.abs(), bits), bits);
        expect(root).toBeDefined();
        if (!root) return;
        const one = 1n << BigInt(bits);
        const scaled = x.abs().mul(one * one, 1n);
        expect(rational(root.lo * root.lo).compare(scaled)).not.toBe(1);
        expect(rational(root.hi * root.hi).compare(scaled)).not.toBe(-1);
      }),
    );
  });

  it('have no square root below zero', () => {
    expect(enclosure.squareRoot(enclosure.encloseRational(inches('-1/3'), 64), 64)).toBeUndefined();
  });
});

describe('the integer square root', () => {
  it('is the greatest integer whose square is not above the number', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 1n << 400n }), (n) => {
        const root = enclosure.integerSquareRoot(n);
        expect(root * root <= n && (root + 1n) * (root + 1n) > n).toBe(true);
      }),
    );
  });

  it('is right beside perfect squares', () => {
    for (const n of [0n, 1n, 2n, 3n, 4n, 15n, 16n, 17n, 10n ** 40n - 1n, 10n ** 40n, 10n ** 40n + 1n]) {
      const root = enclosure.integerSquareRoot(n);
      expect(root * root <= n && (root + 1n) * (root + 1n) > n).toBe(true);
    }
  });
});

describe('π and the arc tangent', () => {
  it('π agrees with another arc tangent formula at every precision', () => {
    // Størmer's formula, from memory: π/4 = 44·arctan(1/57) + 7·arctan(1/239) − 12·arctan(1/682) + 24·arctan(1/12943).
    const terms = [
      [44n, 57n],
      [7n, 239n],
      [-12n, 682n],
      [24n, 12943n],
    ] as const;
    for (const bits of [16, 53, 64, 128, 512, 1024]) {
      let sum: enclosure.Enclosure = { lo: 0n, hi: 0n };
      for (const [factor, inverse] of terms) {
        const angle = enclosure.arcTangent(enclosure.encloseRational(rational(1, inverse), bits), bits);
        const times = enclosure.encloseRational(rational(4n * factor), bits);
        sum = enclosure.add(sum, enclosure.multiply(times, angle, bits));
      }
      expect(overlap(sum, enclosure.pi(bits))).toBe(true);
      const { lo, hi } = enclosure.pi(bits);
      expect(hi - lo).toBeLessThan(8n);
    }
  });

  it('π contains the floating-point constant to its precision', () => {
    const { lo, hi } = enclosure.pi(60);
    expect(Number(lo) / 2 ** 60).toBeCloseTo(Math.PI, 14);
    expect(Number(hi) / 2 ** 60).toBeCloseTo(Math.PI, 14);
  });

  it('arctan x and arctan 1/x make a quarter turn', () => {
    fc.assert(
      fc.property(
        rationals.filter((x) => x.compare(0) > 0),
        fc.integer({ min: 32, max: 300 }),
        (x, bits) => {
          const sum = enclosure.add(
            enclosure.arcTangent(enclosure.encloseRational(x, bits), bits),
            enclosure.arcTangent(enclosure.encloseRational(x.inverse(), bits), bits),
          );
          const { lo, hi } = enclosure.pi(bits);
          expect(overlap({ lo: 2n * sum.lo, hi: 2n * sum.hi }, { lo, hi })).toBe(true);
        },
      ),
    );
  });

  it('arctan is odd and agrees with floating point', () => {
    fc.assert(
      fc.property(rationals, (x) => {
        const angle = enclosure.arcTangent(enclosure.encloseRational(x, 64), 64);
        expect(Number(angle.lo) / 2 ** 64).toBeCloseTo(Math.atan(x.valueOf()), 12);
        const mirror = enclosure.arcTangent(enclosure.encloseRational(x.neg(), 64), 64);
        expect(overlap(enclosure.negate(mirror), angle)).toBe(true);
      }),
    );
  });
});

function overlap(a: enclosure.Enclosure, b: enclosure.Enclosure): boolean {
  return a.lo <= b.hi && b.lo <= a.hi;
}

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rational } from '../../core/quantity/rational.ts';
import { canBeFilled } from '../../core/trade/packing.ts';

const filled = (width: number, length: number, ...parts: (readonly [number, number, number])[]) =>
  canBeFilled(
    { width: rational(width), length: rational(length) },
    parts.map(([w, l, count]) => ({ width: rational(w), length: rational(l), count })),
  );

/** Every layout of small integer rectangles, cell by cell in another order: the first empty cell from the top left. */
function byCells(width: number, length: number, parts: (readonly [number, number, number])[]): boolean {
  const cells = Array.from({ length: length * width }, () => false);
  const left = parts.map(([, , count]) => count);
  const step = (): boolean => {
    const at = cells.indexOf(false);
    if (at < 0) return true;
    const [x, y] = [at % width, Math.floor(at / width)];
    for (const [index, [a, b]] of parts.entries()) {
      if (!left[index]) continue;
      for (const [w, l] of [
        [a, b],
        [b, a],
      ] as const) {
        if (x + w > width || y + l > length) continue;
        const covered = Array.from(
          { length: w * l },
          (_, i) => (y + Math.floor(i / w)) * width + x + (i % w),
        );
        if (covered.some((cell) => cells[cell])) continue;
        left[index]--;
        for (const cell of covered) cells[cell] = true;
        if (step()) return true;
        left[index]++;
        for (const cell of covered) cells[cell] = false;
      }
    }
    return false;
  };
  return step();
}

describe('laying parts into a block', () => {
  it('finds a layout in rows, around a centre, and in the turn of a pinwheel', () => {
    expect(filled(12, 12, [3, 3, 16])).toBe(true);
    expect(filled(12, 12, [6, 6, 1], [3, 3, 4], [6, 3, 4])).toBe(true);
    expect(filled(3, 3, [1, 1, 1], [1, 2, 4])).toBe(true);
  });

  it('finds the squared rectangle 33 × 32 of nine unequal squares', () => {
    // Source: Z. Moroń, "O rozkładach prostokątów na kwadraty", Przegląd Matematyczno-Fizyczny 3 (1925); from memory.
    const sides = [18, 15, 14, 10, 9, 8, 7, 4, 1];
    expect(filled(33, 32, ...sides.map((side) => [side, side, 1] as const))).toBe(true);
  });

  it('says that there is none where the areas agree and the sides do not', () => {
    expect(filled(6, 6, [4, 5, 1], [4, 4, 1])).toBe(false);
    expect(filled(6, 6, [4, 4, 2], [2, 2, 1])).toBe(false);
  });

  it('says nothing where the areas differ, or the parts are too many to try', () => {
    expect(filled(6, 6, [3, 3, 3])).toBeUndefined();
    expect(filled(100, 100, [1, 1, 10_000])).toBeUndefined();
  });

  it('agrees with a search from cell to cell', () => {
    const side = fc.integer({ min: 1, max: 4 });
    const part = fc.tuple(side, side, fc.integer({ min: 1, max: 3 }));
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 6 }),
        fc.array(part, { minLength: 1, maxLength: 3 }),
        (width, some) => {
          const area = some.reduce((sum, [a, b, count]) => sum + a * b * count, 0);
          const length = Math.ceil(area / width);
          const rest = length * width - area;
          const parts = rest > 0 ? [...some, [1, 1, rest] as const] : some;
          expect(filled(width, length, ...parts)).toBe(byCells(width, length, parts));
        },
      ),
      { numRuns: 400 },
    );
  });

  it('finds every block that was cut apart by straight cuts', () => {
    const cuts = fc.array(fc.tuple(fc.nat(), fc.nat(), fc.boolean()), { maxLength: 7 });
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 24 }),
        fc.integer({ min: 4, max: 24 }),
        cuts,
        (width, length, all) => {
          const pieces: [number, number][] = [[width, length]];
          for (const [which, where, across] of all) {
            const index = which % pieces.length;
            const [w, l] = pieces[index] ?? [0, 0];
            const side = across ? w : l;
            if (side < 2) continue;
            const at = 1 + (where % (side - 1));
            pieces.splice(
              index,
              1,
              ...((across
                ? [
                    [at, l],
                    [w - at, l],
                  ]
                : [
                    [w, at],
                    [w, l - at],
                  ]) as [number, number][]),
            );
          }
          expect(filled(width, length, ...pieces.map(([w, l]) => [w, l, 1] as const))).not.toBe(false);
        },
      ),
    );
  });
});

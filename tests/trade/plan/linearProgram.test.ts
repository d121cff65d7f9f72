import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ColumnPool } from '../../../core/trade/plan/columnPool.ts';
import { StripFiller } from '../../../core/trade/plan/filler.ts';
import { LinearProgram } from '../../../core/trade/plan/linearProgram.ts';
import { type Kind, stripProblem } from '../../../core/trade/plan/problem.ts';

describe('the linear programme', () => {
  it('finds the least cost, and prices whose worth equals it', () => {
    // Least 2x + 3y with x + y ≥ 4, x + 3y ≥ 6, x ≤ 3: the corner x = 3, y = 1.
    const pool = new ColumnPool(1);
    const program = new LinearProgram(pool, 1e6);
    program.addRow({ of: 'entries', sense: 'at least', limit: 4 });
    program.addRow({ of: 'entries', sense: 'at least', limit: 6 });
    const x = pool.add(2, 0, [0, 1], [1, 1]);
    const y = pool.add(3, 0, [0, 1], [1, 3]);
    program.addRow({ of: 'some', has: (column) => column === x, sense: 'at most', limit: 3 });
    program.solve();
    const values = new Map(program.values());
    expect(values.get(x)).toBeCloseTo(3, 9);
    expect(values.get(y)).toBeCloseTo(1, 9);
    const [a = 0, b = 0, c = 0] = program.duals;
    expect(4 * a + 6 * b + 3 * c).toBeCloseTo(9, 9);
  });

  it('follows a change of its limits, in a copy without touching the original', () => {
    const pool = new ColumnPool(1);
    const program = new LinearProgram(pool, 1e6);
    program.addRow({ of: 'entries', sense: 'at least', limit: 4 });
    const x = pool.add(2, 0, [0], [1]);
    program.solve();
    const copy = program.copy();
    copy.setLimits([7]);
    copy.addRow({ of: 'some', has: (column) => column === x, sense: 'at least', limit: 9 });
    copy.solve();
    expect(new Map(copy.values()).get(x)).toBeCloseTo(9, 9);
    expect(new Map(program.values()).get(x)).toBeCloseTo(4, 9);
  });

  it('has prices that no column beats, and values that meet every row, on random programmes', () => {
    const coefficient = fc.integer({ min: 0, max: 5 });
    const program = fc.record({
      limits: fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 6 }),
      columns: fc.array(
        fc.record({
          cost: fc.integer({ min: 1, max: 20 }),
          entries: fc.array(coefficient, { minLength: 6, maxLength: 6 }),
        }),
        { maxLength: 12 },
      ),
    });
    fc.assert(
      fc.property(program, ({ limits, columns }) => {
        const pool = new ColumnPool(1);
        const solved = new LinearProgram(pool, 1000);
        for (const limit of limits) solved.addRow({ of: 'entries', sense: 'at least', limit });
        const numbers = columns.map(({ cost, entries }) =>
          pool.add(
            cost,
            0,
            limits.map((_, row) => row),
            limits.map((_, row) => entries[row] ?? 0),
          ),
        );
        solved.solve();
        const values = new Map(solved.values());
        const duals = [...solved.duals];
        let cost = 0;
        columns.forEach((column, i) => {
          const worth = limits.reduce(
            (sum, _, row) => sum + (duals[row] ?? 0) * (column.entries[row] ?? 0),
            0,
          );
          expect(worth).toBeLessThanOrEqual(column.cost + 1e-6);
          cost += column.cost * (values.get(numbers[i] ?? -1) ?? 0);
        });
        limits.forEach((limit, row) => {
          const met = columns.reduce(
            (sum, { entries }, i) => sum + (entries[row] ?? 0) * (values.get(numbers[i] ?? -1) ?? 0),
            0,
          );
          // What no column reaches is paid for at the penalty.
          cost += 1000 * Math.max(0, limit - met);
        });
        const worth = limits.reduce((sum, limit, row) => sum + limit * (duals[row] ?? 0), 0);
        expect(worth).toBeCloseTo(cost, 4);
      }),
    );
  });
});

describe('the filler of a strip', () => {
  const kinds = fc.array(
    fc.record({
      width: fc.integer({ min: 1, max: 12 }),
      length: fc.integer({ min: 1, max: 12 }),
      demand: fc.integer({ min: 1, max: 4 }),
    }),
    { minLength: 1, maxLength: 4 },
  );

  it('is as valuable for every height as the best of all fillings', () => {
    fc.assert(
      fc.property(
        kinds,
        fc.integer({ min: 12, max: 40 }),
        fc.array(fc.nat(9), { minLength: 8, maxLength: 8 }),
        (list, capacity, prices) => {
          const all: Kind[] = list.map((kind) => ({
            ...kind,
            runs: ['crosswise', 'lengthwise'],
            pieces: [],
          }));
          const problem = stripProblem(all, 'across', capacity);
          const filler = StripFiller.of(problem);
          if (!filler) throw new Error('a small list has a filler');
          const worth = Float64Array.from(problem.placements, (_, i) => prices[i] ?? 0);
          const most = problem.placements.map((placement) => placement.most);
          const value = filler.fill(worth, most);
          filler.heights.forEach((height, index) => {
            const open = problem.placements.flatMap((p, i) => (p.height <= height ? [i] : []));
            const tryAll = (at: number, left: number): number => {
              const i = open[at];
              const placement = i === undefined ? undefined : problem.placements[i];
              if (i === undefined || !placement) return 0;
              let best = 0;
              for (let n = 0; n <= placement.most && n * placement.span <= left; n++)
                best = Math.max(best, n * (worth[i] ?? 0) + tryAll(at + 1, left - n * placement.span));
              return best;
            };
            expect(value[index]).toBe(tryAll(0, capacity));
            const filling = filler.filling(index);
            expect(filling.reduce((sum, [p, n]) => sum + n * (worth[p] ?? 0), 0)).toBe(value[index]);
            const used = filling.reduce((sum, [p, n]) => sum + n * (problem.placements[p]?.span ?? 0), 0);
            expect(used).toBeLessThanOrEqual(capacity);
          });
        },
      ),
    );
  });

  it('declines lengths too fine for a table', () => {
    const fine = Array.from({ length: 30 }, (_, i) => ({
      width: 1_000_003 + 7919 * i,
      length: 2_000_029 + 104_729 * i,
      demand: 40,
      runs: ['crosswise', 'lengthwise'] as const,
      pieces: [],
    }));
    expect(StripFiller.of(stripProblem(fine, 'across', 40_000_000))).toBeUndefined();
  });
});

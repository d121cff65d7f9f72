/** What holds for the figures of every pattern: how they hang together, and what they do not depend on. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Figure, FigureValue } from '../../core/figures/figure.ts';
import type { Ledger } from '../../core/figures/ledger.ts';
import { rational } from '../../core/quantity/rational.ts';
import { Real } from '../../core/quantity/real.ts';
import { patternOf } from '../support/pattern.ts';
import { blockOf, type RandomPattern, randomPattern, withWholeHouse } from '../support/randomPattern.ts';
import { blocksTaken, oneRowLonger, type Pieced } from '../support/randomQuilt.ts';

const RUNS = { seed: 20_261_129, numRuns: 40 } as const;

const ledgerOf = (...block: Parameters<typeof blockOf>) => patternOf(blockOf(...block)).ledger;

const holds = (property: (pattern: RandomPattern) => void) =>
  fc.assert(fc.property(randomPattern, property), RUNS);

type Quilt = RandomPattern & { readonly top: Pieced };

const holdsForQuilts = (property: (quilt: Quilt) => void) =>
  fc.assert(
    fc.property(
      randomPattern.filter((pattern): pattern is Quilt => pattern.top.kind === 'pieced'),
      property,
    ),
    RUNS,
  );

/** Every figure that has a value, by its id. */
function figures(ledger: Ledger): Map<string, Figure> {
  return new Map(
    ledger.ids.flatMap((id) => {
      const figure = ledger.figure(id);
      return figure ? [[id, figure] as const] : [];
    }),
  );
}

/** A value of the model in inches: it counts sixteenths, or millimetres. */
const toInches = ({ metric }: RandomPattern, value: number) =>
  metric ? rational(value * 10, 254) : rational(value, 16);

const seamsOf = (pattern: RandomPattern) => toInches(pattern, Number(pattern.house.seam) * 2);

const equal = (a: Real | undefined, b: Real | undefined) => a && b && a.compare(b) === 0;

describe('the lengths of a pattern', () => {
  it.each([2, 3])('are all %i times as long when everything is, and the counts are the same', (times) => {
    holds((random) => {
      const pattern = withWholeHouse(random);
      const isFixed = fixedIn(pattern);
      const [once, more] = [ledgerOf(pattern), ledgerOf(pattern, times)].map((ledger) =>
        [...figures(ledger)].filter(([id]) => !isFixed(id)),
      );
      // The strips of a fabric are called by their width, which grows; so they are told by their place.
      const named = (found: typeof once) => found?.map(([id]) => id.replace(/(\.strips\.).*/, '$1'));
      expect(named(more)).toEqual(named(once));
      once?.forEach(([id, { kind, values }], index) => {
        for (const [size, value] of values) {
          const grown = more?.[index]?.[1].values.get(size);
          const factor = kind === 'count' ? 1 : times;
          expect(equal(grown?.need, value.need.mul(Real.of(factor))), `${id} of ${size}`).toBe(true);
          if (value.least) expect(grown?.least?.equals(value.least.mul(BigInt(factor))), id).toBe(true);
        }
      });
    });
  });

  it('need the seams to be cut: finished and two seams are cut, everywhere', () => {
    holds((pattern) => {
      const seams = Real.of(seamsOf(pattern));
      const all = figures(ledgerOf(pattern));
      for (const [id, { values }] of all) {
        const finished = all.get(finishedOf(id) ?? '');
        for (const [size, { need }] of finished?.values ?? [])
          expect(equal(values.get(size)?.need, need.add(seams)), `${id} of ${size}`).toBe(true);
      }
      if (pattern.top.kind !== 'pieced') return;
      const { cell, blocks } = pattern.top;
      for (const { name, parts } of blocks)
        for (const { what, wide, long } of parts) {
          if (!what.startsWith('piece')) continue;
          const piece = what.replace('piece: ', '');
          const id = all.has(`piece.${piece}.width`) ? `piece.${piece}` : `piece.${name}.${piece}`;
          for (const [side, cells] of [['width', wide] as const, ['length', long] as const]) {
            const cut = Real.of(toInches(pattern, cell * cells)).add(seams);
            for (const { need } of all.get(`${id}.${side}`)?.values.values() ?? [])
              expect(equal(need, cut), `${id}.${side}`).toBe(true);
          }
        }
    });
  });

  it('add up to the quilt: blocks, sashes and borders', () => {
    holdsForQuilts((pattern) => {
      const { cell, cells, grids, onPoint, sashing, borders } = pattern.top;
      const all = figures(ledgerOf(pattern));
      const around = borders.reduce((sum, { finished }) => sum + 2 * finished, 0);
      pattern.sizes.forEach((size, index) => {
        const grid = grids[index] ?? [0, 0];
        for (const [side, count] of [['width', grid[0]] as const, ['length', grid[1]] as const]) {
          const block = cell * cells;
          const sashes = sashing && !onPoint ? (count + (sashing.around ? 1 : -1)) * sashing.finished : 0;
          const along = Real.of(toInches(pattern, count * block));
          const centre = onPoint ? along.mul(Real.of(2).sqrt()) : along;
          const whole = centre.add(Real.of(toInches(pattern, sashes + around)));
          const need = all.get(`finished.${side}`)?.values.get(size)?.need;
          // Irrational values that are one and the same may stand in two forms.
          expect(need && Math.abs(need.sub(whole).toNumber()) < 1e-9, `${side} of ${size}`).toBe(true);
        }
      });
    });
  });
});

describe('the counts of a pattern', () => {
  const counts = (all: Map<string, Figure>, id: string, size: string) =>
    all.get(id)?.values.get(size)?.need.toNumber();

  it('use no more than is made, and make no more than is cut', () => {
    holds((pattern) => {
      const all = figures(ledgerOf(pattern));
      for (const size of pattern.sizes) {
        const get = (id: string) => counts(all, id, size);
        const atLeast = (most: number | undefined, least: number | undefined, what: string) => {
          if (most !== undefined && least !== undefined)
            expect(most, `${what} of ${size}`).toBeGreaterThanOrEqual(least);
        };
        for (const id of all.keys()) {
          const base = id.replace(/\.[^.]+$/, '');
          const product = (a: string, b: string) => {
            const [x, y] = [get(`${base}.${a}`), get(`${base}.${b}`)];
            return x === undefined || y === undefined ? undefined : x * y;
          };
          // Pieces from strips, units from sets and triangles from squares.
          if (id.endsWith('.per-strip')) atLeast(product('strips', 'per-strip'), get(`${base}.count`), id);
          if (id.endsWith('.sets')) {
            const made = product('sets', 'per-set');
            atLeast(made, get(`${base}.count`), id);
            expect(made).toBe((get(`${base}.count`) ?? 0) + (get(`${base}.spare`) ?? 0));
          }
          if (id.endsWith('.per-square')) atLeast(product('squares', 'per-square'), get(`${base}.count`), id);
          const unit = /^(unit\..+\.\d+)\.[^.]+\.per-set$/.exec(id)?.[1];
          if (unit) {
            const [sets, perSet] = [get(`${unit}.sets`), get(id)];
            if (sets !== undefined && perSet !== undefined) atLeast(get(`${base}.count`), sets * perSet, id);
          }
        }
      }
    });
  });

  it('make as many blocks as the layout takes', () => {
    holdsForQuilts((pattern) => {
      const { blocks, grids, onPoint } = pattern.top;
      const all = figures(ledgerOf(pattern));
      pattern.sizes.forEach((size, index) => {
        const taken = blocksTaken(grids[index] ?? [0, 0], onPoint);
        expect(counts(all, 'layout.blocks', size)).toBe(taken);
        const made = blocks.map(({ name }) => counts(all, `block.${name}.count`, size) ?? 0);
        expect(made.reduce((a, b) => a + b, 0)).toBe(taken);
      });
    });
  });

  it('cut no more cloth than there is', () => {
    holdsForQuilts((pattern) => {
      const all = figures(ledgerOf(pattern));
      for (const size of pattern.sizes) {
        const get = (id: string) => counts(all, id, size);
        const width = (get('house.usable width') ?? 0) * 1;
        const cloth = (label: string, across: number) => (get(`fabric.${label}.cut-length`) ?? 0) * across;
        const own = toInches(pattern, Number(pattern.fabrics.B?.['usable width'])).valueOf();
        const parts = [...all.keys()].flatMap((id) => {
          const base = /^((?:unit|piece)\..+)\.width$/.exec(id)?.[1];
          if (!base || base === 'piece.label') return [];
          return [
            (get(id) ?? 0) * (get(`${base}.length`) ?? Math.min(width, own)) * (get(`${base}.count`) ?? 0),
          ];
        });
        const area = parts.reduce((a, b) => a + b, 0);
        // Where one of the two fabrics cannot be counted, nothing is known of both.
        if (all.has('fabric.A.cut-length') && all.has('fabric.B.cut-length'))
          expect(cloth('A', width) + cloth('B', own)).toBeGreaterThanOrEqual(area - 1e-9);
      }
    });
  });

  it('never need less for one more row of blocks', () => {
    holdsForQuilts((pattern) => {
      const before = figures(ledgerOf(pattern));
      const after = figures(ledgerOf({ ...pattern, top: oneRowLonger(pattern.top) }));
      for (const [id, { rule, kind, values }] of before) {
        if (rule !== 'at least' && kind !== 'yardage') continue;
        // What is left over goes up and down, and pieces and panels may come to lie the other way.
        if (/\.spare$|^unit\..*\.strips$|^fabric\..*\.strips\.|^backing\.panel/.test(id)) continue;
        for (const [size, { need, least }] of values) {
          const more = after.get(id)?.values.get(size);
          expect(more?.need.compare(need), `${id} of ${size}`).toBeGreaterThanOrEqual(0);
          if (least) expect(more?.least?.compare(least), `least ${id} of ${size}`).toBeGreaterThanOrEqual(0);
        }
      }
    });
  });
});

describe('the figures of a pattern', () => {
  const values = (ledger: Ledger) =>
    new Map([...figures(ledger)].map(([id, figure]) => [id, figure.values] as const));

  const expectSame = (a: Ledger, b: Ledger, isLeftOut: (id: string) => boolean = () => false) => {
    const [one, other] = [values(a), values(b)];
    const ids = (found: typeof one) => [...found.keys()].filter((id) => !isLeftOut(id)).sort();
    expect(ids(other)).toEqual(ids(one));
    for (const id of ids(one))
      for (const [size, value] of one.get(id) ?? []) {
        const found = other.get(id)?.get(size);
        expect(found && text(found), `${id} of ${size}`).toEqual(text(value));
        expect(equal(found?.need, value.need), `${id} of ${size}`).toBe(true);
      }
  };

  const text = ({ shown, step, round, least }: FigureValue) =>
    [shown, step, least].map((value) => value?.toFraction()).concat(round);

  it('do not depend on the order in which entries, fabrics, blocks and pieces are written', () => {
    holds((pattern) => {
      expectSame(ledgerOf(pattern), ledgerOf(pattern, 1, { reversed: true }));
    });
  });

  const inInches = randomPattern.filter(({ metric }) => !metric);

  it('are the same when its lengths are written in centimetres', () => {
    fc.assert(
      fc.property(inInches, (pattern) => {
        expectSame(ledgerOf(pattern), ledgerOf(pattern, 1, { centimetres: 'but the house' }));
      }),
      RUNS,
    );
  });

  it('are the same in a metric house with the same rules, but for what is cut in whole inches', () => {
    fc.assert(
      fc.property(inInches, (random) => {
        const pattern = withWholeHouse(random);
        const isFixed = fixedIn(pattern);
        expectSame(
          ledgerOf(pattern),
          ledgerOf(pattern, 1, { centimetres: 'all' }),
          (id) => isFixed(id) || /\.strips\./.test(id),
        );
      }),
      RUNS,
    );
  });
});

/** The figure of the finished length that another one is cut to. */
function finishedOf(id: string): string | undefined {
  const found =
    /^(.+\.)unfinished(.*)$/.exec(id) ??
    /^(border\.\d+\.)quilt(-width|-length)$/.exec(id) ??
    /^(border\.\d+\.|sashing\.)strip()$/.exec(id);
  if (id.startsWith('centre.unfinished-')) return id.replace('unfinished-', '');
  if (found) return `${found[1]}finished${found[2]}`;
  if (/^unfinished\./.test(id)) return id.slice(2);
  return id.startsWith('border.') && id.endsWith('.corner.cut')
    ? id.replace('corner.cut', 'finished')
    : undefined;
}

/**
 * Which figures hold a length that grows with nothing and is another one in a metric house: hems, whole inches for
 * bias squares, an eighth for trimming, fat quarters.
 */
function fixedIn({ top, fabrics, entries }: RandomPattern): (id: string) => boolean {
  const blocks = top.kind === 'pieced' ? top.blocks : [];
  const trimmed = blocks.flatMap(({ name, parts }) =>
    parts.flatMap(({ method }, index) => (method?.includes('trimmed') ? [`unit.${name}.${index + 1}.`] : [])),
  );
  const binding = entries.find(({ name }) => name === 'binding')?.parts;
  const isCurved = top.kind === 'shaped' && top.shapes.some(({ curved }) => curved);
  const square =
    binding && (binding.grain === 'bias' || isCurved || !binding.grain) && binding['cut as'] !== 'strips';
  const sheets = fabrics.C?.['cut from'] !== undefined;
  return (id) =>
    id === 'sleeve.cut-length' ||
    (square && /^binding\.(?:square|passes|yield|yardage)$/.test(id)) ||
    trimmed.some((unit) => id.startsWith(unit)) ||
    (/^fabric\.[AB]\./.test(id) && (trimmed.length > 0 || (square === true && id.startsWith('fabric.A.')))) ||
    (sheets && /^(?:fabric\.C|piece\.label)\./.test(id));
}

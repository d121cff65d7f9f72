import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawingsOf, drawnFigures } from '../../core/figures/drawings.ts';
import type { Drawing, DrawnBox } from '../../core/geometry/drawing.ts';
import { patternOf } from '../support/pattern.ts';
import { blockOf, randomPattern } from '../support/randomPattern.ts';

const draw = (block: string, id: string, size = '') => {
  const { pattern, ledger } = patternOf(block);
  return drawingsOf(pattern, ledger, id, size);
};

const NEAR = 1e-6;
const area = (boxes: readonly DrawnBox[]) =>
  boxes.reduce((sum, { width, height }) => sum + width * height, 0);
const inside = ({ width, height }: Drawing, box: DrawnBox) =>
  box.x >= -NEAR &&
  box.y >= -NEAR &&
  box.x + box.width <= width + NEAR &&
  box.y + box.height <= height + NEAR;
const overlap = (a: DrawnBox, b: DrawnBox) =>
  Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > NEAR &&
  Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > NEAR;

/** Boxes lie on the sheet, those of cloth do not overlap and fill it, lines and labels lie on it too. */
function expectSound(drawing: Drawing): void {
  const cloth = drawing.boxes.filter(({ role }) => role !== 'outline');
  for (const box of drawing.boxes) expect(inside(drawing, box), JSON.stringify(box)).toBe(true);
  for (const [index, box] of cloth.entries())
    expect(cloth.slice(index + 1).filter((other) => overlap(box, other))).toEqual([]);
  const { width, height } = drawing;
  if (cloth.length > 0) expect(area(cloth)).toBeCloseTo(width * height, 4);
  for (const point of [...drawing.lines.flatMap(({ from, to }) => [from, to]), ...drawing.labels]) {
    expect(point.x).toBeGreaterThanOrEqual(-NEAR);
    expect(point.x).toBeLessThanOrEqual(width + NEAR);
    expect(point.y).toBeGreaterThanOrEqual(-NEAR);
    expect(point.y).toBeLessThanOrEqual(height + NEAR);
  }
  expect(drawing.title).not.toBe('');
  expect(drawing.description).toMatch(/\.$/);
}

describe('drawings', () => {
  it('are sound for everything that can be drawn of random patterns', () => {
    fc.assert(
      fc.property(randomPattern, (random) => {
        const { pattern, ledger } = patternOf(blockOf(random));
        for (const id of drawnFigures(ledger).filter((each) => !/\.(?:strips\.|cut-length)/.test(each)))
          for (const { name } of pattern.sizes.slice(0, 1))
            for (const drawing of drawingsOf(pattern, ledger, id, name)) expectSound(drawing);
      }),
      { seed: 20_261_127, numRuns: 40 },
    );
  });

  it('of a bias square have a line for every strip, and the lines stand one strip apart', () => {
    const [drawing] = draw(
      'finished: measured 88"\nbinding: { strip: 2 1/4", grain: bias }',
      'binding.square',
    );
    // 100 in of 2¼ in bias: a 17 in square, five strips.
    expect(drawing?.title).toBe('A 17" square for bias strips 2¼" wide');
    const marks = drawing?.lines.filter(({ role }) => role === 'mark') ?? [];
    expect(marks).toHaveLength(5);
    const edge = drawing?.lines[0];
    for (const [index, { from, to }] of marks.entries()) {
      // Distance of a point from the upper slanted edge, which runs at 45°.
      const away = (from.x + from.y - (edge?.from.x ?? 0) - (edge?.from.y ?? 0)) / Math.SQRT2;
      expect(away).toBeCloseTo(2.25 * (index + 1), 6);
      expect(to.x - from.x).toBeCloseTo(from.y - to.y, 6);
    }
  });

  it('of a bias square show the one that the block states', () => {
    const block =
      'finished: measured 88"\nbinding: { strip: 2 1/4", grain: bias }\nstates: { binding.square: 20" }';
    expect(draw(block, 'binding.yield')[0]?.title).toBe('A 20" square for bias strips 2¼" wide');
  });

  it('of a backing show its panels, its seams and the quilt in the middle', () => {
    const [drawing] = draw('finished: 56" x 70"\nbacking: {}', 'backing.panels');
    expect(drawing?.title).toBe('Backing of 2 panels');
    expect([drawing?.width, drawing?.height]).toEqual([64, 79]);
    expect(drawing?.lines).toEqual([{ from: { x: 0, y: 39.5 }, to: { x: 64, y: 39.5 }, role: 'seam' }]);
    expect(drawing?.boxes.find(({ role }) => role === 'outline')).toMatchObject({
      x: 4,
      y: 4.5,
      width: 56,
      height: 70,
    });
  });

  it('of a fabric by the yard hold every piece that is cut from it', () => {
    const block = `fabrics: { A: Deep water }
pieces:
  sash: { cut: 2 1/2" x 12 1/2", count: 12, from: A }
  post: { cut: 2 1/2", count: 9, from: A }
`;
    const [drawing, ...others] = draw(block, 'fabric.A.yardage');
    expect(others).toEqual([]);
    const pieces = drawing?.boxes.filter(({ role }) => role === 'piece') ?? [];
    expect(pieces).toHaveLength(21);
    expect(area(pieces)).toBeCloseTo(12 * 2.5 * 12.5 + 9 * 2.5 * 2.5, 6);
    expect(drawing?.title).toBe('A cutting layout of fabric A');
    if (drawing) expectSound(drawing);
  });

  it('of the strips of a fabric are those of the fabric, whatever it is called', () => {
    const block = 'fabrics: { 1.5 oz: Sky }\npieces: { post: { cut: 4.5 cm, count: 9, from: 1.5 oz } }\n';
    const { ledger } = patternOf(block);
    const strips = ledger.ids.filter((id) => id.startsWith('fabric.1.5 oz.strips.'));
    expect(strips).not.toEqual([]);
    for (const id of [...strips, 'fabric.1.5 oz.yardage'])
      expect(draw(block, id)[0]?.title).toBe('A cutting layout of fabric 1.5 oz');
  });

  it('of fat quarters are one for each way in which they are cut', () => {
    const block = `fabrics: { A: { name: Foam, cut from: fat quarters } }
pieces: { slab: { cut: 10" x 18", count: 5, from: A } }
`;
    const { ledger } = patternOf(block);
    const [id = ''] = drawnFigures(ledger);
    const drawings = draw(block, id);
    expect(
      drawings.flatMap(({ boxes }) => boxes).filter(({ role }) => role === 'piece').length,
    ).toBeLessThanOrEqual(5);
    expect(drawings.map(({ title }) => title)).toContain('A cutting layout of 2 fat quarters of fabric A');
    for (const drawing of drawings) {
      expect([drawing.width, drawing.height]).toEqual([21, 18]);
      expectSound(drawing);
    }
  });

  it('are none of what cannot be drawn, of sizes that do not exist, and of unknown figures', () => {
    const block = 'finished: 56" x 70"\nbacking: {}';
    expect(draw(block, 'finished.edge')).toEqual([]);
    expect(draw(block, 'backing.panels', 'queen')).toEqual([]);
    expect(draw(block, 'fabric.A.yardage')).toEqual([]);
    expect(drawnFigures(patternOf(block).ledger)).not.toContain('finished.edge');
  });
});

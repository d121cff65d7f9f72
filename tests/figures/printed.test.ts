/** The figures that manuscripts print beside sizes and yardage: rows, sets, what is left over, strips of one side. */
import { describe, expect, it } from 'vitest';
import { figureOf, patternOf, shown } from '../support/pattern.ts';

const values = (block: string, ...ids: string[]) => {
  const { ledger } = patternOf(block);
  return Object.fromEntries(ids.map((id) => [id, shown(ledger, id)['']]));
};
const working = (block: string, id: string) => figureOf(patternOf(block).ledger, id).values.get('')?.working;
const rule = (block: string, id: string) => figureOf(patternOf(block).ledger, id).rule;

describe('a layout', () => {
  const straight = 'blocks: { Heron: { finished: 9" } }\nlayout: { grid: 6 x 7 }';

  it('counts its rows, and the blocks of a row', () => {
    expect(values(straight, 'layout.columns', 'layout.rows')).toEqual({
      'layout.columns': '6',
      'layout.rows': '7',
    });
  });

  // Krista Moser, Quilt math made easy (designer): 16 blocks 4 x 4 of 6 in on point take 9 alternate blocks,
  // 12 side triangles from three squares and 4 corners from two.
  it('on point counts the blocks between, as published, and the rows that are sewn', () => {
    const pointed = 'blocks: { Heron: { finished: 6" } }\nlayout: { set: on point, grid: 4 x 4 }';
    expect(
      values(
        pointed,
        'layout.main',
        'layout.between',
        'layout.diagonal-rows',
        'setting.side.count',
        'setting.side.squares',
        'setting.side.per-square',
        'setting.corner.squares',
        'setting.corner.per-square',
      ),
    ).toEqual({
      'layout.main': '16',
      'layout.between': '9',
      'layout.diagonal-rows': '7',
      'setting.side.count': '12',
      'setting.side.squares': '3',
      'setting.side.per-square': '4',
      'setting.corner.squares': '2',
      'setting.corner.per-square': '2',
    });
  });

  it('on point counts as many diagonal rows as one meets going along two edges of the grid', () => {
    for (const [across, down] of [
      [1, 1],
      [2, 5],
      [6, 3],
    ] as const) {
      // The main blocks stand at whole places, those between at halves; a row is where x + y is the same.
      const rows = new Set<number>();
      for (let x = 0; x < across; x++) for (let y = 0; y < down; y++) rows.add(x + y);
      for (let x = 0; x < across - 1; x++) for (let y = 0; y < down - 1; y++) rows.add(x + y + 1);
      const block = `blocks: { Heron: { finished: 6" } }\nlayout: { set: on point, grid: ${across} x ${down} }`;
      expect(values(block, 'layout.diagonal-rows')).toEqual({ 'layout.diagonal-rows': String(rows.size) });
    }
  });

  // FreeSpirit Fabrics (trade): a 4 x 5 set on point cuts 16 side triangles, 2 of them extra.
  it('on point says how many triangles are left over, as published', () => {
    const pointed = 'blocks: { Heron: { finished: 12 3/8" } }\nlayout: { set: on point, grid: 4 x 5 }';
    expect(values(pointed, 'setting.side.spare', 'setting.corner.spare')).toEqual({
      'setting.side.spare': '2',
      'setting.corner.spare': '0',
    });
    expect(working(pointed, 'setting.side.spare')).toEqual([
      '4 squares of 4 triangles less the 14 that are sewn in leave 2.',
    ]);
  });

  // McCall's Quilting, Jan/Feb 2020, p. 76 (magazine): 42 blocks of 9 in, 6 x 7, take 35 upright sashes and 6 between rows.
  it('counts all its sashes, short and long, as published', () => {
    const sashed = `${straight.replace('6 x 7', '6 x 7, sashing: { finished: 2" }')}`;
    expect(
      values(sashed, 'sashing.finished', 'sashing.upright.count', 'sashing.lying.count', 'sashing.count'),
    ).toEqual({
      'sashing.finished': '2"',
      'sashing.upright.count': '35',
      'sashing.lying.count': '6',
      'sashing.count': '41',
    });
  });
});

describe('what a block takes', () => {
  const block = `blocks:
  Heron:
    finished: 12"
    make: 7
    of:
      - { unit: half-square triangles, finished: 3", count: 3, from: [A, B], method: eight at a time }
      - { unit: flying geese, finished: 6" x 3", count: 1, from: [A, B], method: four at a time }
      - { unit: flying geese, finished: 6" x 3", count: 2, from: [A, B], method: cut triangles }
      - { unit: strip sets, finished: 1 1/2" x 3", strips: [1 1/2", 1 1/2"], count: 2, from: [A, B] }
      - { piece: corner, finished: 3", count: 6, from: B }
fabrics: { A: Deep water, B: Foam }
`;

  it('counts a piece for one block and for all', () => {
    expect(values(block, 'piece.corner.each', 'piece.corner.count')).toEqual({
      'piece.corner.each': '6',
      'piece.corner.count': '42',
    });
  });

  it('says what one set of squares gives, how many sets are sewn, and what is left over', () => {
    expect(values(block, 'unit.Heron.1.per-set', 'unit.Heron.1.sets', 'unit.Heron.1.spare')).toEqual({
      'unit.Heron.1.per-set': '8',
      'unit.Heron.1.sets': '3',
      'unit.Heron.1.spare': '3',
    });
    expect(working(block, 'unit.Heron.1.spare')).toEqual(['3 × 8 = 24 units, of which 21 are needed.']);
    expect(rule(block, 'unit.Heron.1.sets')).toBe('at least');
  });

  it('says how many squares go into a set', () => {
    expect(values(block, 'unit.Heron.2.large-square.per-set', 'unit.Heron.2.small-square.per-set')).toEqual({
      'unit.Heron.2.large-square.per-set': '1',
      'unit.Heron.2.small-square.per-set': '4',
    });
  });

  it('says how many triangles a square gives that is cut diagonally, and sews no sets of those', () => {
    expect(
      values(block, 'unit.Heron.3.large-square.triangles', 'unit.Heron.3.small-square.triangles'),
    ).toEqual({
      'unit.Heron.3.large-square.triangles': '4',
      'unit.Heron.3.small-square.triangles': '2',
    });
    expect(patternOf(block).ledger.figure('unit.Heron.3.sets')).toBeUndefined();
  });

  it('calls the units of a strip set segments', () => {
    const { ledger } = patternOf(block);
    expect(figureOf(ledger, 'unit.Heron.4.per-set').title).toBe(
      'The number of strip-set segments of Heron from one strip set',
    );
    expect(values(block, 'unit.Heron.4.per-set', 'unit.Heron.4.sets')).toEqual({
      'unit.Heron.4.per-set': '20',
      'unit.Heron.4.sets': '1',
    });
  });
});

describe('a border', () => {
  const around = (centre: string, border: string) => `layout: { centre: ${centre} }\nborders: [${border}]`;

  it('says how many strips are joined for one side, and how long all of them must be', () => {
    const block = around('52" x 71"', '{ finished: 4" }');
    expect(
      values(
        block,
        'border.1.finished',
        'border.1.side',
        'border.1.top',
        'border.1.joined',
        'border.1.strips',
        'border.1.side.strips',
        'border.1.top.strips',
      ),
    ).toEqual({
      'border.1.finished': '4"',
      'border.1.side': '71½"',
      'border.1.top': '60½"',
      'border.1.joined': '264"',
      'border.1.strips': '8',
      'border.1.side.strips': '2',
      'border.1.top.strips': '2',
    });
    expect(working(block, 'border.1.side.strips')).toEqual([
      'It is cut 71½" long, and 2 strips joined give 75½".',
    ]);
  });

  it('joins nothing where its strips are long enough', () => {
    const block = around('30" x 36"', '{ finished: 1" }');
    expect(patternOf(block).ledger.figure('border.1.joined')).toBeUndefined();
    expect(values(block, 'border.1.side.strips', 'border.1.strips')).toEqual({
      'border.1.side.strips': '1',
      'border.1.strips': '4',
    });
  });

  // McCall's Quilting, Jan/Feb 2020, p. 62 (magazine): a border with squares in its corners takes 4 of them.
  it('counts and cuts its corner squares', () => {
    const block = around('20"', '{ finished: 2", corners: corner squares }');
    expect(values(block, 'border.1.corner.count', 'border.1.corner.cut')).toEqual({
      'border.1.corner.count': '4',
      'border.1.corner.cut': '2½"',
    });
    expect(patternOf(around('20"', '{ finished: 2" }')).ledger.ids).not.toContain('border.1.corner.count');
  });

  // QuiltingHub, Mitered borders (trade) adds 6 in to side and borders; quiltingboard.com t168402 (individual) adds 1 in.
  it('may be cut longer when it is mitred, and needs no more than to reach from raw edge to raw edge', () => {
    const block = around('50" x 60"', '{ finished: 7", corners: mitred }');
    expect(values(block, 'border.1.side', 'border.1.top')).toEqual({
      'border.1.side': '74½"',
      'border.1.top': '64½"',
    });
    expect(rule(block, 'border.1.side')).toBe('at least');
    expect(rule(around('50" x 60"', '{ finished: 7" }'), 'border.1.side')).toBe('exact');
    expect(working(block, 'border.1.top')).toEqual([
      'The top and bottom finish 64" long.',
      '64" plus two ¼" seams is 64½".',
      'With 0.71" more the mitre keeps a whole seam allowance to its tip until it is trimmed.',
    ]);
  });
});

describe('bias binding', () => {
  const edge = (strip: string, more = '') =>
    `finished: measured 86"\nbinding: { strip: ${strip}, grain: bias }\n${more}`;

  // The Button Ship, Continuous bias tape (2014, individual): a 10 in square gives 6 strips of 1 in, 80.6 in in all.
  it('goes around the square that the block states, as published', () => {
    const block = edge('1"', 'house: { joining allowance: 0" }\nstates: { binding.square: 11" }');
    expect(values(block, 'binding.passes', 'binding.yield')).toEqual({
      'binding.passes': '7',
      'binding.yield': '103⅞"',
    });
    const small =
      'finished: measured 80"\nbinding: { strip: 1", grain: bias }\nhouse: { joining allowance: 0" }';
    expect(values(small, 'binding.square', 'binding.passes')).toEqual({
      'binding.square': '10"',
      'binding.passes': '6',
    });
    expect(figureOf(patternOf(small).ledger, 'binding.yield').values.get('')?.need.toNumber()).toBeCloseTo(
      80.61,
      2,
    );
  });

  it('goes around at least as often as the least square allows, where no square is stated', () => {
    const least = edge('2 1/4"');
    expect(rule(least, 'binding.passes')).toBe('at least');
    expect(rule(least, 'binding.yield')).toBe('at least');
    const stated = edge('2 1/4"', 'states: { binding.square: 20" }');
    expect(rule(stated, 'binding.passes')).toBe('exact');
    // Derived from the published yield of The Button Ship for a 20 in square: 6 rounds, 165.5 in.
    expect(values(stated, 'binding.square', 'binding.passes', 'binding.yield')).toEqual({
      'binding.square': '17"',
      'binding.passes': '6',
      'binding.yield': '165⅜"',
    });
  });

  it('takes the least square where the stated one is too small', () => {
    const block = edge('2 1/4"', 'states: { binding.square: 15" }');
    expect(values(block, 'binding.passes')).toEqual({ 'binding.passes': '5' });
  });

  it('cut as strips has no fewer of them than the longest ones', () => {
    const block = 'finished: 54" x 77"\nbinding: { strip: 2 1/4", grain: bias, cut as: strips }';
    expect(values(block, 'binding.strips')).toEqual({ 'binding.strips': '5' });
    expect(working(block, 'binding.strips')).toEqual([
      '2 × (54" + 77") = 262" around.',
      '262" around plus 12" to join is 274".',
      'No bias strip is longer than 40" × √2 = 56.57"; each join takes 0.71".',
      '5 bias strips joined give 280.01" at the most.',
    ]);
  });
});

describe('a shaped edge', () => {
  it('has the depth and number of its scallops, and the halves and quarters that they are laid out from', () => {
    const block = 'finished: scalloped 60" x 80", 28 scallops 2" deep';
    expect(
      values(
        block,
        'finished.scallops',
        'finished.scallop-depth',
        'finished.half-width',
        'finished.quarter-length',
      ),
    ).toEqual({
      'finished.scallops': '28',
      'finished.scallop-depth': '2"',
      'finished.half-width': '30"',
      'finished.quarter-length': '20"',
    });
  });

  it('has a radius where it is a circle, or where its corners are rounded, and sides where they are equal', () => {
    expect(values('finished: circle 25"', 'finished.radius')).toEqual({ 'finished.radius': '12½"' });
    expect(values('finished: rounded 50" x 60", corners 4"', 'finished.corner')).toEqual({
      'finished.corner': '4"',
    });
    expect(values('finished: hexagon 10"', 'finished.side')).toEqual({ 'finished.side': '10"' });
  });
});

describe('the layers and the house', () => {
  it('say how far backing and batting stand out', () => {
    const block = 'finished: 40" x 50"\nbacking: {}\nbatting: { overhang: 3" }\nhouse: { overhang: 5" }';
    expect(values(block, 'backing.overhang', 'batting.overhang')).toEqual({
      'backing.overhang': '5"',
      'batting.overhang': '3"',
    });
  });

  it('say to what cut sizes and yardage are rounded', () => {
    expect(values('finished: 40" x 50"', 'house.cut to', 'house.sell by')).toEqual({
      'house.cut to': '⅛"',
      'house.sell by': '⅛ yd',
    });
  });
});

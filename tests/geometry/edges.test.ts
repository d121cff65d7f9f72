import { describe, expect, it } from 'vitest';
import { boundingBox, type Edge, isCurved, perimeter, whyImpossible } from '../../core/geometry/edges.ts';
import { scallopChord } from '../../core/geometry/scallop.ts';
import { inches, show } from '../quantity/inches.ts';

const rectangle: Edge = { shape: 'rectangle', width: inches('36'), length: inches('48') };
const circle: Edge = { shape: 'circle', diameter: inches('24') };
const oval: Edge = { shape: 'oval', width: inches('14'), length: inches('20') };
const rounded: Edge = {
  shape: 'rounded rectangle',
  width: inches('50'),
  length: inches('60'),
  radius: inches('4'),
};
const hexagon: Edge = { shape: 'regular polygon', sides: 6, side: inches('10') };
const scalloped = {
  shape: 'scalloped rectangle',
  width: inches('60'),
  length: inches('80'),
  scallops: 28,
  depth: inches('2'),
} as const satisfies Edge;
const measured: Edge = { shape: 'measured', around: inches('217') };

describe('the length around an edge', () => {
  it.each([
    ['rectangle', rectangle, '168'],
    ['hexagon', hexagon, '60'],
    ['edge that was taped', measured, '217'],
  ] as const)('of a %s is exact', (_, edge, expected) => {
    const { exact } = perimeter(edge);
    expect(exact && show(exact)).toBe(expected);
  });

  it('of a circle is π times its diameter', () => {
    expect(perimeter(circle).toNumber()).toBeCloseTo(24 * Math.PI, 12);
  });

  it('of a rounded rectangle is its straight parts and one circle of the corners', () => {
    expect(perimeter(rounded).toNumber()).toBeCloseTo(2 * (42 + 52) + 8 * Math.PI, 12);
  });

  it('of a rounded rectangle whose corners meet is a circle, and without corners a rectangle', () => {
    const round: Edge = { ...rounded, width: inches('8'), length: inches('8') };
    expect(perimeter(round).toNumber()).toBeCloseTo(8 * Math.PI, 12);
    const square: Edge = { ...rounded, radius: inches('0') };
    expect(perimeter(square).toNumber()).toBe(220);
  });

  it('of a scalloped rectangle is its scallops over chords along the inner rectangle', () => {
    // Inner points on 56 × 76, 264 around, 28 chords of 9 3/7; radius (c²/4 + h²)/2h; arc 2r·asin(c/2r).
    expect(show(scallopChord(scalloped))).toBe('9 3/7');
    const chord = 264 / 28;
    const radius = (chord ** 2 / 4 + 4) / 4;
    const arc = 2 * radius * Math.asin(chord / 2 / radius);
    expect(perimeter(scalloped).toNumber()).toBeCloseTo(28 * arc, 9);
  });
});

describe('the box around an edge', () => {
  it.each([
    ['rectangle', rectangle, 36, 48],
    ['circle', circle, 24, 24],
    ['oval', oval, 14, 20],
    ['rounded rectangle', rounded, 50, 60],
    ['hexagon', hexagon, 20, 10 * Math.sqrt(3)],
    ['scalloped rectangle', scalloped, 60, 80],
  ] as const)('of a %s is as wide and long as the shape', (_, edge, width, length) => {
    const box = boundingBox(edge);
    expect(box?.width.toNumber()).toBeCloseTo(width, 12);
    expect(box?.length.toNumber()).toBeCloseTo(length, 12);
  });

  it('of a taped edge is not known', () => {
    expect(boundingBox(measured)).toBeUndefined();
  });
});

describe('whether an edge bends', () => {
  it.each([
    ['a rectangle', rectangle, false],
    ['a hexagon', hexagon, false],
    ['a rounded rectangle without radius', { ...rounded, radius: inches('0') }, false],
    ['a rounded rectangle', rounded, true],
    ['a circle', circle, true],
    ['an oval', oval, true],
    ['a scalloped rectangle', scalloped, true],
    ['a taped edge', measured, undefined],
  ] as const)('is known for %s', (_, edge, expected) => {
    expect(isCurved(edge)).toBe(expected);
  });
});

describe('an impossible edge', () => {
  it('is none of the ordinary ones', () => {
    for (const edge of [rectangle, circle, oval, rounded, hexagon, scalloped, measured])
      expect(whyImpossible(edge)).toBeUndefined();
  });

  it.each<[string, Edge]>([
    ['the width must be longer than nothing', { ...rectangle, width: inches('0') }],
    ['the length must be longer than nothing', { ...oval, length: inches('-20') }],
    ['the diameter is more than a hundred feet', { ...circle, diameter: inches('2400') }],
    ['the length around is more than a hundred yards', { ...measured, around: inches('4000') }],
    ['the corner radius is more than half of the shorter side', { ...rounded, radius: inches('25 1/8') }],
    ['the corner radius cannot be less than nothing', { ...rounded, radius: inches('-1') }],
    ['there must be at least 3 sides', { ...hexagon, sides: 2 }],
    ['the number of sides must be whole', { ...hexagon, sides: 5.5 }],
    ['there are more than 1000 sides', { ...hexagon, sides: 5000 }],
    ['there must be at least 4 scallops', { ...scalloped, scallops: 3 }],
    ['the depth must be longer than nothing', { ...scalloped, depth: inches('0') }],
    ['the scallops are so deep that nothing is left between them', { ...scalloped, depth: inches('30') }],
    [
      'the scallops are deeper than half of their width, so neighbours would run into each other',
      { ...scalloped, scallops: 80 },
    ],
  ])('is told that %s', (reason, edge) => {
    expect(whyImpossible(edge)).toBe(reason);
  });

  it('begins just beyond the half circle: a corner of half the side, a scallop of half its width', () => {
    expect(whyImpossible({ ...rounded, radius: inches('25') })).toBeUndefined();
    // 4 scallops 7 1/2 in deep on 30 × 30: inner rectangle 15 × 15, chords 15.
    const four = { ...scalloped, width: inches('30'), length: inches('30'), scallops: 4 } as const;
    expect(whyImpossible({ ...four, depth: inches('7 1/2') })).toBeUndefined();
    expect(whyImpossible({ ...four, depth: inches('7 9/16') })).toContain('deeper than half');
  });
});

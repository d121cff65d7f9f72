/**
 * The patterns from which the page of figures takes its examples. Together they use every entry of the block and
 * every room of figures; a test holds that.
 */

import { filesBeside } from './example.ts';

const fence = (...lines: string[]) => ['```measure', ...lines, '```'].join('\n');

/** Finds what one of the patterns uses. */
export const useOfExamples = filesBeside({
  'house.md': fence('house: { binding strip: 2 1/2" }', 'fabrics:', '  A: Deep water', '  B: Foam'),
});

export const EXAMPLE_PATTERNS: readonly string[] = [
  fence(
    'pattern: Harbour Lights',
    'sizes: [wall, throw]',
    'house: { usable width: 40", sell by: 1/8 yd }',
    'fabrics:',
    '  A: Deep water',
    '  B: Lamplight',
    '  C: Shore',
    '  D: Night sky',
    'blocks:',
    '  Lantern:',
    '    finished: 12"',
    '    of:',
    '      - { unit: half-square triangles, finished: 4", count: 4, from: [A, B] }',
    '      - { unit: squares, finished: 4", count: 4, from: C }',
    '      - { piece: window, finished: 4" x 4", count: 1, from: B }',
    'pieces:',
    '  label: { cut: 4" x 6", count: 1, from: B }',
    'layout:',
    '  set: straight set',
    '  grid: { wall: 3 x 4, throw: 4 x 5 }',
    '  sashing: { finished: 2", from: C, cornerstones: B }',
    'borders:',
    '  - { finished: 4", from: A }',
    'binding: { from: A, strip: 2 1/4", grain: straight }',
    'backing: { from: D }',
    'batting: { overhang: 3" }',
    'sleeve: { from: D, finished depth: 4", short of edge: 1" }',
    'figures:',
    '  ribbon: finished.width + 18"',
    'states:',
    '  layout.blocks: { wall: 12, throw: 20 }',
  ),
  fence(
    'pattern: Sea Glass',
    'fabrics:',
    '  A: Deep water',
    '  B: { name: Foam, cut from: fat quarters }',
    'blocks:',
    '  Float: { finished: 12" }',
    'pieces:',
    '  scrap: { cut: 4 1/2" x 4 1/2", count: 14, from: B }',
    'layout: { set: on point, grid: 3 x 4, triangles: { from: A } }',
  ),
  fence(
    'pattern: Pebble Cushion',
    'fabrics:',
    '  A: Pebble print',
    '  B: Wet slate',
    'finished: circle 18"',
    'binding: { from: B, strip: 2 1/4", grain: bias, cut as: one square }',
    'piping: { from: A, cord: 1/4" }',
  ),
  fence(
    'pattern: Breakwater',
    'use: house.md',
    'blocks:',
    '  Wave:',
    '    finished: 6"',
    '    of:',
    '      - { unit: flying geese, finished: 6" x 3", count: 1, from: [A, B], method: cut triangles }',
    '      - { unit: strip sets, finished: 3" x 3", strips: [1 1/2", 1 1/2"], count: 2, from: [A, B] }',
    'layout: { grid: 5 x 7 }',
    'borders:',
    '  - { finished: 3", from: A, corners: corner squares, corners from: B }',
    'binding: { from: A, grain: straight }',
  ),
  fence(
    'pattern: Spindrift',
    'sizes: [bed, table, mat]',
    'fabrics:',
    '  A: Foam',
    'finished:',
    '  bed: scalloped 60" x 80", 28 scallops 2" deep',
    '  table: rounded 36" x 48", corners 4"',
    '  mat: hexagon 9"',
    'binding: { from: A, strip: 2 1/4", grain: bias, cut as: strips }',
  ),
];

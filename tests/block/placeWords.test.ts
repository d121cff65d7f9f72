import { describe, expect, it } from 'vitest';
import { borderName, placeWords } from '../../core/block/placeWords.ts';
import { patternOf } from '../support/pattern.ts';

const { pattern } = patternOf(`
sizes: [wall, throw]
house: { seam: 1/4" }
finished: 54" x 77"
fabrics: { A: { name: Foam, usable width: 42" } }
blocks:
  Windmill:
    finished: 6"
    of:
      - { unit: half-square triangles, finished: 3", count: 4 }
      - { piece: sail, finished: 3", count: { wall: 2, throw: 3 } }
      - { unit: strip sets, finished: 3", count: 1, strips: [1", 1", 1"] }
pieces: { tail: { cut: 2" x 4", count: 2 } }
borders: [{ finished: 2" }, { finished: [3", 4"] }]
binding: { strip: 2 1/4" }
figures: { ribbon: 4" }
`);

describe('A place in the block', () => {
  it.each([
    [['finished'], '“finished”'],
    [['house', 'seam'], '“seam” of the house rules'],
    [['fabrics', 'A', 'usable width'], '“usable width” of fabric A'],
    [['blocks', 'Windmill', 'finished'], '“finished” of the Windmill block'],
    [['blocks', 'Windmill', 'of', 0, 'count'], '“count” of the first unit of the Windmill block'],
    [
      ['blocks', 'Windmill', 'of', 1, 'count', 'throw'],
      '“count” of the second piece of the Windmill block for “throw”',
    ],
    [
      ['blocks', 'Windmill', 'of', 2, 'strips', 1],
      'the second of “strips” of the third unit of the Windmill block',
    ],
    [['pieces', 'tail', 'cut'], '“cut” of the piece “tail”'],
    [['borders', 1, 'finished', 0], '“finished” of the outer border for “wall”'],
    [['binding', 'strip'], '“strip” of the binding'],
    [['figures', 'ribbon'], 'the figure “ribbon”'],
  ] as const)('is said in words: %j', (path, words) => {
    expect(placeWords(path, pattern)).toBe(words);
  });
});

describe('A border', () => {
  it('is called as manuscripts call it', () => {
    const names = (count: number) => Array.from({ length: count }, (_, index) => borderName(index, count));

    expect(names(1)).toEqual(['the border']);
    expect(names(2)).toEqual(['the inner border', 'the outer border']);
    expect(names(3)).toEqual(['the inner border', 'the middle border', 'the outer border']);
    expect(names(4).slice(1, 3)).toEqual(['the second border', 'the third border']);
  });
});

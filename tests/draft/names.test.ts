import { describe, expect, it } from 'vitest';
import { findBlocks } from '../../core/draft/names/blocks.ts';
import { countBorders } from '../../core/draft/names/borders.ts';
import { findFabrics } from '../../core/draft/names/fabrics.ts';
import { findSizes } from '../../core/draft/names/sizes.ts';
import { patternFrom } from '../../core/draft/scaffold.ts';
import { readText } from '../../core/draft/text.ts';
import { readManuscript } from '../../core/manuscript/manuscript.ts';

const read = (source: string) => readText(readManuscript(source), patternFrom(''));

describe('The sizes', () => {
  it.each([
    ['| | Lap | Twin |\n|---|---|---|\n| Blocks | 12 | 24 |', ['lap', 'twin']],
    ['All sizes: small (medium, large).', ['small', 'medium', 'large']],
    ['The pattern comes in a lap, a twin and a queen size.', ['lap', 'twin', 'queen']],
    ['| | Cut | Sew |\n|---|---|---|\n| Blocks | 12 | 24 |', undefined],
    ['Two sizes of stitches: long and short.', undefined],
  ])('of “%s” are %j', (source, names) => {
    expect(findSizes(readManuscript(source))?.names).toEqual(names);
  });
});

describe('The fabrics', () => {
  it.each([
    ['- Fabric 1 (copper): ⅜ yard', [['1', 'copper']]],
    ['- Cream linen (A): 2.3m', [['A', 'Cream linen']]],
    ['- 1-1/4 yards cream print (blocks)', [['cream', 'cream print']]],
    ['| | Yards |\n|---|---|\n| A, Chalk | ¾ |', [['A', 'Chalk']]],
    ['- Backing: 3½ yards', [['backing', 'Backing']]],
    ['- Batting: 2 yards', []],
    ['- A 24" ruler', []],
    ['The amounts are 2 yards.', []],
  ])('of “%s” are %j', (line, fabrics) => {
    const found = findFabrics(read(`## Materials\n\n${line}\n`));
    expect(found.map(({ label, name }) => [label, name])).toEqual(fabrics);
  });
});

describe('The borders', () => {
  it.each([
    ['Sew the border on.', 1],
    ['Sew the inner border on, then the outer border.', 2],
    ['Sew the first border on, then the second border, then the third border.', 3],
    ['Sew the inner seam.', 0],
  ])('of “%s” are %i', (source, count) => {
    expect(countBorders(read(source))).toBe(count);
  });
});

describe('The blocks', () => {
  it.each([
    ['# Row\n\nMake 4 Star blocks. Press the Star blocks.', ['Star']],
    ['# Row\n\nMake 48 pinwheels, six across and eight down.', ['Pinwheel']],
    ['# Second Row: a throw\n\nMake 4 blocks.', ['Second Row']],
    ['# Row\n\nMake 4 units.', []],
  ])('of “%s” are called %j', (source, names) => {
    expect(findBlocks(read(source))).toEqual(names);
  });
});

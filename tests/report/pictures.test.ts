import type { Element, ElementContent } from 'hast';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../core/geometry/drawing.ts';
import { picture } from '../../core/report/pictures/picture.ts';

const box = { x: 0, y: 0, width: 10, height: 5, role: 'piece' as const };
const DRAWING: Drawing = {
  width: 40,
  height: 20,
  boxes: [],
  lines: [],
  labels: [],
  title: 'A cutting layout of fabric A',
  description: 'What one sees.',
};

function partsOf(node: ElementContent, name: string): Element[] {
  if (node.type !== 'element') return [];
  return [
    ...(node.tagName === name ? [node] : []),
    ...node.children.flatMap((child) => partsOf(child, name)),
  ];
}

const numbers = ({ properties }: Element, ...names: string[]) =>
  names.map((name) => Number(properties[name]));
const textOf = ({ children }: Element) =>
  children.map((child) => ('value' in child ? child.value : '')).join('');

describe('A picture', () => {
  it('is named and described for those who cannot look at it', () => {
    const { svg } = picture(DRAWING, 'p1');
    const named = svg.properties.ariaLabelledBy as string[];

    expect(svg.properties.role).toBe('img');
    expect(
      [...partsOf(svg, 'title'), ...partsOf(svg, 'desc')].map((part) => [part.properties.id, textOf(part)]),
    ).toEqual([
      [named[0], 'A cutting layout of fabric A'],
      [named[1], 'What one sees.'],
    ]);
  });

  it('is drawn to measure, in the colour of the text around it', () => {
    const boxes = [
      { ...box, x: 3, label: 'sash' },
      { ...box, y: 10, role: 'leftover' as const },
    ];
    const { svg } = picture({ ...DRAWING, boxes }, 'p1');
    const [first, second] = partsOf(svg, 'rect');

    expect(numbers(first as Element, 'x', 'y', 'width', 'height')).toEqual([3, 0, 10, 5]);
    expect(first?.properties).toMatchObject({ stroke: 'currentColor', fill: 'currentColor' });
    // What is left over differs by its hatching, not by a colour.
    expect(second?.properties.fill).toBe(`url(#${partsOf(svg, 'pattern')[0]?.properties.id})`);
  });

  it('lays a tall drawing that may be turned on its side, without mirroring it', () => {
    const tall: Drawing = {
      ...DRAWING,
      width: 20,
      height: 60,
      boxes: [{ ...box, x: 2, y: 30, width: 4, height: 7 }],
      lines: [{ from: { x: 0, y: 0 }, to: { x: 20, y: 60 }, role: 'cut' }],
      mayTurn: true,
    };
    const { svg } = picture(tall, 'p1');
    const [left, top, width, height] = String(svg.properties.viewBox).split(' ').map(Number);

    expect([Number(width) + 2 * Number(left), Number(height) + 2 * Number(top)].map(Math.round)).toEqual([
      60, 20,
    ]);
    // Its upper right corner (6, 30) is its upper left one now: 30 along, 20 − 6 down.
    expect(numbers(partsOf(svg, 'rect')[0] as Element, 'x', 'y', 'width', 'height')).toEqual([30, 14, 7, 4]);
    expect(numbers(partsOf(svg, 'line').at(-1) as Element, 'x1', 'y1', 'x2', 'y2')).toEqual([0, 20, 60, 0]);
  });

  it('leaves a tall drawing upright whose words say what is vertical', () => {
    const { svg } = picture({ ...DRAWING, width: 20, height: 60, boxes: [{ ...box, x: 2 }] }, 'p1');

    expect(numbers(partsOf(svg, 'rect')[0] as Element, 'x', 'y')).toEqual([2, 0]);
  });

  it('writes a label where it has room, and a letter that the legend explains where it has none', () => {
    const boxes = [
      { ...box, width: 30, label: 'panel' },
      { ...box, y: 6, width: 2, height: 2, label: 'the last strip for the binding' },
      { ...box, y: 12, width: 0.1, height: 0.1, label: 'speck' },
    ];
    const { svg, keys } = picture({ ...DRAWING, boxes }, 'p1');

    expect(keys).toEqual([
      { key: 'a', label: 'the last strip for the binding' },
      { key: 'b', label: 'speck' },
    ]);
    // The speck is too small even for a letter; the legend still names it.
    expect(partsOf(svg, 'text').map(textOf)).toEqual(['panel', 'a']);
  });

  it('does not repeat the same words in many pieces', () => {
    const boxes = Array.from({ length: 6 }, (_, index) => ({
      ...box,
      x: index * 6,
      width: 6,
      label: 'patch',
    }));
    const { svg, keys } = picture({ ...DRAWING, boxes }, 'p1');

    expect(keys).toEqual([{ key: 'a', label: 'patch' }]);
    expect(new Set(partsOf(svg, 'text').map(textOf))).toEqual(new Set(['a']));
  });

  it('has letters for as many labels as there are', () => {
    const boxes = Array.from({ length: 30 }, (_, index) => ({
      ...box,
      x: index,
      width: 1,
      height: 1,
      label: `a very long label ${index}`,
    }));

    expect(
      picture({ ...DRAWING, boxes }, 'p1')
        .keys.map(({ key }) => key)
        .slice(24),
    ).toEqual(['y', 'z', 'aa', 'ab', 'ac', 'ad']);
  });
});

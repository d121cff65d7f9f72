/**
 * Drawings of figures as SVG, for pages that need no script and no network. Every colour is the colour of the text
 * around it, so a picture follows the page into the dark and onto paper; meaning never lies in colour alone.
 */
import type { Element } from 'hast';
import { s } from 'hastscript';
import type { Drawing, DrawnBox, DrawnLine } from '../../geometry/drawing.ts';
import { keysOf, type Lettering, letteringOf } from './lettering.ts';
import { asWide } from './turned.ts';

export interface Picture {
  readonly svg: Element;
  /** What the letters in the picture stand for, in order; empty where every label has room. */
  readonly keys: readonly { readonly key: string; readonly label: string }[];
  /** Whether it takes the whole width of a page. */
  readonly isWide: boolean;
}

/** Wider than this in proportion to its height, a picture of half a page's width would be too small to read. */
const WIDE = 1.45;
/** Around the sheet, for the strokes on its edge; a part of the longer side. */
const MARGIN = 0.006;

/** @param id not used elsewhere on the page; without spaces */
export function picture(upright: Drawing, id: string): Picture {
  const drawing = asWide(upright);
  const { width, height, boxes, lines, labels, title, description } = drawing;
  const long = Math.max(width, height);
  const isWide = width / height > WIDE;
  const lettering = letteringOf(long, isWide);
  const keys = keysOf(boxes, lettering);
  const margin = long * MARGIN;
  const svg = s(
    'svg',
    {
      viewBox: [-margin, -margin, width + 2 * margin, height + 2 * margin].map(rounded).join(' '),
      role: 'img',
      ariaLabelledBy: `${id}-title ${id}-text`,
    },
    s('title', { id: `${id}-title` }, title),
    s('desc', { id: `${id}-text` }, description),
    s('defs', hatching(`${id}-leftover`, long / 90)),
    boxes.map((box) => rectangle(box, `${id}-leftover`)),
    lines.map((line) => stroke(line)),
    boxes.map((box) => lettered(box, keys, lettering)),
    labels.map(({ x, y, text }) => label(text, x, y, lettering.size)),
  );
  return { svg, keys: [...keys].map(([name, key]) => ({ key, label: name })), isWide };
}

/** What is left over is hatched. */
function hatching(id: string, step: number): Element {
  return s(
    'pattern',
    {
      id,
      patternUnits: 'userSpaceOnUse',
      width: rounded(step),
      height: rounded(step),
      patternTransform: 'rotate(45)',
    },
    s('line', {
      x1: 0,
      y1: 0,
      x2: 0,
      y2: rounded(step),
      stroke: 'currentColor',
      strokeOpacity: 0.35,
      ...thin,
    }),
  );
}

const thin = { vectorEffect: 'non-scaling-stroke', strokeWidth: 1 } as const;

const FILLS: Readonly<Record<DrawnBox['role'], (leftover: string) => object>> = {
  piece: () => ({ fill: 'currentColor', fillOpacity: 0.08 }),
  cloth: () => ({ fill: 'currentColor', fillOpacity: 0.05 }),
  leftover: (leftover) => ({ fill: `url(#${leftover})` }),
  outline: () => ({ fill: 'none', strokeDasharray: '4 3' }),
};

function rectangle({ x, y, width, height, role }: DrawnBox, leftover: string): Element {
  return s('rect', {
    x: rounded(x),
    y: rounded(y),
    width: rounded(width),
    height: rounded(height),
    stroke: 'currentColor',
    ...thin,
    ...FILLS[role](leftover),
  });
}

const STROKES: Readonly<Record<DrawnLine['role'], object>> = {
  edge: { strokeWidth: 1.5 },
  cut: { strokeWidth: 2 },
  seam: { strokeDasharray: '8 3 2 3' },
  mark: { strokeDasharray: '5 3' },
};

function stroke({ from, to, role }: DrawnLine): Element {
  return s('line', {
    x1: rounded(from.x),
    y1: rounded(from.y),
    x2: rounded(to.x),
    y2: rounded(to.y),
    stroke: 'currentColor',
    ...thin,
    ...STROKES[role],
  });
}

function lettered(box: DrawnBox, keys: ReadonlyMap<string, string>, lettering: Lettering): Element[] {
  if (box.label === undefined) return [];
  const text = keys.get(box.label) ?? box.label;
  const size = lettering.sizeIn(box, text);
  if (size === undefined) return [];
  // An outline lies on other boxes, whose own words stand in their middle.
  const [x, y] = box.role === 'outline' ? [lettering.widthOf(text), size] : [box.width / 2, box.height / 2];
  return [label(text, box.x + x, box.y + y, size)];
}

function label(text: string, x: number, y: number, size: number): Element {
  return s(
    'text',
    {
      x: rounded(x),
      // The middle of the small letters stands a third of their size above the line.
      y: rounded(y + size * 0.35),
      fontSize: rounded(size),
      textAnchor: 'middle',
      fill: 'currentColor',
    },
    text,
  );
}

/** A thousandth of an inch is more than a screen shows. */
function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}

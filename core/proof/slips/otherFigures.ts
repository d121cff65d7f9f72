/** Slips in which another number of the same pattern stands where this one belongs. */
import { listed, lowerFirst } from '../../block/words.ts';
import type { Figure } from '../../figures/figure.ts';
import type { Mistake } from './mistake.ts';
import { WITHOUT_SEAMS } from './rules.ts';
import type { Explained, Slip } from './slip.ts';

/** `unit.Lantern.1` of `unit.Lantern.1.square-1.cut`, `border.2` of `border.2.side`, `finished` of `finished.width`. */
function thingOf(id: string): string {
  const parts = id.split('.');
  const length = { unit: 3, block: 2, piece: 2, border: 2, setting: 2, fabric: 2 }[parts[0] ?? ''] ?? 1;
  return parts.slice(0, length).join('.');
}

/** The measures of a thing that are this number, the sides of a square only once. */
function sameLengths(mistake: Mistake): Figure[] {
  const thing = thingOf(mistake.id);
  const titles = new Set<string>();
  return mistake.ledger.ids.flatMap((id) => {
    // That binding of the length of the edge lacks what joining takes is a slip of its own.
    if (id === mistake.id || thingOf(id) !== thing || id.endsWith('.edge')) return [];
    const other = mistake.other(id);
    if (other?.figure.kind !== 'length' || !mistake.is(other.value)) return [];
    const title = other.figure.title.replace(/\b(?:width|length)\b/, 'size');
    if (titles.has(title)) return [];
    titles.add(title);
    return [other.figure];
  });
}

const SWAPPED: readonly (readonly [RegExp, string])[] = [
  [/\bwidth$/, 'length'],
  [/\blength$/, 'width'],
  [/^layout\.columns$/, 'layout.rows'],
  [/^layout\.rows$/, 'layout.columns'],
  [/^(border\.\d+)\.side$/, '$1.top'],
  [/^(border\.\d+)\.top$/, '$1.side'],
];

function swapped(mistake: Mistake): Explained | undefined {
  const [way, back] = SWAPPED.find(([way]) => way.test(mistake.id)) ?? [];
  const other = way && back ? mistake.other(mistake.id.replace(way, back)) : undefined;
  return other && mistake.is(other.value) ? isFigure(mistake, other.figure) : undefined;
}

function isFigure({ text }: Mistake, { id, title }: Figure): Explained {
  const means = /\bfinished\b/.test(id) && !/^finished\./.test(id) ? WITHOUT_SEAMS : id;
  return { clause: `${text} is ${lowerFirst(title)}`, means };
}

/** What pieces are made from, how many of them come from one, and how many there are. */
const MADE_FROM = [
  ['per-set', 'count'],
  ['per-square', 'count'],
] as const;

function notDivided(mistake: Mistake): Explained | undefined {
  const thing = thingOf(mistake.id);
  for (const [per, all] of MADE_FROM) {
    const from = mistake.other(`${thing}.${per}`);
    const made = mistake.other(`${thing}.${all}`);
    if (!from || !made || made.figure.id === mistake.id || !mistake.is(made.value)) continue;
    if (from.value.shown.compare(1) <= 0 || /(?:each|spare|per-\w+|triangles)$/.test(mistake.id)) continue;
    return {
      clause: `${mistake.text} is ${lowerFirst(made.figure.title)}, and ${lowerFirst(from.value.because)}`,
      means: made.figure.id,
    };
  }
  return undefined;
}

const SIZES = [
  'sizes: [crib, throw]',
  'finished: { crib: 36" x 48", throw: 60" x 72" }',
  'binding: { strip: 2 1/4" }',
];
const UNIT = [
  'blocks:',
  '  Reed:',
  '    finished: 5"',
  '    of: [{ unit: half-square triangles, finished: 2 1/2", count: 4, method: two at a time }]',
  'layout: { grid: 5 x 6 }',
];

export const OTHER_FIGURES: readonly Slip[] = [
  {
    name: 'the number of another size',
    explain: (mistake) => {
      if (mistake.size === null) return undefined;
      const sizes = [...mistake.figure.values].flatMap(([name, value]) =>
        name !== mistake.size && mistake.is(value) ? [`“${name}”`] : [],
      );
      if (sizes.length === 0) return undefined;
      return {
        clause: `${mistake.text} is right for the size${sizes.length > 1 ? 's' : ''} ${listed(sizes, 'and')}`,
      };
    },
    example: {
      block: SIZES,
      sentence: 'For the throw make «180"» <!-- = binding.length @ throw --> of binding.',
      says: '180" is right for the size “crib”',
    },
    counterexample: {
      block: SIZES,
      sentence: 'For the throw make «181"» <!-- = binding.length @ throw --> of binding.',
    },
  },
  {
    name: 'width and length swapped',
    explain: swapped,
    example: {
      block: ['finished: 60" x 72"'],
      sentence: 'The quilt is «72"» <!-- = finished.width --> wide.',
      says: '72" is the finished length',
    },
    counterexample: {
      block: ['finished: 60" x 72"'],
      sentence: 'The quilt is «71"» <!-- = finished.width --> wide.',
    },
  },
  {
    name: 'another measure of the same thing',
    explain: (mistake) => {
      const [same, ...more] = mistake.kind === 'length' ? sameLengths(mistake) : [];
      return same && more.length === 0 ? isFigure(mistake, same) : undefined;
    },
    example: {
      block: UNIT,
      sentence: 'Cut squares «3"» <!-- = unit.Reed.1.cut --> wide.',
      says: '3" is the unfinished size of one half-square triangle of Reed',
    },
    counterexample: { block: UNIT, sentence: 'Cut squares «3⅛"» <!-- = unit.Reed.1.cut --> wide.' },
  },
  {
    name: 'units counted where each set gives several',
    explain: notDivided,
    example: {
      block: UNIT,
      sentence: 'Cut «120» <!-- = unit.Reed.1.square-1.count --> dark squares.',
      says: '120 is the number of half-square triangles of Reed, and one set of pieces gives 2 units',
    },
    counterexample: {
      block: UNIT,
      sentence: 'Cut «118» <!-- = unit.Reed.1.square-1.count --> dark squares.',
    },
  },
  {
    name: 'one block for the whole quilt',
    explain: (mistake) => {
      const each = mistake.id.endsWith('.count') && mistake.other(mistake.id.replace(/count$/, 'each'));
      return each && mistake.is(each.value) ? isFigure(mistake, each.figure) : undefined;
    },
    example: {
      block: UNIT,
      sentence: 'Make «4» <!-- = unit.Reed.1.count --> units.',
      says: '4 is the number of half-square triangles in one Reed block',
    },
    counterexample: { block: UNIT, sentence: 'Make «116» <!-- = unit.Reed.1.count --> units.' },
  },
];

/** The fabrics: what is cut from each, and how much of it to buy. */
import type { Pattern } from '../../block/pattern.ts';
import type { Definition, Room } from '../definition.ts';
import { checkCuts } from './fabrics/checks.ts';
import { rollFigures, stripFigures } from './fabrics/figures.ts';
import { sheetFigures } from './fabrics/sheetFigures.ts';
import { sourcesOf } from './fabrics/sources.ts';
import { unitStrips } from './fabrics/unitStrips.ts';
import { stripWidths } from './fabrics/widths.ts';

export const fabricsRoom: Room = {
  define: (pattern) => {
    const sources = sourcesOf(pattern);
    const used = new Set(sources.all.flatMap(({ fabrics }) => fabrics));
    const labels = Object.keys(pattern.entries.fabrics ?? {}).filter((label) => used.has(label));
    return [...labels.flatMap((label) => figuresOf(pattern, label, sources)), ...unitStrips(pattern)];
  },
  check: checkCuts,
};

function figuresOf(pattern: Pattern, label: string, sources: ReturnType<typeof sourcesOf>): Definition[] {
  const form = pattern.entries.fabrics?.[label]?.['cut from']?.kind ?? 'yardage';
  if (form !== 'yardage' && form !== 'wide') return sheetFigures(label, form, sources);
  return [
    ...rollFigures(label, sources),
    ...stripWidths(pattern, sources, label).map((width) => stripFigures(label, sources, width)),
  ];
}

/** Piping: the strip that covers the cord, and how much of it the edge takes. */
import { pipingStrip } from '../../trade/piping.ts';
import type { Definition, Room } from '../definition.ts';
import { sentence } from '../sentence.ts';
import { aroundEdge } from './aroundEdge.ts';

export const pipingRoom: Room = {
  define: ({ entries }) => (entries.piping ? [strip, length] : []),
};

const strip: Definition = {
  id: 'piping.strip',
  title: 'The width of the piping strip',
  kind: 'length',
  rule: 'at least',
  derive: (at) => {
    const cord = at.entries.piping?.cord.inches;
    if (!cord) return undefined;
    const { show } = at;
    const step = at.house['cut to'];
    const cut = pipingStrip(cord, at.house.seam, step);
    const around = `once around a ${show.length(cord)} cord is π × ${show.length(cord)} = ${show.length(cut.around)}`;
    const because = `two ${show.length(at.house.seam)} seams and ${show.length(cut.around)} around the cord make ${show.length(cut.exact)}`;
    return { need: cut.exact, step, steps: [sentence(around), sentence(because)], because };
  },
};

const length: Definition = {
  id: 'piping.length',
  title: 'The length of piping',
  kind: 'length',
  rule: 'at least',
  derive: (at) => aroundEdge(at, 'finished.edge'),
};

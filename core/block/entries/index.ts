/**
 * The block language, in the order of the reference: one file per entry, one line here.
 * The schema, the reference and what `Pattern` holds all follow from this list.
 */
import { backing } from './backing.ts';
import { batting } from './batting.ts';
import { binding } from './binding.ts';
import { blocks } from './blocks.ts';
import { borders } from './borders.ts';
import { fabrics } from './fabrics.ts';
import { figures } from './figures.ts';
import { finished } from './finished.ts';
import { house } from './house.ts';
import { layout } from './layout.ts';
import { pattern } from './pattern.ts';
import { pieces } from './pieces.ts';
import { piping } from './piping.ts';
import { sizes } from './sizes.ts';
import { sleeve } from './sleeve.ts';
import { states } from './states.ts';
import { use } from './use.ts';

export const ENTRIES = {
  pattern,
  sizes,
  use,
  house,
  fabrics,
  finished,
  blocks,
  pieces,
  layout,
  borders,
  binding,
  piping,
  backing,
  batting,
  sleeve,
  figures,
  states,
};

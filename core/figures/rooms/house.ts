/** The house rules as figures, so that a number that repeats one of them can be checked too. */
import type { House } from '../../block/house.ts';
import { Real } from '../../quantity/real.ts';
import type { Definition, Room } from '../definition.ts';
import { sentence } from '../sentence.ts';
import { stated, USUAL } from './stated.ts';

const RULES = {
  seam: 'The seam allowance',
  'usable width': 'The usable width of fabric',
  'cut to': 'The step that cut sizes are rounded up to',
  'sell by': 'The step that yardage is rounded up to',
  squaring: 'What straightening the end of a fabric takes',
  'joining allowance': 'The joining allowance',
  'binding strip': 'The width of binding strips',
  overhang: 'The overhang of backing and batting',
  'backing seam': 'The seam allowance of the backing',
} satisfies { readonly [Rule in keyof House]?: string };

export const houseRoom: Room = {
  define: () => (Object.keys(RULES) as (keyof typeof RULES)[]).map(rule),
};

function rule(rule: keyof typeof RULES): Definition {
  const kind = rule === 'sell by' ? 'yardage' : 'length';
  return {
    id: `house.${rule}`,
    title: RULES[rule],
    kind,
    rule: 'exact',
    derive: (at) => {
      const value = at.house[rule];
      if (!value) return undefined;
      if (at.entries.house?.[rule]) return stated(value);
      return { need: Real.of(value), steps: [sentence(USUAL)], because: USUAL };
    },
  };
}

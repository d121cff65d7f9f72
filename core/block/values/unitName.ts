import { methodNames, UNIT_KINDS, UNIT_NAMES, unitKind } from '../../trade/units/kinds.ts';
import type { UnitKind } from '../../trade/units/unit.ts';
import { suggestion } from '../words.ts';
import { text } from './schema.ts';

/** The kind of a pieced unit, found by its name in the words of the trade. A class, so that it stays one value. */
export class UnitName {
  readonly kind: UnitKind;

  constructor(kind: UnitKind) {
    this.kind = kind;
  }
}

const EXAMPLES = ['half-square triangles', 'flying geese'];

export const unitName = text<UnitName>({ title: 'a kind of unit', examples: EXAMPLES }, (raw) => {
  const kind = unitKind(raw);
  if (kind) return new UnitName(kind);
  return { problem: `“${raw}” is no kind of unit that is known here.${suggestion(raw, UNIT_NAMES)}` };
});

/** Every name of every method; whether it fits the kind is checked where the kind is known. */
const METHODS = new Set(UNIT_KINDS.flatMap((kind) => methodNames(kind)));

export const unitMethodName = text<string>(
  { title: 'a way to make units', examples: ['two at a time'] },
  (raw) => {
    const name = raw.toLowerCase().replace(/\s+/g, ' ');
    if (METHODS.has(name)) return name;
    return { problem: `“${raw}” is no way to make units that is known here.${suggestion(name, METHODS)}` };
  },
);

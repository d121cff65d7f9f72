/** What only shows when all entries are read: sizes that are missing, fabrics that no one defined. */
import { max, rational } from '../quantity/rational.ts';
import { isMetric } from '../quantity/units.ts';
import type { Broken } from './broken.ts';
import type { House } from './house.ts';
import type { Entries } from './pattern.ts';
import type { BlockPath } from './place.ts';
import type { Complaint } from './validate.ts';
import { FabricLabel } from './values/fabricLabel.ts';
import { PerSize, type Size } from './values/perSize.ts';
import { listed, suggestion } from './words.ts';

/** A complaint, and the values that it leaves unknown. */
export interface Objection extends Complaint {
  readonly breaks: readonly BlockPath[];
}

/** Every value per size must name just the sizes of the pattern. */
export function* checkSizes(
  entries: Entries,
  sizes: readonly Size[],
  broken: Broken,
): Generator<Objection, void> {
  if (broken.at(['sizes'])) return;
  const single = sizes[0]?.name === '';
  for (const { path, value } of walk(entries)) {
    if (!(value instanceof PerSize) || value.form === 'same') continue;
    if (!single) {
      yield* extraSizes(value, path, sizes);
      yield* missingSizes(value, path, sizes, broken);
    } else if (!broken.inside(path)) {
      const message =
        'The pattern has one size, so write one value here; if it comes in several, list them under “sizes:”.';
      yield { code: 'extra-size', message, path, atKey: false, breaks: [path] };
    }
  }
}

function* extraSizes(
  value: PerSize<unknown>,
  path: BlockPath,
  sizes: readonly Size[],
): Generator<Objection, void> {
  const names = sizes.map(({ name }) => name);
  const known = new Set<string | number>(value.form === 'named' ? names : names.keys());
  for (const key of value.keys) {
    if (known.has(key)) continue;
    const named = value.form === 'named';
    const message = named
      ? `The pattern has no size “${key}”.${suggestion(String(key), names)}`
      : `The pattern has ${sizes.length} sizes; this value is one too many.`;
    yield { code: 'extra-size', message, path: [...path, key], atKey: named, breaks: [] };
  }
}

function* missingSizes(
  value: PerSize<unknown>,
  path: BlockPath,
  sizes: readonly Size[],
  broken: Broken,
): Generator<Objection, void> {
  const places = (size: Size) => [...path, ...value.pathAt(size)];
  const missing = sizes.filter((size) => value.at(size) === undefined && !broken.at(places(size)));
  if (missing.length === 0) return;
  const words = listed(
    missing.map(({ name }) => `“${name}”`),
    'and',
  );
  const message = `The value for ${words} is missing here.`;
  yield { code: 'missing-size', message, path, atKey: true, breaks: missing.map(places) };
}

export function* checkFabrics(entries: Entries, broken: Broken): Generator<Objection, void> {
  const fabrics = entries.fabrics ?? {};
  const known = Object.keys(fabrics);
  for (const { path, value } of walk(entries)) {
    if (!(value instanceof FabricLabel) || Object.hasOwn(fabrics, value.label)) continue;
    if (broken.at(['fabrics', value.label])) continue;
    const message = noSuchFabric(value.label, known);
    yield { code: 'unknown-fabric', message, path, atKey: false, breaks: [path] };
  }
}

function noSuchFabric(label: string, known: readonly string[]): string {
  const message = `No fabric “${label}” is defined`;
  if (known.length === 0) return `${message}; list the fabrics under “fabrics:”.`;
  const all = known.length === 1 ? `the only one is ${known[0]}` : `the fabrics are ${listed(known, 'and')}`;
  return suggestion(label, known) ? `${message}.${suggestion(label, known)}` : `${message}; ${all}.`;
}

/** Fabric must be wider than two seam allowances of what is joined from it, or no joining reaches anywhere. */
export function* checkWidths(entries: Entries, house: House): Generator<Objection, void> {
  const wide = (['seam', 'backing seam'] as const).find(
    (seam) => house[seam].mul(2n).compare(house['usable width']) >= 0,
  );
  if (wide) {
    const message = 'Two seam allowances are as wide as the fabric or wider; check both lengths.';
    const [allowance, width] = [
      ['house', wide],
      ['house', 'usable width'],
    ];
    const path = entries.house?.[wide] ? allowance : width;
    yield { code: 'bad-value', message, path, atKey: false, breaks: [allowance, width] };
  }
  const least = max(house.seam, house['backing seam']).mul(2n);
  for (const [label, fabric] of Object.entries(entries.fabrics ?? {})) {
    const form = fabric['cut from'];
    const widths = {
      'usable width': fabric['usable width']?.inches,
      'cut from': form?.kind === 'wide' ? form.width : undefined,
    };
    for (const [key, width] of Object.entries(widths)) {
      if (!width || width.compare(least) > 0) continue;
      const path = ['fabrics', label, key];
      const message = 'This fabric is no wider than two seam allowances.';
      yield { code: 'bad-value', message, path, atKey: false, breaks: [path] };
    }
  }
}

/** A step for telling lengths in the other system of units must belong to that system. */
export function* checkConversion({ house: entries }: Entries, house: House): Generator<Objection, void> {
  const step = entries?.['convert to'];
  if (!step || isMetric(step.unit) !== (house.system === 'metric')) return;
  const [own, example] = house.system === 'metric' ? ['centimetres', '1/8"'] : ['inches', '0.5 cm'];
  const message = `The house works in ${own} itself; write here the step for the other system, for example ${example}.`;
  const path = ['house', 'convert to'];
  yield { code: 'bad-value', message, path, atKey: false, breaks: [path] };
}

/** No binding is narrower: an eighth of an inch (own choice). */
const NARROWEST = rational(1, 8);

/** A binding needs a strip, its own or that of the house; and one that its two seams take up binds nothing. */
export function* checkStrips(
  { binding }: Entries,
  sizes: readonly Size[],
  house: House,
  broken: Broken,
): Generator<Objection, void> {
  const strips = binding?.strip;
  const own = ['binding', 'strip'];
  if (binding && !strips && !broken.at(own)) {
    const message =
      '“strip” is missing. Write a length, for example 2 1/4", here or as “binding strip” under “house”.';
    yield { code: 'missing-entry', message, path: own, atKey: false, breaks: [own] };
  }
  if (!strips) return;
  const least = max(house.seam.mul(2n), NARROWEST);
  for (const size of strips.form === 'same' ? sizes.slice(0, 1) : sizes) {
    const strip = strips.at(size)?.inches;
    if (!strip || strip.compare(least) > 0) continue;
    const path = [...own, ...strips.pathAt(size)];
    const message = 'This strip is so narrow that its two seam allowances take it up.';
    yield { code: 'bad-value', message, path, atKey: false, breaks: [path] };
  }
}

/** Every value inside the entries that is not a plain container, with its path. */
function* walk(value: unknown, path: BlockPath = []): Generator<{ path: BlockPath; value: unknown }> {
  yield { path, value };
  if (Array.isArray(value)) for (const [index, item] of value.entries()) yield* walk(item, [...path, index]);
  else if (isPlainObject(value))
    for (const [key, item] of Object.entries(value)) yield* walk(item, [...path, key]);
}

function isPlainObject(value: unknown): value is Record<string, unknown> {
  if (typeof value !== 'object' || value === null) return false;
  const prototype = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype;
}

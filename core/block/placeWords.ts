/** Places of the block as one says them to somebody who reads the pattern. */
import type { Entries, Pattern } from './pattern.ts';
import type { BlockPath } from './place.ts';

const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(
  ' ',
);

/** Keys under which a list is no list of sizes. */
const LISTS: ReadonlySet<string | number> = new Set(['strips', 'from']);

function ordinal(index: number): string {
  return ORDINALS[index] ?? `${index + 1}th`;
}

/**
 * `the border`, `the inner border`, `the middle border`, `the third border`: as manuscripts call it.
 *
 * @param index counted from the inside, from 0
 */
export function borderName(index: number, borders: number): string {
  if (borders === 1) return 'the border';
  if (index === 0) return 'the inner border';
  if (index === borders - 1) return 'the outer border';
  return borders === 3 ? 'the middle border' : `the ${ordinal(index)} border`;
}

/** `“count” of the first unit of the Windmill block`, `“grid” of the layout for “throw”`. */
export function placeWords(path: BlockPath, { entries, sizes }: Pick<Pattern, 'entries' | 'sizes'>): string {
  const { what, rest } = holderOf(path, entries);
  let words = what;
  let size = '';
  for (const [at, step] of rest.entries()) {
    const isSize = at > 0 && at === rest.length - 1 && !LISTS.has(rest[at - 1] ?? '');
    const named =
      typeof step === 'number' ? sizes[step]?.name : sizes.find(({ name }) => name === step)?.name;
    if (isSize && named !== undefined) size = ` for “${named}”`;
    else if (typeof step === 'number') words = `the ${ordinal(step)} of ${words}`;
    else words = words === '' ? `“${step}”` : `“${step}” of ${words}`;
  }
  return words + size;
}

/** What a place belongs to, and the way on from there. */
function holderOf(path: BlockPath, entries: Entries): { readonly what: string; readonly rest: BlockPath } {
  const [entry, name, part, index] = path;
  if (path.length < 2) return { what: '', rest: path };
  const rest = path.slice(2);
  switch (entry) {
    case 'blocks': {
      const block = `the ${name} block`;
      if (part !== 'of' || typeof index !== 'number') return { what: block, rest };
      const made = entries.blocks?.[String(name)]?.of?.[index];
      const kind = made && 'unit' in made ? 'unit' : 'piece';
      return { what: `the ${ordinal(index)} ${kind} of ${block}`, rest: path.slice(4) };
    }
    case 'borders':
      if (typeof name !== 'number') return { what: 'the borders', rest: path.slice(1) };
      // One that was taken out still has its place.
      return { what: borderName(name, Math.max(entries.borders?.length ?? 0, name + 1)), rest };
    case 'fabrics':
      return { what: `fabric ${name}`, rest };
    case 'pieces':
      return { what: `the piece “${name}”`, rest };
    case 'figures':
    case 'states':
      return { what: `the figure “${name}”`, rest };
    case 'house':
      return { what: 'the house rules', rest: path.slice(1) };
    case 'finished':
    case 'sizes':
      return { what: '', rest: path };
    default:
      return { what: `the ${entry}`, rest: path.slice(1) };
  }
}

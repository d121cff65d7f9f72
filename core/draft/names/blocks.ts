/** What the blocks are called: the word before "blocks", as a heading, a table or a total of blocks has it. */
import { gridsIn } from '../rows/layout.ts';
import type { Text } from '../text.ts';

const IDLE = new Set(
  'the each of a an per quilt finished unfinished same all these those and make made your every one total quilted sewn completed complete whole more any both other next first second third last following in into with from two three four five six seven eight nine ten twelve sixteen twenty thirty pieced patchwork this that on is are it to arrange lay out join sew assemble odd even free neighbouring odd no some most many'.split(
    ' ',
  ),
);

/** @returns the names, the commonest first; one without a name of its own is called after the pattern */
export function findBlocks(text: Text): string[] {
  const { words, manuscript, lines } = text;
  const noun = nounOfGrid(text);
  if (noun) return [noun];
  if (!/\bblocks?\b/i.test(words)) return [];
  const counts = new Map<string, number>();
  for (const [, word = ''] of words.matchAll(/(\p{Lu}?[\p{L}’'-]+) blocks?\b/gu)) {
    const name = word.toLowerCase();
    if (IDLE.has(name) || /ing$|\d/.test(name)) continue;
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  // A table that counts them names them for certain.
  const listed = new Set(
    lines.flatMap(({ text, isRow }) =>
      isRow ? (/^([\p{L}’'-]+) blocks \| \d/u.exec(text)?.[1]?.toLowerCase() ?? []) : [],
    ),
  );
  const names = [...counts]
    .filter(([name, count]) => count > 1 || listed.has(name))
    .sort((a, b) => b[1] - a[1])
    .map(([name]) => name.charAt(0).toUpperCase() + name.slice(1));
  return names.length > 0 ? names : [titleOf(manuscript.source) ?? 'Block'];
}

const NO_BLOCKS =
  /^(?:squares|triangles|rectangles|pieces|strips|units|times|pairs|sets|blocks|inches|segments)$/;

/** "Six across and eight down … 48 pinwheels": what there are just so many of as the grid holds. */
function nounOfGrid(text: Text): string | undefined {
  const grids = gridsIn(text).filter(
    ({ across, down }) => across.values.length === 1 && down.values.length === 1,
  );
  const totals = grids.map(({ across, down }) => across.values[0].mul(down.values[0]));
  const found = text.clauses.flatMap(({ count, sides, behind }) => {
    const [value, ...more] = count?.values ?? [];
    if (!value || more.length > 0 || sides.length > 0 || !totals.some((total) => total.equals(value)))
      return [];
    const noun = /^["”)]*\s*(?:[\p{L}-]+ )?([\p{L}-]+s)\b/u.exec(behind)?.[1]?.toLowerCase();
    return noun ? [noun] : [];
  });
  if (found.includes('blocks')) return undefined;
  const [noun, ...others] = [...new Set(found.filter((each) => !NO_BLOCKS.test(each)))];
  if (!noun || others.length > 0) return undefined;
  return noun.charAt(0).toUpperCase() + noun.slice(1, -1);
}

/** The name of the pattern: the title up to a colon, a comma or a dash. */
export function titleOf(source: string): string | undefined {
  const title = /^#\s+(.+)$/m.exec(source)?.[1]?.replace(/[*_`]/g, '').trim();
  return title?.split(/[:,–—(]| - /)[0]?.trim() || undefined;
}

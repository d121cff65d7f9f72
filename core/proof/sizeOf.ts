/** Which size of the pattern a tagged number is about. */
import type { Pattern } from '../block/pattern.ts';
import type { Figure } from '../figures/figure.ts';
import type { Passage, ReadNumber } from '../manuscript/manuscript.ts';
import type { Tag } from '../manuscript/tags.ts';
import { sizeNames } from '../reading/sizeNames.ts';

export interface SizeChoice {
  readonly number: ReadNumber;
  /** `null` when the figure is the same in all sizes. */
  readonly size: string | null;
  readonly evidence: readonly string[];
}

/**
 * The numbers that the tag's figure at `index` stands for, each with its size; strongest evidence first:
 *
 * 1. the tag names the size;
 * 2. the figure is the same in all sizes;
 * 3. the numbers before the tag are a list with one number, or one size in inches, for each size of the pattern:
 *    `5 (7, 9)` or `5/7/9`;
 * 4. the head of the column, or of the row, names one size;
 * 5. a heading above names one size.
 */
export function sizesOf(
  figure: Figure,
  tag: Tag,
  index: number,
  before: readonly ReadNumber[],
  passage: Passage,
  pattern: Pattern,
): { readonly choices: readonly SizeChoice[] } | { readonly missing: true } {
  const names = pattern.sizes.map(({ name }) => name);
  const last = before[before.length - tag.figures.length + index];
  if (!last) return { missing: true };
  const one = (size: string | null, ...evidence: string[]) => ({
    choices: [{ number: last, size, evidence }],
  });
  if (tag.size !== undefined) return one(tag.size);
  const list = sizeList(before, passage.text, names.length, tag.figures.length, isSame(figure, pattern))?.map(
    (sides) => sides[index] ?? last,
  );
  if (list)
    return {
      choices: list.map((number, at) => ({
        number,
        size: names[at] ?? null,
        evidence: ['it stands in a list with one number per size'],
      })),
    };
  if (isSame(figure, pattern)) return one(null);
  const named = sizeNames(pattern);
  const { cell, headings } = passage.context;
  const inColumn = cell && named.in(cell.columnHeader);
  if (inColumn) return one(inColumn, `its column is headed “${cell.columnHeader}”`);
  const inRow = cell && named.in(cell.rowHeader);
  if (inRow) return one(inRow, `its row begins with “${cell.rowHeader}”`);
  for (const { text } of [...headings].reverse()) {
    const inHeading = named.in(text);
    if (inHeading) return one(inHeading, `it stands under the heading “${text}”`);
  }
  return { missing: true };
}

/** Whether a figure has one value in all sizes. */
export function isSame({ values }: Figure, { sizes }: Pattern): boolean {
  const shown = sizes.map(({ name }) => values.get(name)?.shown);
  return shown.every((value) => value !== undefined && shown[0]?.equals(value));
}

/**
 * The last numbers before a tag when they are written as a list with one number for each size, or one size in inches
 * for each: `60" × 74" (74" × 102")`. Where all sizes have the same value, nobody lists it: `43/44"` is then a range.
 *
 * @param sides how many numbers stand for each size
 */
function sizeList(
  before: readonly ReadNumber[],
  text: string,
  sizes: number,
  sides: number,
  same: boolean,
): readonly (readonly ReadNumber[])[] | undefined {
  if (sizes < 2 || before.length < sizes * sides) return undefined;
  const last = before.slice(-sizes * sides);
  const list = Array.from({ length: sizes }, (_, at) => last.slice(at * sides, (at + 1) * sides));
  const isOneEach = list.every(([first, ...others]) =>
    others.every((other) => first?.group !== undefined && other.group === first.group),
  );
  if (!isOneEach) return undefined;
  const between = list
    .slice(1)
    .map((next, i) => text.slice(list[i]?.at(-1)?.written.end, next[0]?.written.start));
  const brackets = between.every((gap, i) => (i === 0 ? /^\s*[([]\s*$/ : /^\s*[,;/]\s*$/).test(gap));
  const slashes = !same && between.every((gap) => /^\s*\/\s*$/.test(gap));
  return brackets || slashes ? list : undefined;
}

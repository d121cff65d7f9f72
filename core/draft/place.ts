/** Where a drafted block goes: behind the title, or behind the front matter of a manuscript without a title. */
const FRONT_MATTER = /^---\r?\n[\s\S]*?\r?\n---[^\S\n]*\r?\n/;
const TITLE = /^#[^\S\n]+\S.*(?:\r?\n|$)|^\S.*\r?\n=+[^\S\n]*(?:\r?\n|$)/m;

/** An offset at the start of a line. */
export function placeOfBlock(source: string): number {
  const matter = FRONT_MATTER.exec(source)?.[0].length ?? 0;
  const title = TITLE.exec(source.slice(matter));
  if (!title) return matter;
  const behind = matter + title.index + title[0].length;
  const blank = /^[^\S\n]*\r?\n/.exec(source.slice(behind))?.[0].length ?? 0;
  return behind + blank;
}

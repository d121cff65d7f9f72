/** A new column, filled with spaces and dashes as the author fills the one beside it. */

/** The line of dashes below the head. */
const DASHES = 1;

/**
 * The cells of a new column, between their pipes. Where the pipes of the model stand below each other, so do those
 * of the new column.
 *
 * @param models the cells of the column beside it, row by row
 * @param contents what the new cells say, without spaces; what is given for the line of dashes is left aside
 */
export function columnLike(models: readonly string[], contents: readonly string[]): string[] {
  const dashes = models[DASHES] ?? '---';
  const isAligned = new Set(models.map(lengthOf)).size === 1;
  if (!isAligned)
    return contents.map((content, row) => {
      const [, lead = '', trail = ''] = /^(\s*).*?(\s*)$/su.exec(models[row] ?? '') ?? [];
      return row === DASHES ? dashes : lead + content + trail;
    });
  const inner = contents.map((content, row) => (row === DASHES ? '---' : content));
  const width = Math.max(...inner.map(lengthOf)) + 2;
  return inner.map((content, row) =>
    row === DASHES ? dashesOf(dashes, width) : filled(content, dashes, width),
  );
}

function filled(content: string, dashes: string, width: number): string {
  const rest = width - 2 - lengthOf(content);
  const [isLeft, isRight] = [dashes.trim().startsWith(':'), dashes.trim().endsWith(':')];
  const before = isRight ? (isLeft ? Math.floor(rest / 2) : rest) : 0;
  return ` ${' '.repeat(before)}${content}${' '.repeat(rest - before)} `;
}

function dashesOf(model: string, width: number): string {
  const [, lead = '', left = '', right = '', trail = ''] = /^(\s*)(:?)-*(:?)(\s*)$/.exec(model) ?? [];
  const marks = lead.length + left.length + right.length + trail.length;
  return lead + left + '-'.repeat(Math.max(1, width - marks)) + right + trail;
}

function lengthOf(text: string): number {
  return [...text].length;
}

/** How much of a line is shown on either side of a number, in characters. */
const BESIDE = 36;

/** The words around a part of a line; whole words, with an ellipsis where the line goes on. */
export function clip(
  line: string,
  start: number,
  end: number,
): { readonly before: string; readonly behind: string } {
  const [before, behind] = [line.slice(0, start), line.slice(end)].map((text) => text.replace(/\s+/g, ' '));
  return { before: lastOf((before ?? '').trimStart()), behind: firstOf((behind ?? '').trimEnd()) };
}

function lastOf(text: string): string {
  if (text.length <= BESIDE) return text;
  return `…${text.slice(text.indexOf(' ', text.length - BESIDE))}`.replace('… ', '… ');
}

function firstOf(text: string): string {
  if (text.length <= BESIDE) return text;
  const cut = text.lastIndexOf(' ', BESIDE);
  return `${text.slice(0, cut > 0 ? cut : BESIDE)} …`;
}

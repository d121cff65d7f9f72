import wrapAnsi from 'wrap-ansi';

/** A paragraph in lines of at most `width` columns, each after `indent`; a word that is longer keeps its line. */
export function indented(text: string, indent: string, width: number): string {
  // The author's own indentation in front of a table row stays in front of every line.
  const own = /^ */.exec(text)?.[0] ?? '';
  const prefix = indent + own;
  return wrapAnsi(text.slice(own.length), Math.max(width - prefix.length, 20))
    .split('\n')
    .map((line) => prefix + line)
    .join('\n');
}

/** Small helpers for sentences about names. */
import { distance } from 'fastest-levenshtein';

/** `a`, `a or b`, `a, b or c`. */
export function listed(items: readonly string[], conjunction: 'and' | 'or'): string {
  if (items.length < 2) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} ${conjunction} ${items.at(-1)}`;
}

/** A noun phrase that starts a sentence, inside of one. */
export function lowerFirst(title: string): string {
  return title.charAt(0).toLowerCase() + title.slice(1);
}

/** The known name that a misspelled one most likely means; `undefined` when none is near. */
export function nearest(name: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let bestDistance = Math.max(1, Math.floor(name.length / 3)) + 1;
  for (const candidate of known) {
    // Where every letter differs, nothing is alike: “C” does not mean “A”.
    if (Math.abs(candidate.length - name.length) >= bestDistance) continue;
    const d = distance(name.toLowerCase(), candidate.toLowerCase());
    if (d < Math.min(bestDistance, name.length)) [best, bestDistance] = [candidate, d];
  }
  return best;
}

/** ` Did you mean “strip”?`, or nothing. */
export function suggestion(name: string, known: Iterable<string>): string {
  const found = nearest(name, known);
  return found === undefined ? '' : ` Did you mean “${found}”?`;
}

/** The telling words of a text, without their plural. */

const IDLE = new Set('a an the of in on at to for per and or each every with by'.split(' '));

export function stemsOf(text: string): string[] {
  return wordsOf(text)
    .filter((word) => !IDLE.has(word))
    .map(stem);
}

function stem(word: string): string {
  if (/(?:ches|shes|sses|xes)$/.test(word)) return word.slice(0, -2);
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  return word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}

/** All words of a text in small letters. */
export function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}

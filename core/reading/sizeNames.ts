/** The names of the pattern's sizes in the text. */
import type { Pattern } from '../block/pattern.ts';
import { wordsOf } from './stems.ts';

export interface SizeNames {
  /** The one size that a text names as a whole word, in any letter case; `undefined` for none or several. */
  in(text: string): string | undefined;
}

export function sizeNames({ sizes }: Pattern): SizeNames {
  const names = sizes
    .map(({ name }) => name)
    .map((name) => ({ name, words: wordsOf(name) }))
    .filter(({ words }) => words.length > 0);
  return {
    in: (text) => {
      const words = new Set(wordsOf(text));
      const found = names.filter((name) => name.words.every((word) => words.has(word)));
      return found.length === 1 ? found[0]?.name : undefined;
    },
  };
}

/** The names of the sizes as a text writes them. */
import type { Range } from '../../findings/finding.ts';
import { sameCase } from '../../quantity/nouns.ts';
import { escaped, wholeWords } from '../../reading/wholeWords.ts';

export interface NamedSize extends Range {
  readonly size: string;
}

export class SizeWords {
  readonly names: readonly string[];
  readonly #pattern: RegExp;

  constructor(names: readonly string[]) {
    this.names = names;
    // “Large lap” before “lap”.
    const longestFirst = [...names].sort((a, b) => b.length - a.length);
    this.#pattern = wholeWords(longestFirst.map((name) => escaped(name).replace(/ +/g, '\\s+')).join('|'));
  }

  /** Every place where a text names a size, in any letter case. */
  in(text: string): NamedSize[] {
    return [...text.matchAll(this.#pattern)].flatMap((match) => {
      const found = match[0].toLowerCase().replace(/\s+/g, ' ');
      const size = this.names.find((name) => name.toLowerCase() === found);
      return size === undefined ? [] : [{ size, start: match.index, end: match.index + match[0].length }];
    });
  }

  /** The one size that a text names. */
  only(text: string): string | undefined {
    const found = new Set(this.in(text).map(({ size }) => size));
    return found.size === 1 ? [...found][0] : undefined;
  }
}

/** `text` with one name for another, in the letter case of each place, and the article that goes with it. */
export function renamed(text: string, from: string, to: string): string {
  const words = new SizeWords([from]);
  let result = '';
  let done = 0;
  for (const { start, end } of words.in(text)) {
    const before = text.slice(done, start);
    result += withArticle(before, from, to) + sameCase(text.slice(start, end), to);
    done = end;
  }
  return result + text.slice(done);
}

const ARTICLE = /(?<![\p{L}\p{N}])(a)(n?)(\s+)$/iu;

/** “a” or “an”, where it changes with the word behind it. */
function withArticle(before: string, from: string, to: string): string {
  const [was, is] = [from, to].map((name) => /^[aeiou]/i.test(name));
  return was === is ? before : before.replace(ARTICLE, (_, a, _n, space) => `${a}${is ? 'n' : ''}${space}`);
}

import { listed } from '../words.ts';
import { text } from './schema.ts';

/** One of a few words of the trade, in any letter case. */
export function choice<const T extends string>(...options: readonly T[]) {
  const words = listed(options, 'or');
  return text<T>({ title: words, examples: options }, (raw) => {
    const found = options.find((option) => option === raw.toLowerCase().replace(/\s+/g, ' '));
    return found ?? { problem: `Write ${words} here, not “${raw}”.` };
  });
}

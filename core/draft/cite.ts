/** The comment behind an entry: the line of the manuscript that says it, with its words. */
import type { Range } from '../findings/finding.ts';
import type { Fact, Gap } from './row.ts';

/** So much of a sentence stands on each side of its number. */
const AROUND = 28;

/**
 * @param at where the block goes
 * @param shift how many lines the block moves what stands behind that place
 */
export function citation(source: string, at: number, shift: number): (entry: Fact | Gap) => string {
  const line = ({ start }: Range) => source.slice(0, start).split('\n').length + (start >= at ? shift : 0);
  return (entry) => {
    if ('message' in entry) {
      const lines = [...new Set(entry.places.map(line))];
      return `${entry.message}${lines.length > 0 ? ` See ${lined(lines)}.` : ''}`;
    }
    const [first] = entry.from;
    if (!first) return '';
    return `${lined([...new Set(entry.from.map(line))].slice(0, MOST_LINES))}: ${quoted(source, first)}`;
  };
}

const MOST_LINES = 3;

function lined(lines: readonly number[]): string {
  return `line${lines.length > 1 ? 's' : ''} ${lines.join(', ')}`;
}

/** The words around a number, without the marks of Markdown. */
function quoted(source: string, { start, end }: Range): string {
  const before =
    source
      .slice(Math.max(0, start - AROUND), start)
      .replace(/^\S*\s/, '')
      .split('\n')
      .at(-1) ?? '';
  const behind =
    source
      .slice(end, end + AROUND)
      .replace(/\s\S*$/, '')
      .split('\n')[0] ?? '';
  const words = `${before}${source.slice(start, end)}${behind}`
    .replace(/[`*_]/g, '')
    .replace(/<!--[\s\S]*?(?:-->|$)/g, '');
  return `“${words.replace(/\s+/g, ' ').trim()}”`;
}

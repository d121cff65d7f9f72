/** Facts and gaps -> the text of a measure block, with the place of each in a comment. */

import { ENTRIES } from '../block/entries/index.ts';
import type { BlockPath } from '../block/place.ts';
import { GAP } from '../findings/gap.ts';
import type { Fact, Gap } from './row.ts';
import { writeName } from './write.ts';

/** Entries that mean nothing without this one. */
const NEEDED: readonly (readonly [parent: BlockPath, key: string])[] = [
  [['layout', 'sashing'], 'finished'],
  [['binding'], 'strip'],
  [['sleeve'], 'finished depth'],
];

/** What borders go around. */
const INSIDE: readonly BlockPath[] = [
  ['layout', 'grid'],
  ['layout', 'centre'],
];

interface Node {
  readonly key: string | number;
  fact?: Fact | undefined;
  gaps: Gap[];
  readonly children: Map<string | number, Node>;
}

/** @param cite what the comment behind an entry says; nothing for a block without comments */
export function compose(
  facts: readonly Fact[],
  gaps: readonly Gap[],
  cite: (fact: Fact | Gap) => string,
): string {
  const root = node('');
  for (const fact of whole(facts)) at(root, fact.path).fact = fact;
  for (const gap of gaps) at(root, gap.path).gaps.push(gap);
  const order = Object.keys(ENTRIES);
  const top = [...root.children.values()].sort(
    (a, b) => order.indexOf(`${a.key}`) - order.indexOf(`${b.key}`),
  );
  return top.flatMap((each) => lines(each, 0, cite)).join('\n');
}

/** Without entries whose companion is missing; without borders that stand outside of one that is not known. */
function whole(facts: readonly Fact[]): Fact[] {
  const has = (path: BlockPath) => facts.some((fact) => startsWith(fact.path, path));
  return facts.filter(({ path: [first, second, third], path }) => {
    if (first === 'borders') {
      if (!INSIDE.some(has)) return false;
      for (let index = 0; index <= Number(second); index++)
        if (!has(['borders', index, 'finished'])) return false;
      return true;
    }
    if (first === 'blocks') return has(['blocks', second ?? '', 'finished']) || third === 'finished';
    return NEEDED.every(([parent, key]) => !startsWith(path, parent) || has([...parent, key]));
  });
}

function startsWith(path: BlockPath, start: BlockPath): boolean {
  return start.every((step, index) => path[index] === step);
}

function node(key: string | number): Node {
  return { key, gaps: [], children: new Map() };
}

function at(root: Node, path: BlockPath): Node {
  return path.reduce<Node>((parent, key) => {
    const child = parent.children.get(key) ?? node(key);
    parent.children.set(key, child);
    return child;
  }, root);
}

function lines(each: Node, depth: number, cite: (fact: Fact | Gap) => string): string[] {
  const indent = '  '.repeat(depth);
  const isItem = typeof each.key === 'number';
  const head = isItem ? '-' : `${writeName(each.key as string)}:`;
  const written = each.fact ? [commented(`${indent}${head} ${each.fact.text}`, cite(each.fact))] : [];
  const missing = each.gaps.map((gap) => commented(`${indent}# ${head} ${GAP}`, cite(gap)));
  const inner = [...each.children.values()].flatMap((child) => lines(child, depth + 1, cite));
  if (inner.length === 0) return [...written, ...missing];
  const hasEntry = inner.some((line) => !line.trimStart().startsWith('#'));
  if (!hasEntry && each.fact) return [...written, ...inner, ...missing];
  const [first = '', ...rest] = inner;
  if (isItem && hasEntry && !first.trimStart().startsWith('#'))
    return [`${indent}- ${first.trimStart()}`, ...rest, ...missing];
  return [`${indent}${hasEntry ? '' : '# '}${head}`, ...inner, ...missing];
}

function commented(line: string, comment: string): string {
  return comment === '' ? line : `${line}  # ${comment}`;
}

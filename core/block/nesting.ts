/** How deeply YAML is nested, found out before anything follows the nesting by recursion. */
import type { CST } from 'yaml';

type Token = CST.Token | CST.CollectionItem | null | undefined;

/** The levels of collections inside each other. */
export function depthOf(tokens: readonly Token[]): number {
  let deepest = 0;
  const open = tokens.map((token) => ({ token, depth: 0 }));
  for (let at = open.pop(); at; at = open.pop()) {
    const { token, depth } = at;
    deepest = Math.max(deepest, depth);
    if (!token) continue;
    if ('key' in token) open.push({ token: token.key, depth });
    if ('value' in token) open.push({ token: token.value, depth });
    if ('items' in token) for (const item of token.items) open.push({ token: item, depth: depth + 1 });
  }
  return deepest;
}

/** All files that a manuscript uses, one by way of the other, fetched before it is proofread. */
import { pathUsed, type Use } from '../../core/proof/uses.ts';
import { canonicalUri } from '../manuscripts.ts';
import type { Reach, Reached } from './reach.ts';

export interface Chain {
  /** For `proofread`. */
  readonly use: Use;
  /** Canonical URIs of the files that the proof depends on, also of those that are not there. */
  readonly uris: readonly string[];
  /** What stood in those that are there, by canonical URI. */
  readonly texts: ReadonlyMap<string, string>;
}

export async function fetchChain(uri: string, source: string, reach: Pick<Reach, 'follow'>): Promise<Chain> {
  const steps = new Map<string, Reached>();
  for (let [from, text] = [uri, source]; ; ) {
    const path = pathUsed(text);
    // A step that was taken before closes a circle, which the proofreading finds again and reports.
    if (path === undefined || steps.has(step(from, path))) break;
    const reached = await reach.follow(from, path);
    steps.set(step(from, path), reached);
    if ('refused' in reached) break;
    [from, text] = [reached.uri, reached.source];
  }
  const useFrom =
    (from: string): Use =>
    (path) => {
      const reached = steps.get(step(from, path));
      if (!reached || 'refused' in reached) return { refused: reached?.refused ?? 'unreachable' };
      return { id: reached.uri, name: reached.name, source: reached.source, use: useFrom(reached.uri) };
    };
  const texts = new Map(
    [...steps.values()].flatMap((reached) =>
      'source' in reached ? [[canonicalUri(reached.uri), reached.source] as const] : [],
    ),
  );
  const uris = [...steps.values()].flatMap((reached) => (reached.uri ? [canonicalUri(reached.uri)] : []));
  return { use: useFrom(uri), uris, texts };
}

function step(from: string, path: string): string {
  return `${from}\n${path}`;
}

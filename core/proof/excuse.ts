import type { Pattern } from '../block/pattern.ts';
import type { Ledger } from '../figures/ledger.ts';

/**
 * Whether a missing figure is only the consequence of a mistake that is reported already: an entry of the block
 * that cannot be read, or a figure that exists but could not be computed.
 */
export function isExcused(id: string, pattern: Pattern, ledger: Ledger): boolean {
  if (ledger.ids.includes(id)) return true;
  const [entry] = id.split('.');
  return [...pattern.broken].some((path) => path.split('.').some((part) => part === entry || part === id));
}

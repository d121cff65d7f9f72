import { ENTRIES } from '../block/entries/index.ts';
import type { EntryKey, Pattern } from '../block/pattern.ts';
import { suggestion } from '../block/words.ts';
import type { Ledger } from '../figures/ledger.ts';

/**
 * Whether a missing figure may be only the consequence of a mistake that is reported already: of something in the
 * block that cannot be read, or of a figure that exists but could not be computed.
 */
export function isExcused(id: string, pattern: Pattern, ledger: Ledger): boolean {
  return pattern.broken.hidesFigures || ledger.ids.includes(id);
}

/** That a figure does not exist, and what to do about it: the nearest name, or the entry that would fix it. */
export function noSuchFigure(id: string, { entries }: Pattern, ledger: Ledger): string {
  const [entry = ''] = id.split('.');
  const absent = Object.hasOwn(ENTRIES, entry) && entries[entry as EntryKey] === undefined;
  const hint = absent ? ` It needs the entry “${entry}” in the measure block.` : suggestion(id, ledger.ids);
  return `There is no figure “${id}”.${hint}`;
}

/** What a figure rests on although nobody stated it, with the words for it. */
import type { Pattern } from '../block/pattern.ts';
import { listed } from '../block/words.ts';
import type { Ledger } from '../figures/ledger.ts';
import { valuesBehind } from './inputs.ts';

/** The rules of the house that decide most and that other authors set otherwise. */
const RULES = {
  'usable width': 'of usable width',
  'joining allowance': 'to join',
  overhang: 'of overhang',
} as const;

/** `with 40" of usable width and 12" to join, unless the block says otherwise`; `undefined` when all is stated. */
export function assumed(id: string, size: string, pattern: Pattern, ledger: Ledger): string | undefined {
  const read = new Set(valuesBehind(id, size, ledger).flatMap(({ assumes }) => assumes));
  const rules = (Object.keys(RULES) as (keyof typeof RULES)[]).filter(
    // Of a figure that is such a rule its own reason says so.
    (rule) => read.has(rule) && !id.endsWith(`.${rule}`),
  );
  if (rules.length === 0) return undefined;
  const told = rules.map((rule) => `${ledger.show.length(pattern.house[rule])} ${RULES[rule]}`);
  return `with ${listed(told, 'and')}, unless the block says otherwise`;
}

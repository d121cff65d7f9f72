/** What a figure rests on that the manuscript takes from another one, with the words for it. */
import type { Pattern } from '../block/pattern.ts';
import type { BlockPath } from '../block/place.ts';
import { placeWords } from '../block/placeWords.ts';
import type { Origin } from '../block/used.ts';
import { listed } from '../block/words.ts';
import type { Ledger } from '../figures/ledger.ts';
import { inputsOf } from './inputs.ts';

/** A rule that stands in another manuscript. */
interface TakenRule {
  readonly origin: Origin;
  readonly path: BlockPath;
}

/** A reader follows so many rules in one sentence. */
const MOST_TOLD = 3;

/** As a clause: `the house file house.md says 12" under “joining allowance”`; `undefined` when nothing is taken. */
export function saidElsewhere(
  id: string,
  size: string,
  pattern: Pattern,
  ledger: Ledger,
): string | undefined {
  const rules = takenRules(id, size, pattern, ledger);
  if (rules.length === 0) return undefined;
  const clauses = [...byFile(rules)].map(([name, those]) =>
    rules.length > MOST_TOLD
      ? `${those.length} of its rules stand in the house file ${name}`
      : `the house file ${name} says ${listed(
          those.map((rule) => told(rule, pattern)),
          'and',
        )}`,
  );
  return listed(clauses, 'and');
}

/** As sentences, one for each rule. */
export function saidElsewhereInFull(id: string, size: string, pattern: Pattern, ledger: Ledger): string[] {
  return takenRules(id, size, pattern, ledger).map(
    (rule) => `The house file ${rule.origin.file.name} says ${told(rule, pattern)}.`,
  );
}

function takenRules(id: string, size: string, pattern: Pattern, ledger: Ledger): TakenRule[] {
  return inputsOf(id, size, ledger).flatMap((path) => {
    const origin = pattern.origin(path);
    return origin ? [{ path, origin }] : [];
  });
}

function byFile(rules: readonly TakenRule[]): Map<string, TakenRule[]> {
  const files = new Map<string, TakenRule[]>();
  for (const rule of rules) {
    const { name } = rule.origin.file;
    files.set(name, [...(files.get(name) ?? []), rule]);
  }
  return files;
}

function told({ path, origin: { file, start, end } }: TakenRule, pattern: Pattern): string {
  const name = placeWords(path[0] === 'house' ? path.slice(1) : path, pattern);
  return `${file.source.slice(start, end)} under ${name}`;
}

/** Numbers that were right before something in the block changed. */
import type { Pattern } from '../block/pattern.ts';
import type { Ledger } from '../figures/ledger.ts';
import type { Manuscript, ReadNumber } from '../manuscript/manuscript.ts';
import { align } from './earlier/align.ts';
import { changesBetween, changesInWords } from './earlier/changes.ts';
import type { Earlier } from './earlier/earlier.ts';
import { type KeptLine, type KeptNumber, seenLines } from './earlier/keptLine.ts';
import { writtenInputs } from './inputs.ts';
import type { Stated } from './judge.ts';
import type { Tie } from './proof.ts';

export class Staleness {
  readonly #before: readonly Earlier[];
  readonly #manuscript: Manuscript;
  readonly #pattern: Pattern;
  readonly #ledger: Ledger;
  #ties: ReadonlyMap<ReadNumber, Tie> | undefined;

  /** @param before earlier states, the one first that is to be spoken of where a number was right in several */
  constructor(before: readonly Earlier[], manuscript: Manuscript, pattern: Pattern, ledger: Ledger) {
    this.#before = before;
    this.#manuscript = manuscript;
    this.#pattern = pattern;
    this.#ledger = ledger;
  }

  /** What changed since a number was right for a figure, in a clause; `undefined` for one that never was. */
  changeOf(stated: Stated, { figure, size }: Pick<Tie, 'figure' | 'size'>): string | undefined {
    const at = size ?? undefined;
    for (const earlier of this.#before) {
      if (!earlier.agrees(stated, figure.id, at)) continue;
      const changes = changesBetween(
        { inputs: earlier.inputs(figure.id, at), textAt: (path) => earlier.textAt(path) },
        {
          inputs: writtenInputs(figure.id, at, this.#pattern, this.#ledger),
          textAt: (path) => this.#pattern.textAt(path),
        },
      );
      if (changes.length > 0) return `it was right until ${changesInWords(changes, this.#pattern)}`;
    }
    return undefined;
  }

  /** What an untouched number stated when it was right, for numbers that nothing else explains any more. */
  tieOf(number: ReadNumber): Tie | undefined {
    this.#ties ??= this.#earlierTies();
    return this.#ties.get(number);
  }

  #earlierTies(): Map<ReadNumber, Tie> {
    const ties = new Map<ReadNumber, Tie>();
    const lines = this.#before.length > 0 ? seenLines(this.#manuscript) : [];
    for (const earlier of this.#before) {
      for (const { before, after } of align(earlier.lines.map(unread), lines).pairs) {
        const { read } = after.number;
        if (ties.has(read) || before.number.text !== read.text) continue;
        const tie = this.#tie(before.number.kept);
        if (tie) ties.set(read, tie);
      }
    }
    return ties;
  }

  #tie({ account, figure: id, size }: KeptNumber): Tie | undefined {
    const figure = account === 'verified' && id !== undefined ? this.#ledger.figure(id) : undefined;
    const value = figure?.values.get(size ?? this.#pattern.sizes[0]?.name ?? '');
    return (
      figure && value && { figure, size: size ?? null, value, evidence: ['it was right as such before'] }
    );
  }
}

/** A line by its words alone: what its numbers state now is what is asked. */
function unread(line: KeptLine) {
  const numbers = line.numbers.map((kept) => ({
    ...kept,
    figure: undefined,
    kept,
    text: line.text.slice(kept.start, kept.end),
  }));
  return { ...line, numbers };
}

/** The text of a manuscript while its sizes change: what its numbers state, and what they are for the new size. */
import type { FigureValue } from '../../figures/figure.ts';
import type { Ledger } from '../../figures/ledger.ts';
import { applyEdits, type Edit, type Range } from '../../findings/finding.ts';
import { GAP_MARKS, gapFor } from '../../findings/gap.ts';
import type { ReadNumber } from '../../manuscript/manuscript.ts';
import { expectedText } from '../../proof/expected.ts';
import type { Account, Proof, Tie } from '../../proof/proof.ts';
import { nounEdit } from '../../quantity/nouns.ts';
import type { Rational } from '../../quantity/rational.ts';
import type { SizeChange } from './change.ts';
import { renamed, SizeWords } from './sizeWords.ts';

export class RevisedText {
  readonly proof: Proof;
  readonly change: SizeChange;
  /** The sizes as they were, in their order. */
  readonly names: readonly string[];
  readonly words: SizeWords;
  /** The source, in which comments and gaps say nothing. */
  readonly shown: string;
  readonly #ledger: Ledger;
  readonly #accounts: ReadonlyMap<ReadNumber, Account>;

  /** @param ledger of the block as it will be */
  constructor(proof: Proof, change: SizeChange, ledger: Ledger) {
    this.proof = proof;
    this.change = change;
    this.names = proof.pattern.sizes.map(({ name }) => name);
    this.words = new SizeWords(this.names);
    this.shown = masked(proof.manuscript.source);
    this.#ledger = ledger;
    this.#accounts = new Map(proof.accounts.map((account) => [account.number, account]));
  }

  get source(): string {
    return this.proof.manuscript.source;
  }

  tie(number: ReadNumber): Tie | undefined {
    return this.#accounts.get(number)?.tie;
  }

  /** The value that a tie's figure has for the new size. */
  newValue(tie: Tie): FigureValue | undefined {
    const { change } = this;
    return change.kind === 'add' ? this.#ledger.figure(tie.figure.id)?.values.get(change.name) : undefined;
  }

  /** What a number must say for the new size, written like it; `undefined` when that cannot be computed or written. */
  newText(number: ReadNumber): { readonly text: string; readonly shown: Rational } | undefined {
    const tie = this.tie(number);
    const value = tie && this.newValue(tie);
    if (!tie || !value) return undefined;
    const habits = [...number.passage.numbers, ...this.proof.manuscript.numbers].map(
      ({ written }) => written,
    );
    const { house } = this.proof.pattern;
    const text = expectedText(number, number.passage.text, tie.figure, value, house, habits);
    return text === undefined ? undefined : { text, shown: value.shown };
  }

  /** The mark for what is missing. */
  get gap(): string {
    return this.change.kind === 'add' ? gapFor(this.change.name) : '';
  }

  numbersIn({ start, end }: Range): ReadNumber[] {
    return this.proof.manuscript.numbers.filter(
      ({ ranges }) => ranges[0].start >= start && (ranges.at(-1) ?? ranges[0]).end <= end,
    );
  }

  /**
   * A stretch of the source as it must stand for the new size: its numbers computed again, the name of the size that
   * it was about replaced. What cannot be computed becomes a gap.
   *
   * @param keeps whether a number that no figure accounts for stays as it is
   */
  copy(range: Range, model: string, keeps: boolean): string {
    const { change } = this;
    if (change.kind !== 'add') return '';
    const edits = this.numbersIn(range).flatMap((number) => this.#copied(number, model, keeps));
    const inside = edits.filter(({ start, end }) => start >= range.start && end <= range.end);
    const slice = this.source.slice(range.start, range.end);
    const shifted = inside.map((edit) => ({
      ...edit,
      start: edit.start - range.start,
      end: edit.end - range.start,
    }));
    return renamed(applyEdits(slice, shifted), model, change.name);
  }

  #copied(number: ReadNumber, model: string, keeps: boolean): Edit[] {
    const [first, ...rest] = number.ranges;
    const place = { start: first.start, end: (rest.at(-1) ?? first).end };
    if (number.notMeasurement !== undefined) return [];
    const tie = this.tie(number);
    if (!tie) return keeps ? [] : [{ ...place, text: this.gap }];
    if (tie.size !== null && tie.size !== model) return [{ ...place, text: this.gap }];
    const written = this.newText(number);
    if (!written) return [{ ...place, text: this.gap }];
    if (rest.length > 0) return written.text === number.text ? [] : [{ ...place, text: written.text }];
    return [{ ...place, text: written.text }, ...this.nounBehind(number, number.value, written.shown)];
  }

  /** The noun behind a count, in the number that another count asks for. */
  nounBehind({ passage, written, unit }: ReadNumber, was: Rational, is: Rational): Edit[] {
    const edit = unit ? undefined : nounEdit(passage.text, { ...written, value: was }, is);
    const [place, ...more] = edit ? passage.toSource(edit.start, edit.end) : [];
    return edit && place && more.length === 0 ? [{ ...place, text: edit.text }] : [];
  }
}

const MASK = '\ue000';

/** A text in which every comment, and every gap, is as long as before, but says nothing. */
function masked(text: string): string {
  const hide = (found: string) => MASK.repeat(found.length);
  return text.replace(/<!--[\s\S]*?-->/g, hide).replace(GAP_MARKS, hide);
}

/** A place that shows nothing: spaces, line breaks with what quotes them, and comments. */
export const NOTHING = `[\\s${MASK}]`;

/**
 * Sums that a text works out: "262" + 12" = 274"", and the parts that it names beside a total.
 *
 * The ledger knows from which figures each figure is computed, so a sum names its figures by itself: the total is a
 * figure, and the parts are what it is computed from.
 */
import type { Pattern } from '../block/pattern.ts';
import type { Figure, FigureValue } from '../figures/figure.ts';
import type { Ledger } from '../figures/ledger.ts';
import type { Manuscript, ReadNumber } from '../manuscript/manuscript.ts';
import { amountOf } from './judge.ts';
import type { Tie } from './proof.ts';

/** What stands between the parts of a sum, and before its total. */
const PLUS = /^["”″]?\s*(?:\+|plus)\s*$/i;
const EQUALS = /^["”″]?\s*(?:=|is|makes|equals)\s*$/i;
/** A part of so little is found in many figures by chance. */
const TELLING = 4;

type Sum = readonly [ReadNumber, ReadNumber, ReadNumber];

/** Ties for the numbers of sums that are not tied yet. */
export function tieSums(
  manuscript: Manuscript,
  pattern: Pattern,
  ledger: Ledger,
  tied: ReadonlyMap<ReadNumber, Tie>,
): [ReadNumber, Tie][] {
  return [...writtenSums(manuscript, pattern, ledger, tied), ...parts(manuscript, pattern, ledger, tied)];
}

function writtenSums(
  manuscript: Manuscript,
  pattern: Pattern,
  ledger: Ledger,
  tied: ReadonlyMap<ReadNumber, Tie>,
): [ReadNumber, Tie][] {
  return sumsIn(manuscript).flatMap((sum) => {
    const found = ledger.ids.flatMap((id) => {
      const total = ledger.figure(id);
      return total ? readAs(sum, total, pattern, ledger) : [];
    });
    const [first] = found;
    // Two figures that a sum may work out are told apart by no word that we know.
    if (!first || found.some((other) => other.some((tie, index) => !isSame(tie, first[index])))) return [];
    return sum.flatMap((number, index): [ReadNumber, Tie][] => {
      const tie = first[index];
      return tie && !tied.has(number) ? [[number, tie]] : [];
    });
  });
}

function isSame(a: Tie, b: Tie | undefined): boolean {
  return b !== undefined && a.value.shown.equals(b.value.shown) && a.figure.kind === b.figure.kind;
}

function sumsIn({ passages }: Manuscript): Sum[] {
  return passages.flatMap(({ text, numbers }) =>
    numbers.flatMap((a, index): Sum[] => {
      const [b, c] = [numbers[index + 1], numbers[index + 2]];
      if (!b || !c || [a, b, c].some(({ notMeasurement }) => notMeasurement !== undefined)) return [];
      const isSum =
        PLUS.test(text.slice(a.written.end, b.written.start)) &&
        EQUALS.test(text.slice(b.written.end, c.written.start));
      return isSum ? [[a, b, c]] : [];
    }),
  );
}

/** The ways to read a sum as a figure and two that it is computed from; one number of the three may be wrong. */
function readAs(sum: Sum, total: Figure, pattern: Pattern, ledger: Ledger): [Tie, Tie, Tie][] {
  return [...total.values].flatMap(([size, value]) => {
    const used = value.uses.flatMap((id) => tieTo(ledger.figure(id), size) ?? []);
    const whole = tieTo(total, size);
    return used.flatMap((first) =>
      used.flatMap((second): [Tie, Tie, Tie][] => {
        if (!whole || first === second || !isSumOf(whole.value, first.value, second.value)) return [];
        const ties: [Tie, Tie, Tie] = [first, second, whole];
        const right = ties.filter((tie, index) => states(sum[index], tie, pattern)).length;
        return right >= 2 ? [ties] : [];
      }),
    );
  });
}

function isSumOf(whole: FigureValue, a: FigureValue, b: FigureValue): boolean {
  return whole.shown.sub(a.shown).sub(b.shown).abs().compare(1) <= 0;
}

/** Numbers beside a tied total, each of which is what one of the total's figures is worth. */
function parts(
  { passages }: Manuscript,
  pattern: Pattern,
  ledger: Ledger,
  tied: ReadonlyMap<ReadNumber, Tie>,
): [ReadNumber, Tie][] {
  return passages.flatMap(({ numbers }) => {
    const totals = numbers.flatMap((number) => tied.get(number) ?? []);
    return numbers.flatMap((number): [ReadNumber, Tie][] => {
      if (tied.has(number) || number.notMeasurement !== undefined || !isTelling(number)) return [];
      for (const total of totals)
        for (const id of total.value.uses) {
          const tie = tieTo(ledger.figure(id), total.size);
          if (tie && states(number, tie, pattern)) return [[number, tie]];
        }
      return [];
    });
  });
}

function isTelling({ value, unit }: ReadNumber): boolean {
  return unit !== undefined && value.compare(TELLING) > 0;
}

function tieTo(figure: Figure | undefined, size: string | null): Tie | undefined {
  const value = figure && (size === null ? [...figure.values.values()][0] : figure.values.get(size));
  return figure && value && { figure, value, size, evidence: ['it is part of a sum'] };
}

function states(number: ReadNumber | undefined, { figure, value }: Tie, { house }: Pattern): boolean {
  const amount = number && amountOf(number, figure.kind, house);
  return amount?.equals(value.shown) === true;
}

/** The edits at numbers that stand one for each size, and at those that were the same for all and no longer are. */
import type { Edit } from '../../findings/finding.ts';
import { judge } from '../../proof/judge.ts';
import { type Rational, ZERO } from '../../quantity/rational.ts';
import { readNumberAt } from '../../quantity/read.ts';
import { type Element, elementsOf, type NumberSeries, numberSeries } from './numberSeries.ts';
import { type Member, reviseSeries } from './series.ts';
import type { Stretch } from './stretches.ts';
import type { RevisedText } from './text.ts';

export interface NumberEdits {
  readonly edits: readonly Edit[];
  /** The stretches of the source that speak of each size in these numbers. */
  readonly series: readonly NumberSeries[];
}

export function reviseNumbers(stretch: Stretch, text: RevisedText): NumberEdits {
  const series = numberSeries(stretch, text);
  const taken = new Set(series.flatMap(({ elements }) => elements.flatMap(({ numbers }) => numbers)));
  const single =
    text.change.kind === 'add'
      ? elementsOf(stretch, text).filter(({ numbers }) => numbers.every((number) => !taken.has(number)))
      : [];
  const edits = [
    ...series.flatMap((one) => seriesEdits(one, text)),
    ...single.flatMap((one) => expanded(one, series.some(isSlashed(text)), text)),
  ];
  return { edits, series };
}

function seriesEdits({ elements, members, isList }: NumberSeries, text: RevisedText): Edit[] {
  const { change, source } = text;
  if (change.kind === 'rename') return [];
  if (change.kind === 'drop' && isList) {
    const united = unite({ elements, members, isList }, text);
    if (united) return united;
  }
  const model = members.find(({ size }) => change.kind === 'add' && size === change.model);
  const written = model ? newMember(elements[members.indexOf(model)], model, isList, text) : '';
  const edit = reviseSeries(source, members, change, written);
  return edit ? [edit, ...(isList ? nounEdits(elements, text) : [])] : [];
}

function newMember(element: Element | undefined, model: Member, isList: boolean, text: RevisedText): string {
  // One mark is enough for the sides of a size.
  const isKnown =
    element && element.numbers.length > 0 && element.numbers.every((number) => text.newText(number));
  if (!element) return text.gap;
  if (!isKnown) {
    const around = (start: number, end: number) => text.copy({ start, end }, model.size, true);
    return (
      around(model.start, element.start) + text.gap + around(element.end, Math.max(element.end, model.end))
    );
  }
  if (!isList) return text.copy(model, model.size, true);
  const written = text.copy(element, model.size, true);
  return model.end < element.end ? numeralOf(written) : written;
}

/** A number without the mark behind it, which the list shares. */
function numeralOf(text: string): string {
  const read = readNumberAt(text, 0);
  return read ? text.slice(0, read.numeralEnd) : text;
}

/** The noun behind a list is plural as soon as one of its numbers is more than one. */
function nounEdits(elements: readonly Element[], text: RevisedText): Edit[] {
  const { change, names } = text;
  const numbers = elements.flatMap((element) => element.numbers.at(-1) ?? []);
  const last = numbers.at(-1);
  const added = last && change.kind === 'add' ? text.newText(last)?.shown : undefined;
  const kept = numbers.filter((_, index) => change.kind !== 'drop' || names[index] !== change.name);
  const now = [...kept.map(({ value }) => value), ...(added ? [added] : [])];
  return last ? text.nounBehind(last, most(numbers.map(({ value }) => value)), most(now)) : [];
}

function most(values: readonly Rational[]): Rational {
  return values.reduce((a, b) => (a.compare(b) > 0 ? a : b), ZERO);
}

/** One number for all sizes where the one that differed is dropped: nobody lists the same number. */
function unite({ elements, members }: NumberSeries, text: RevisedText): Edit[] | undefined {
  const { change, names, source } = text;
  if (change.kind !== 'drop') return undefined;
  const gone = names.indexOf(change.name);
  const written = (element: Element) => source.slice(element.start, endOf(element, members));
  const dropped = elements[gone];
  const [first, ...others] = elements.filter((_, index) => index !== gone);
  const [whole, last] = [elements[0], elements.at(-1)];
  if (!first || !dropped || !whole || !last) return undefined;
  if (others.some((other) => written(other) !== written(first))) return undefined;
  if (others.length > 0 && written(dropped) === written(first)) return undefined;
  const closing = /^["”″]?[*_]*\s*[)\]}]/.exec(source.slice(last.end))?.[0].length ?? 0;
  const mark = source.slice(endOf(last, members), last.end);
  return [
    { start: whole.start, end: last.end + closing, text: written(first) + mark },
    ...nounEdits(elements, text),
  ];
}

/** The end of a number in its list, without a mark that the list shares. */
function endOf({ start, end }: Element, members: NumberSeries['members']): number {
  return members.find((member) => member.start === start)?.end ?? end;
}

/** A number that held for all sizes becomes a list when it does not hold for the new one. */
function expanded(element: Element, isSlashed: boolean, text: RevisedText): Edit[] {
  const { change, names, proof, source } = text;
  if (change.kind !== 'add' || element.size !== null || element.figures === undefined) return [];
  const differs = element.numbers.some((number) => {
    const tie = text.tie(number);
    const value = tie && text.newValue(tie);
    if (!tie || !value) return false;
    const verdict = judge(number, tie.figure, value, proof.pattern.house);
    return verdict === 'wrong' || verdict === 'short';
  });
  if (!differs) return [];
  const old = source.slice(element.start, element.end);
  const written = text.copy(element, change.model, true);
  const at = change.after === undefined ? 0 : names.indexOf(change.after) + 1;
  const [first = old, ...rest] = names.map(() => old).toSpliced(at, 0, written);
  const list = isSlashed ? [first, ...rest].join('/') : `${first} (${rest.join(', ')})`;
  const noun = nounEdits([element], text);
  return [{ start: element.start, end: element.end, text: list }, ...noun];
}

function isSlashed({ source }: RevisedText): (series: NumberSeries) => boolean {
  return ({ members: [first, second], isList }) =>
    isList && /^\s*\/\s*$/.test(source.slice(first?.end, second?.start));
}

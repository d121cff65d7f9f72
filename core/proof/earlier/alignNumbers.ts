/** The numbers of two versions of one line, each with its partner. */
import { diffArrays } from 'diff';
import type { KeptLine, KeptNumber } from './keptLine.ts';
import { ANY, type Token, tokensOf } from './tokens.ts';

type Pairs<A extends KeptLine, B extends KeptLine> = [A['numbers'][number], B['numbers'][number]][];

/**
 * Where only numbers changed, they are paired in order, or by what they state where all of them say it: `7 (9)` may
 * have become `9 (7)` because the sizes changed places. Otherwise the words and equal numbers are laid side by side
 * first, and what is left between them after that.
 */
export function alignNumbers<A extends KeptLine, B extends KeptLine>(before: A, after: B): Pairs<A, B> {
  const [earlier, later] = [tokensOf(before), tokensOf(after)];
  const isSameSentence =
    earlier.map(({ text }) => text).join(' ') === later.map(({ text }) => text).join(' ');
  const pairs = isSameSentence
    ? (byFigure(before, after) ?? before.numbers.map((number, index) => [number, after.numbers[index]]))
    : sideBySide(earlier, later, [keyed(before), keyed(after)]).flatMap(({ one, other }) =>
        one.number && other.number ? [[one.number, other.number]] : [],
      );
  return pairs as Pairs<A, B>;
}

/** `undefined` unless the two lines state the same figures, each once. */
function byFigure(before: KeptLine, after: KeptLine): [KeptNumber, KeptNumber][] | undefined {
  const later = new Map(after.numbers.map((number) => [about(number), number]));
  if (later.size < after.numbers.length) return undefined;
  const pairs = before.numbers.flatMap((number): [KeptNumber, KeptNumber][] => {
    const key = about(number);
    const partner = key === undefined ? undefined : later.get(key);
    return partner ? [[number, partner]] : [];
  });
  return pairs.length === after.numbers.length &&
    new Set(pairs.map(([, other]) => other)).size === pairs.length
    ? pairs
    : undefined;
}

function about({ figure, size }: KeptNumber): string | undefined {
  return figure === undefined ? undefined : `${figure} @ ${size ?? ''}`;
}

/** How the numbers of a line are told apart: by what they state, or by their text. */
function keyed({ text }: KeptLine): (token: Token) => string {
  return ({ text: word, number }) =>
    number ? `${ANY} ${about(number) ?? text.slice(number.start, number.end)}` : word;
}

interface Pair {
  readonly one: Token;
  readonly other: Token;
}

/** The longest common row of tokens, and between its members that of the kinds of tokens. */
function sideBySide(
  before: readonly Token[],
  after: readonly Token[],
  keys: readonly [(token: Token) => string, (token: Token) => string] | undefined,
): Pair[] {
  const [keyBefore, keyAfter] = keys ?? [kindOf, kindOf];
  const pairs: Pair[] = [];
  let [i, j] = [0, 0];
  let [gone, come]: [Token[], Token[]] = [[], []];
  const close = () => {
    if (keys && gone.length > 0 && come.length > 0) pairs.push(...sideBySide(gone, come, undefined));
    [gone, come] = [[], []];
  };
  for (const { removed, added, count } of diffArrays(before.map(keyBefore), after.map(keyAfter))) {
    if (removed) gone.push(...before.slice(i, i + count));
    else if (added) come.push(...after.slice(j, j + count));
    else {
      close();
      for (let k = 0; k < count; k++)
        pairs.push({ one: before[i + k] as Token, other: after[j + k] as Token });
    }
    if (!added) i += count;
    if (!removed) j += count;
  }
  close();
  return pairs;
}

function kindOf({ text }: Token): string {
  return text;
}

/** What a number may state, for whoever wants to say it: asked for about single numbers, and computed then. */
import type { House } from '../block/house.ts';
import type { Figure, FigureValue } from '../figures/figure.ts';
import type { ReadNumber } from '../manuscript/manuscript.ts';
import type { SizedSpot } from '../reading/amount.ts';
import type { Candidate } from '../reading/candidates.ts';
import { type ReadPhrase, readText } from '../reading/readPhrases.ts';
import { fitOf } from './fit.ts';
import { amountOf } from './judge.ts';
import type { Proof } from './proof.ts';
import { readSize } from './readSize.ts';
import { isReserved } from './reserve.ts';

export interface PlausibleFigure {
  readonly figure: Figure;
  /** The size that is meant; `null` where the sizes do not differ, `undefined` where nothing tells. */
  readonly size: string | null | undefined;
  /** Its value in this size; `undefined` where nothing tells the size. */
  readonly value: FigureValue | undefined;
}

/** Words that fit worse than this are no reason to offer a figure. */
const HEARD = 1.5;
/** A figure with quite another value is offered only where its words fit about as well as the best. */
const ABOUT_AS_WELL = 1;
/** A number that differs as people err says a little for its figure. */
const SLIP = 0.5;

type Fit = ReturnType<typeof fitOf>;

interface Weighed extends PlausibleFigure {
  readonly fit: Fit;
  readonly weight: number;
}

/**
 * The figures that the words around a number speak of, the likeliest first. Of figures that give one thing the same
 * value, as the sides of a square do, the likeliest stands for all.
 */
export function plausibleFigures(proof: Proof, number: ReadNumber): PlausibleFigure[] {
  const { manuscript, pattern, ledger } = proof;
  const phrase = readText(manuscript, pattern, ledger).find((one) => isOf(one, number));
  if (!phrase) return [];
  const heard = phrase.candidates.filter(({ score }) => score >= HEARD);
  const wanted = (heard[0]?.score ?? 0) - ABOUT_AS_WELL;
  const mustAgree = isReserved(number, false);
  const found = new Map<string, Weighed>();
  for (const candidate of heard)
    for (const { id, spot } of readingsOf(candidate, number)) {
      const figure = ledger.figure(id);
      const weighed = figure && weigh(figure, spot, candidate, phrase, proof);
      if (!weighed || (weighed.fit === 'strange' && (candidate.isWeak || candidate.score < wanted))) continue;
      if (mustAgree && !isRight(weighed.fit)) continue;
      const key = `${candidate.thing.key}: ${[...weighed.figure.values.values()].map(({ shown }) => shown.toFraction())}`;
      if (weighed.weight > (found.get(key)?.weight ?? 0)) found.set(key, weighed);
    }
  const all = [...found.values()].sort((a, b) => b.weight - a.weight);
  const ordered = all.some(({ fit }) => isRight(fit)) ? all.filter(({ fit }) => fit !== 'strange') : all;
  return ordered.filter(({ figure }, index) => ordered.findIndex((one) => one.figure === figure) === index);
}

function isOf({ phrase: { count, size } }: ReadPhrase, number: ReadNumber): boolean {
  const sides = [count, size].flatMap((amount) => amount?.sides ?? []);
  return sides.some(({ spots, twins }) => [...spots, ...twins].some((spot) => spot.number === number));
}

function readingsOf({ readings }: Candidate, number: ReadNumber) {
  return readings.flatMap(({ side: { spots, twins }, figure: id }) => {
    const spot = [...spots, ...twins].find((one) => one.number === number);
    return spot ? [{ id, spot }] : [];
  });
}

/** `undefined` where the number cannot be meant: a length for a count. */
function weigh(
  figure: Figure,
  spot: SizedSpot,
  { score }: Candidate,
  { evidence }: ReadPhrase,
  { pattern, pattern: { house } }: Proof,
): Weighed | undefined {
  const { number } = spot;
  if (!amountOf(number, figure.kind, house)) return undefined;
  const known = readSize(figure, spot, evidence, pattern) ?? onlyRight(figure, number, house);
  if (!known && spot.size !== undefined) return undefined;
  const fit = known ? fitOf(number, figure, known.value, house) : anyFit(figure, number, house);
  const weight = score + (isRight(fit) ? fit : fit === 'slip' ? SLIP : 0);
  return { figure, size: known?.size, value: known?.value, fit, weight };
}

function isRight(fit: Fit): fit is number {
  return typeof fit === 'number';
}

/** What the words leave open, a value that fits one size best may tell. */
function onlyRight(figure: Figure, number: ReadNumber, house: House) {
  const right = [...figure.values].flatMap(([size, value]) => {
    const fit = fitOf(number, figure, value, house);
    return isRight(fit) ? [{ size, value, fit }] : [];
  });
  const [first, second] = right.sort((a, b) => b.fit - a.fit);
  return first && first.fit > (second?.fit ?? 0) ? first : undefined;
}

function anyFit(figure: Figure, number: ReadNumber, house: House): Fit {
  const all = [...figure.values.values()].map((value) => fitOf(number, figure, value, house));
  return all.find(isRight) ?? (all.includes('slip') ? 'slip' : 'strange');
}

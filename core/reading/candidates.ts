/** What a phrase may speak of: every thing of the quilt that its words allow, with the clues for and against. */
import type { ReadNumber } from '../manuscript/manuscript.ts';
import type { Amount, Side } from './amount.ts';
import { type Concept, type ConceptClass, classOf } from './concept.ts';
import { BESIDE, type Clue, type Evidence, withoutRepeats } from './evidence.ts';
import type { Phrase } from './phrase.ts';
import type { Slot, Thing, Want } from './things/index.ts';

/** One side of an amount, read as one figure. */
export interface Reading {
  readonly side: Side;
  readonly figure: string;
}

export interface Candidate {
  readonly thing: Thing;
  readonly readings: readonly Reading[];
  /** How well the words fit; numbers are not looked at yet. */
  readonly score: number;
  /** The same without what the phrases beside it say. */
  readonly said: number;
  /** For the author, the strongest first. */
  readonly clues: readonly string[];
  /** Something that the trade would say is missing: enough to leave a number alone, never enough to tie it. */
  readonly isWeak: boolean;
  /** The very words that it is called by are missing: no number can say them instead. */
  readonly isUnsaid: boolean;
}

/** How much it speaks against a thing that something else of a class is named nearer. */
const AGAINST: Readonly<Record<ConceptClass, number>> = {
  part: 5,
  border: 5,
  fabric: 4.5,
  name: 5,
  form: 6,
  state: 4,
  axis: 6,
  edge: 8,
  act: 0,
  scope: 2,
  size: 0,
};
/** What is named in a sentence before still holds for these classes; how something is measured is said each time. */
const CARRIES: ReadonlySet<ConceptClass> = new Set(['part', 'border', 'fabric', 'name']);
const OWN_SENTENCE = 0.62;
/** Where the clause itself names one, what another clause names is of no account. */
const DECIDES: ReadonlySet<ConceptClass> = new Set(['axis', 'edge', 'state']);
/** An amount of the phrase that the thing has no figure for, or that it has one for and leaves alone. */
const LEFT_OVER = 2.5;
const LEFT_ALONE = 3.5;
/** Needed words that are no concept must stand in the sentence itself, or at the head of its column. */
const SAID = 0.6;
/** In the sentence, though perhaps behind the number. */
const BEHIND = 0.45;
const CERTAIN = 0.94;
/** What so many fat quarters can be. */
const PRECUTS = /^(?:own|fabric)\./;
/** What a distance from a line or an edge can be: the author's own figure, a seam, the binding's joining. */
const DISTANCES = /^(?:own\.|house (?:backing )?seam$)/;
/** A thing that so much speaks against is not looked at further. */
const HOPELESS = -2;
/** A needed word must be at least so near. */
const NEAR_ENOUGH = 0.2;

export function candidatesFor(phrase: Phrase, evidence: Evidence, things: readonly Thing[]): Candidate[] {
  // What is left over is counted by no figure but those of what is left over.
  const isSpare = evidence.strength('form:spare') >= BESIDE;
  const isUnderstood = evidence.hasUnits;
  // "20 blocks use 40": what they are made of.
  const isContent = evidence.strength('act:content') >= BESIDE;
  const isPrecut = evidence.strength('form:fat quarter') >= CERTAIN && !phrase.size;
  const isDistance = evidence.strength('form:gap', 'form:tail') >= BESIDE;
  // "Lay two of them on opposite corners": most likely a part of what was counted before, which no figure fixes.
  const isPart = isPartOfThem(evidence);
  // "From each fat quarter, cut:" so many of each one are counted by few figures.
  const isOfEach = evidence.strength('scope:container') >= SAID;
  return things.flatMap((thing) => {
    if (isSpare && !thing.slots.some(({ figure }) => figure.endsWith('.spare'))) return [];
    if (isDistance && !DISTANCES.test(thing.key)) return [];
    if (isPrecut && !PRECUTS.test(thing.key)) return [];
    if (isContent && thing.topic.startsWith('block.')) return [];
    const base = weigh(thing.wants, evidence);
    if (base.score - against(thing.wants, thing.against ?? [], evidence) < HOPELESS) return [];
    const counts = optionsFor(phrase.count, thing, isUnderstood, isOfEach);
    const sizes = optionsFor(phrase.size, thing, isUnderstood);
    return pairs(counts, sizes)
      .filter(({ readings }) => readings.length > 0)
      .map(({ readings, wants, cost }): Candidate => {
        const own = weigh(wants, evidence);
        const rivals = against([...thing.wants, ...wants], thing.against ?? [], evidence);
        const score = base.score + own.score + (thing.prior ?? 0) - rivals - cost;
        return {
          thing,
          readings,
          score,
          said: score,
          get clues() {
            const all = [...base.clues, ...own.clues].sort((a, b) => b.weight - a.weight);
            // What is done with a thing tells an author less than what it is called.
            const names = all.filter(({ clue }) => classOf(clue.says) !== 'act');
            const clues = names.length > 0 ? names : all;
            return withoutRepeats(clues.map(({ clue }) => clue.words())).slice(0, 3);
          },
          isWeak: isPart || base.isWeak || own.isWeak,
          isUnsaid: base.isUnsaid || own.isUnsaid,
        };
      });
  });
}

function isPartOfThem(evidence: Evidence): boolean {
  return (
    evidence.strength('form:them') >= BESIDE &&
    evidence.strength('act:make', 'act:total', 'scope:total') < BESIDE
  );
}

/** The ways to read an amount of the phrase, or to leave it to another thing. */
function optionsFor(
  amount: Amount | undefined,
  thing: Thing,
  isUnderstood: boolean,
  isFree = false,
): Option[] {
  if (!amount) return [NOTHING];
  const options = readAmount(amount, thing, isUnderstood);
  return [...options, { ...NOTHING, cost: isFree ? 0.5 : options.length > 0 ? LEFT_ALONE : LEFT_OVER }];
}

interface Weighed {
  readonly score: number;
  readonly clues: readonly { readonly clue: Clue; readonly weight: number }[];
  /** Whether something needed is not said. */
  readonly isWeak: boolean;
  /** Whether something needed is a word of its own that is not said. */
  readonly isUnsaid: boolean;
}

function weigh(wants: readonly Want[], evidence: Evidence): Weighed {
  let score = 0;
  let isWeak = false;
  let isUnsaid = false;
  const clues: { clue: Clue; weight: number }[] = [];
  for (const { concepts, words, weight, needed, nearby } of wants) {
    const clue: Clue | undefined = words ? evidence.words(words) : evidence.clue(concepts);
    if (needed && (clue?.strength ?? 0) < (words ? SAID : nearby ? BEHIND : NEAR_ENOUGH)) {
      isWeak = true;
      isUnsaid ||= words !== undefined;
    }
    if (!clue) continue;
    score += weight * clue.strength;
    clues.push({ clue, weight: weight * clue.strength });
  }
  return { score, clues, isWeak, isUnsaid };
}

/** What is named nearer than what the thing wants of the same class; one want may be met by any of its concepts. */
function against(wants: readonly Want[], more: readonly ConceptClass[], evidence: Evidence): number {
  const wanted = new Map<ConceptClass, { concepts: Concept[]; strength: number }>();
  for (const each of more) wanted.set(each, { concepts: [], strength: 0 });
  for (const { concepts, free } of wants) {
    if (free) continue;
    const strength = evidence.strength(...concepts);
    for (const concept of concepts) {
      const known = wanted.get(classOf(concept)) ?? { concepts: [], strength: 0 };
      wanted.set(classOf(concept), {
        concepts: [...known.concepts, concept],
        strength: Math.max(known.strength, strength),
      });
    }
  }
  let cost = 0;
  for (const [each, { concepts, strength }] of wanted) {
    if (AGAINST[each] === 0) continue;
    const rival =
      evidence.rival(each, each === 'part' ? [...concepts, 'part:quilt'] : concepts)?.strength ?? 0;
    if (rival < (CARRIES.has(each) ? 0 : OWN_SENTENCE)) continue;
    const own = DECIDES.has(each) && rival >= BESIDE && strength < BESIDE ? 0 : strength;
    cost += AGAINST[each] * Math.max(0, rival - own);
  }
  return cost;
}

interface Option {
  readonly readings: readonly Reading[];
  readonly wants: readonly Want[];
  readonly cost: number;
}

const NOTHING: Option = { readings: [], wants: [], cost: 0 };

function pairs(left: readonly Option[], right: readonly Option[]): Option[] {
  return left.flatMap((a) =>
    right.map((b) => ({
      readings: [...a.readings, ...b.readings],
      wants: [...a.wants, ...b.wants],
      cost: a.cost + b.cost,
    })),
  );
}

/** The ways in which an amount fits the slots of a thing. */
function readAmount({ sides, isGrid }: Amount, thing: Thing, isUnderstood: boolean): Option[] {
  const [first, second] = sides;
  const one = (slot: Slot, side: Side): Option[] => {
    const cost = misfit(side, slot, isGrid, isUnderstood);
    if (cost === undefined) return [];
    return [{ readings: [{ side, figure: slot.figure }], wants: slot.wants, cost }];
  };
  if (!second)
    return thing.slots.flatMap((slot) =>
      slot.takes === 'across' || slot.takes === 'down' ? [] : one(slot, first),
    );
  const of = (takes: Slot['takes']) => thing.slots.filter((slot) => slot.takes === takes);
  const both = (a: readonly Slot[], b: readonly Slot[], cost: number): Option[] =>
    a.flatMap((x) =>
      b.flatMap((y) =>
        pairs(one(x, first), one(y, second)).flatMap((option) =>
          option.readings.length === 2
            ? [{ ...option, wants: option.wants.filter(isOfBoth), cost: option.cost + cost }]
            : [],
        ),
      ),
    );
  return [
    ...both(of('width'), of('length'), -SHAPE),
    ...both(of('length'), of('width'), TURNED - SHAPE),
    ...of('side').flatMap((slot) => both([slot], [slot], -SHAPE - 0.1)),
    ...(isGrid
      ? [...both(of('across'), of('down'), -SHAPE), ...both(of('down'), of('across'), TURNED - SHAPE)]
      : []),
  ];
}

/** Which side is which needs no word where both are given. */
function isOfBoth({ concepts }: Want): boolean {
  return !concepts.some((concept) => classOf(concept) === 'axis');
}

/** Two sides are said of what has two sides. */
const SHAPE = 1;
/** The longer side is seldom given first. */
const TURNED = 0.3;

/** "two", where no unit says that it is a length. */
function isCountWord({ unit, kind, written }: ReadNumber): boolean {
  return unit === undefined && kind === 'count' && written.notation.numeral.form === 'words';
}

/**
 * How ill a number fits a slot by its unit; `undefined` when it cannot be meant.
 *
 * @param isUnderstood whether the sentence has lengths with a unit, so that a bare number may be one too
 */
function misfit(
  { spots }: Side,
  { takes }: Slot,
  isGrid: boolean,
  isUnderstood: boolean,
): number | undefined {
  const units = spots.map(({ number }) => number.unit);
  const isCount = spots.every(
    ({ number }) => number.kind === 'count' || (isGrid && number.unit === undefined),
  );
  if (takes === 'count' || takes === 'across' || takes === 'down')
    return isCount && units.every((unit) => !unit) ? 0 : undefined;
  if (spots.some(({ number }) => number.kind === 'fraction-of' || isCountWord(number))) return undefined;
  const unit = units.find((each) => each !== undefined);
  if (takes === 'yardage') {
    if (unit === 'yd' || unit === 'm') return 0;
    if (unit === 'cm') return 0.5;
    return unit ? undefined : isCount ? 2 : 0.5;
  }
  if (unit === 'yd') return 4;
  return unit ? 0 : isCount ? (isUnderstood ? 1.5 : 3.5) : 0.5;
}

/** Things: what figures belong to one thing of the quilt, and with which words the trade speaks of it. */
import type { Pattern } from '../../block/pattern.ts';
import type { Ledger } from '../../figures/ledger.ts';
import type { Concept, ConceptClass } from '../concept.ts';

/** What should be said near a number of the thing. */
export interface Want {
  /** Any of these. */
  readonly concepts: readonly Concept[];
  /** Instead of concepts: all of these words, without their plurals. */
  readonly words?: readonly string[];
  readonly weight: number;
  /** Without it, the text does not speak of the thing. */
  readonly needed?: boolean;
  /** Whether a sentence before will not do. */
  readonly nearby?: boolean;
  /** Whether nothing else of the class speaks against the thing. */
  readonly free?: boolean;
}

export interface Slot {
  /** Its figure. */
  readonly figure: string;
  /** `side`: any one measure of the thing, or either of two equal ones; `across` and `down`: the counts of a grid. */
  readonly takes: 'count' | 'across' | 'down' | 'width' | 'length' | 'side' | 'yardage';
  readonly wants: readonly Want[];
}

export interface Thing {
  readonly key: string;
  /** What a text goes on to speak of: `border 1` for its strips, its sides and the quilt with it. */
  readonly topic: string;
  readonly wants: readonly Want[];
  readonly slots: readonly Slot[];
  /** Classes of which nothing is wanted, so that whatever is named of them speaks against the thing. */
  readonly against?: readonly ConceptClass[];
  /** How much likelier it is spoken of than others of which the same is said. */
  readonly prior?: number;
}

/** What the tables of things may look at. */
export interface Quilt {
  readonly pattern: Pattern;
  readonly ledger: Ledger;
  has(id: string): boolean;
  /** The fabrics of which nothing else is made, so that naming one names the part. */
  only(topic: string): readonly Concept[];
}

/** What is measured while the quilt is made still has its seam allowances; what is trimmed or checked has them surely. */
export const MEASURED = ['state:measured', 'state:checked'] as const satisfies readonly Concept[];
export const UNFINISHED = [
  'state:unfinished',
  'state:trimmed',
  ...MEASURED,
] as const satisfies readonly Concept[];

export function want(weight: number, ...concepts: Concept[]): Want {
  return { concepts, weight };
}

/** What speaks for the thing where it is said, while nothing else that is said speaks against it. */
export function bonus(weight: number, ...concepts: Concept[]): Want {
  return { concepts, weight, free: true };
}

export function need(weight: number, ...concepts: Concept[]): Want {
  return { concepts, weight, needed: true };
}

/** All of these words, none of which is a concept. */
export function said(weight: number, ...words: string[]): Want {
  return { concepts: [], words, weight };
}

/** Words without which the text does not speak of the thing. */
export function mustSay(weight: number, ...words: string[]): Want {
  return { ...said(weight, ...words), needed: true };
}

/** What must be said in the sentence itself. */
export function nearby(each: Want): Want {
  return { ...each, nearby: true };
}

export function slot(takes: Slot['takes'], figure: string, ...wants: Want[]): Slot {
  return { takes, figure, wants };
}

/**
 * A thing with those of its slots whose figures the pattern has; nothing when it has none of them.
 *
 * @param topic what it is a stage or a part of: `border.1`
 * @param stage which one: `strips`; empty for the topic itself
 */
export function thing(
  { has }: Quilt,
  topic: string,
  stage: string,
  wants: readonly (Want | undefined)[],
  slots: readonly Slot[],
  { against = [], prior = 0 }: Pick<Thing, 'against' | 'prior'> = {},
): Thing[] {
  const known = slots.filter(({ figure }) => has(figure));
  const key = stage === '' ? topic : `${topic} ${stage}`;
  return known.length === 0
    ? []
    : [{ key, topic, wants: wants.filter((each) => each !== undefined), slots: known, against, prior }];
}

/** That a thing is cut from one of these fabrics. */
export function fabricWant(labels: readonly ({ readonly label: string } | undefined)[]): Want | undefined {
  const known = labels.flatMap((each) => (each ? [`fabric:${each.label}` as const] : []));
  return known.length > 0 ? want(2.5, ...known) : undefined;
}

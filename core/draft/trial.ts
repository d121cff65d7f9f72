/**
 * The draft on trial: the manuscript is proofread with the block, and an entry that a number of the text contradicts is
 * left out, with both places. Nobody knows which of the two is wrong.
 */
import type { BlockPath } from '../block/place.ts';
import type { Range } from '../findings/finding.ts';
import type { Proof } from '../proof/proof.ts';
import { proofread } from '../proof/proofread.ts';
import { compose } from './compose.ts';
import type { Fact, Gap } from './row.ts';
import { writeName } from './write.ts';

export interface Tried {
  readonly facts: readonly Fact[];
  /** What was left out, in the order in which it was. */
  readonly out: readonly Gap[];
  readonly proof: Proof;
}

interface Trial {
  readonly facts: readonly Fact[];
  readonly proof: Proof;
  readonly objections: readonly Objection[];
}

/** What speaks against a draft, and the entries that it follows from. */
interface Objection extends Range {
  readonly message: string;
  readonly inputs: readonly BlockPath[];
  /** The figure that a number differs from; empty for a mistake in the block. */
  readonly figure: string;
}

export function tryFacts(source: string, facts: readonly Fact[]): Tried {
  let trial = run(source, facts);
  const out: Gap[] = [];
  while (trial.objections.length > 0) {
    const best = waysOut(trial)
      .map((way) => ({ ...way, without: run(source, way.facts) }))
      .sort((a, b) => better(b.without, a.without))[0];
    if (!best) break;
    out.push(leftOut(best.fact, trial));
    trial = best.without;
  }
  return { facts: trial.facts, out, proof: trial.proof };
}

/** Not an entry, but the place of a gap below a fabric: nothing that is cut from it is written. */
const CUT = 'what is cut from it';

interface WayOut {
  readonly facts: readonly Fact[];
  /** What is left out. */
  readonly fact: Fact;
}

/** One entry less; or all entries that cut from a fabric of which not enough, or too much, would be cut. */
function waysOut(trial: Trial): WayOut[] {
  const fabrics = trial.facts.filter(({ path: [entry, label] }) =>
    trial.objections.some(({ figure }) => entry === 'fabrics' && figure.startsWith(`fabric.${label}.`)),
  );
  return [
    ...suspects(trial).map((fact) => ({ fact, facts: trial.facts.filter((each) => each !== fact) })),
    ...fabrics.map((fabric) => ({
      fact: { ...fabric, path: [...fabric.path, CUT] },
      facts: withoutFabric(trial.facts, writeName(`${fabric.path[1]}`)),
    })),
  ];
}

/** The same without a word of what is cut from a fabric. */
function withoutFabric(facts: readonly Fact[], label: string): Fact[] {
  return facts.flatMap((fact) => {
    const last = fact.path.at(-1);
    if ((last === 'from' || last === 'cornerstones') && fact.text === label) return [];
    return [{ ...fact, text: fact.text.replace(`, from: ${label} }`, ' }') }];
  });
}

/** Fewer objections first, then more numbers verified. */
function better(a: Trial, b: Trial): number {
  return b.objections.length - a.objections.length || a.proof.coverage.verified - b.proof.coverage.verified;
}

function run(source: string, facts: readonly Fact[]): Trial {
  const block = fenced(compose(facts, [], () => ''));
  const proof = proofread({ source: `${source}\n\n${block}` });
  const { accounts, findings, pattern } = proof;
  const end = source.length;
  return {
    facts,
    proof,
    objections: [
      ...accounts.flatMap(({ kind, tie, number, expected }): Objection[] => {
        if (kind !== 'wrong' && kind !== 'short' && kind !== 'generous') return [];
        const { start, end } = number.ranges[0];
        const message =
          tie && expected ? `${tie.figure.title} would be ${expected}, not ${number.text}.` : '';
        return tie ? [{ start, end, message, inputs: tie.value.inputs, figure: tie.figure.id }] : [];
      }),
      ...findings
        .filter(({ severity, start }) => severity === 'error' && start >= end)
        .map(({ start, end, message }) => ({
          start,
          end,
          message,
          inputs: [pattern.pathAt(start) ?? []],
          figure: '',
        })),
    ],
  };
}

export function fenced(block: string): string {
  return `\`\`\`measure\n${block}\n\`\`\`\n`;
}

/** The entries that an objection follows from; all of them where none is known. */
function suspects({ facts, objections }: Trial): readonly Fact[] {
  const inputs = objections.flatMap((objection) => objection.inputs);
  const found = facts.filter(({ path }) =>
    inputs.some((input) => isWithin(input, path) || isWithin(path, input)),
  );
  const able = found.filter(({ path }) => path.length > 0 && path[0] !== 'sizes' && path[0] !== 'fabrics');
  return able.length > 0 ? able : facts;
}

function isWithin(path: BlockPath, around: BlockPath): boolean {
  return around.length > 0 && around.every((step, index) => path[index] === step);
}

function leftOut(fact: Fact, { objections }: Trial): Gap {
  const against = objections.filter(({ inputs }) => inputs.some((input) => isWithin(input, fact.path)));
  const [first] = against.length > 0 ? against : objections;
  const { path, title, text, from } = fact;
  return {
    path,
    title,
    message:
      path.at(-1) === CUT
        ? `What is cut from ${title} is not told in full, or one of its amounts is wrong: ${lowered(first?.message ?? '')}`
        : `With ${text} for ${title}, ${lowered(first?.message ?? '')}`,
    places: [
      ...from.slice(0, 1).map((at) => ({ ...at, says: `Here ${title} is ${text}.` })),
      ...(first ? [{ start: first.start, end: first.end, says: first.message }] : []),
    ],
  };
}

function lowered(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}

/**
 * What stands behind a place in a manuscript: the figure of a tied number or of a stated value with its working,
 * or the figures that follow from an entry of the block.
 */
import type { BlockPath } from '../block/place.ts';
import type { Figure } from '../figures/figure.ts';
import type { Range } from '../findings/finding.ts';
import { saidElsewhereInFull } from '../proof/origins.ts';
import type { Account, AccountKind, Proof, Tie } from '../proof/proof.ts';

export interface Explanation {
  /** The place that is explained. */
  readonly range: Range;
  readonly title: string;
  /** What the author states, against what it should be; `undefined` for an entry. */
  readonly verdict: string | undefined;
  /** Whether a finding says the same. */
  readonly isReported: boolean;
  /** Values per size; one column without a name where the sizes do not differ. */
  readonly table: ValueTable;
  /** The working, step by step. */
  readonly working: readonly string[];
  /** The size whose working it is; `undefined` where the sizes do not differ. */
  readonly workingOf: string | undefined;
  /** Why the tool ties the number to this figure. */
  readonly evidence: readonly string[];
}

export interface ValueTable {
  /** A list of figures, each with its title; otherwise the one figure that the explanation is about. */
  readonly isList: boolean;
  readonly sizes: readonly string[];
  readonly rows: readonly ValueRow[];
}

export interface ValueRow {
  readonly title: string;
  /** One must cut or buy so much or more. */
  readonly atLeast: boolean;
  readonly values: readonly string[];
}

/** A block fixes many figures; a hover shows as many as one can take in. */
const MOST_ROWS = 24;

/** @returns `undefined` where there is nothing to explain */
export function explain(proof: Proof, offset: number): Explanation | undefined {
  const stated = statedAt(proof, offset);
  if (stated) return explainStated(proof, stated);
  const path = proof.pattern.pathAt(offset);
  return path && explainEntry(proof, path, offset);
}

/** A value that the author states, in a sentence or in the block, and how it came out. */
interface Stated {
  readonly range: Range;
  readonly text: string;
  readonly tie: Tie;
  readonly kind: AccountKind;
  readonly expected: string | undefined;
}

/** @returns `undefined` for a number that no figure accounts for */
export function explainNumber(
  proof: Proof,
  { number, tie, kind, expected }: Account,
): Explanation | undefined {
  const [range] = number.ranges;
  return tie && explainStated(proof, { range, text: number.text, tie, kind, expected });
}

function statedAt({ accounts, statements, manuscript }: Proof, offset: number): Stated | undefined {
  for (const { number, tie, kind, expected } of accounts) {
    const range = tie && number.ranges.find((one) => holds(one, offset));
    if (range) return { range, text: number.text, tie, kind, expected };
  }
  const statement = statements.find((one) => holds(one, offset));
  if (!statement) return undefined;
  const { start, end, tie, assessment } = statement;
  const text = manuscript.source.slice(start, end);
  return { range: { start, end }, text, tie, kind: assessment.kind, expected: assessment.expected };
}

function explainStated(proof: Proof, { range, tie, ...stated }: Stated): Explanation {
  const { figure, size, value, evidence } = tie;
  const table = tableOf(proof, [figure], false);
  const workingOf = table.sizes.length > 1 ? (size ?? undefined) : undefined;
  return {
    range,
    title: figure.title,
    verdict: verdictOf(stated),
    isReported: stated.kind !== 'verified',
    table,
    working: [...value.working, ...elsewhere(proof, figure, size)],
    workingOf,
    evidence,
  };
}

/** Which rules of the working another manuscript says. */
function elsewhere({ pattern, ledger }: Proof, { id }: Figure, size: string | null): string[] {
  return saidElsewhereInFull(id, size ?? pattern.sizes[0]?.name ?? '', pattern, ledger);
}

function verdictOf({ kind, text, expected }: Pick<Stated, 'kind' | 'text' | 'expected'>): string | undefined {
  switch (kind) {
    case 'verified':
      return `${text} is right.`;
    case 'generous':
      return `${text} is enough, and more than needed${expected === undefined ? '' : `: ${expected} would do`}.`;
    case 'wrong':
    case 'stale':
    case 'short':
      return `Here stands ${text}${expected === undefined ? ', which is not right' : `; it should be ${expected}`}.`;
    default:
      return undefined;
  }
}

function explainEntry(proof: Proof, path: BlockPath, offset: number): Explanation | undefined {
  const range = [proof.pattern.place(path), proof.pattern.keyPlace(path)].find(
    (place) => place && holds(place, offset),
  );
  const size = path[2];
  if (!range) return undefined;
  const figure = figureOf(proof, path);
  if (figure) return explainFigure(proof, figure, range, size);
  const figures = figuresBehind(proof, path);
  if (figures.length === 0) return undefined;
  return {
    range,
    title: `What follows from “${String(path.at(-1))}”`,
    verdict: undefined,
    isReported: false,
    table: tableOf(proof, figures.slice(0, MOST_ROWS), true),
    working: [],
    workingOf: undefined,
    evidence: [],
  };
}

function explainFigure(
  proof: Proof,
  figure: Figure,
  range: Range,
  size: string | number | undefined,
): Explanation {
  const table = tableOf(proof, [figure], false);
  const named = typeof size === 'number' ? proof.pattern.sizes[size]?.name : size;
  const differs = table.sizes.length > 1;
  const value = differs ? figure.values.get(named ?? '') : [...figure.values.values()][0];
  const workingOf = differs && value ? named : undefined;
  const working = value ? [...value.working, ...elsewhere(proof, figure, workingOf ?? null)] : [];
  return {
    range,
    title: figure.title,
    verdict: undefined,
    isReported: false,
    table,
    working,
    workingOf,
    evidence: [],
  };
}

/** The one figure that an entry is, or names. */
function figureOf({ ledger }: Proof, path: BlockPath): Figure | undefined {
  const [entry, name] = path;
  // A house rule is a figure too, but the author wants to know what it decides.
  if (entry === 'house') return undefined;
  const id = entry === 'states' || entry === 'figures' ? name : path.join('.');
  return typeof id === 'string' ? ledger.figure(id) : undefined;
}

/** The figures of an entry by their names; for house rules and fabrics, the figures that were computed with them. */
function figuresBehind({ ledger }: Proof, path: BlockPath): Figure[] {
  const all = ledger.ids
    .flatMap((id) => ledger.figure(id) ?? [])
    .filter(({ id }) => !id.startsWith('house.'));
  const named = all.filter(({ id }) => id.startsWith(`${String(path[0])}.`));
  if (named.length > 0) return named;
  const follows = new Set<string>();
  // Figures stand in the order of the block, not of their use: go on until none is added.
  for (let before = -1; before !== follows.size; ) {
    before = follows.size;
    for (const figure of all) if (comesFrom(figure, path, follows)) follows.add(figure.id);
  }
  return all.filter(({ id }) => follows.has(id));
}

function comesFrom({ values }: Figure, path: BlockPath, follows: ReadonlySet<string>): boolean {
  return [...values.values()].some(
    ({ inputs, uses }) =>
      inputs.some((input) => path.every((step, index) => input[index] === step)) ||
      uses.some((id) => follows.has(id)),
  );
}

function tableOf({ pattern, ledger }: Proof, figures: readonly Figure[], isList: boolean): ValueTable {
  const sizes = pattern.sizes.map(({ name }) => name);
  const rows = figures.map(({ title, kind, rule, values }) => ({
    title,
    atLeast: rule === 'at least',
    values: sizes.map((size) => {
      const value = values.get(size);
      return value ? ledger.show.figure(value, kind) : '–';
    }),
  }));
  const differs = rows.some(({ values }) => values.some((value) => value !== values[0]));
  if (differs) return { isList, sizes, rows };
  return { isList, sizes: [''], rows: rows.map((row) => ({ ...row, values: row.values.slice(0, 1) })) };
}

/** The cursor behind the last character still points at the number. */
function holds({ start, end }: Range, offset: number): boolean {
  return start <= offset && offset <= end;
}

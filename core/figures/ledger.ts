/** Every figure that a pattern fixes, computed when it is first asked for. */
import type { Pattern } from '../block/pattern.ts';
import type { Size } from '../block/values/perSize.ts';
import { CODES } from '../findings/codes.ts';
import type { Finding, Range } from '../findings/finding.ts';
import { ONE } from '../quantity/rational.ts';
import { roundDown, roundUp } from '../quantity/real.ts';
import { type Definition, type Derived, FigureError, type Objection, type Room } from './definition.ts';
import { Derivation, type FigureSource } from './derivation.ts';
import type { Figure, FigureKind, FigureValue } from './figure.ts';
import { ROOMS } from './rooms.ts';
import { Show } from './show.ts';
import { Watch } from './watch.ts';

export interface Ledger {
  /** Ids of all figures, in the order of the block. */
  readonly ids: readonly string[];
  /** How this pattern writes its values. */
  readonly show: Show;
  /** What computing with the pattern has found wrong with it. */
  readonly findings: readonly Finding[];
  /** `undefined` when the pattern does not fix such a figure, or it cannot be computed for any size. */
  figure(id: string): Figure | undefined;
}

export function openLedger(pattern: Pattern, rooms: readonly Room[] = ROOMS): Ledger {
  const ledger = new PatternLedger(pattern, rooms);
  ledger.findings = ledger.check();
  return ledger;
}

/** The figures of a pattern that is not the author's: computed as they are asked for, and nothing is said against it. */
export function supposeLedger(pattern: Pattern): Pick<Ledger, 'figure'> {
  return new PatternLedger(pattern, ROOMS);
}

/** A longer row of figures, each of which waits for the next, is no pattern's, and would exhaust the stack. */
const MOST_OPEN = 100;

class PatternLedger implements Ledger {
  readonly show: Show;
  findings: readonly Finding[] = [];
  readonly #pattern: Pattern;
  readonly #rooms: readonly Room[];
  readonly #definitions = new Map<string, Definition>();
  readonly #figures = new Map<string, Figure | undefined>();
  readonly #objections = new Map<string, Objection>();
  /** Figures under computation, outermost first: one that is asked for again depends on itself. */
  readonly #open: string[] = [];

  readonly #source: FigureSource = {
    ids: () => this.ids,
    value: (id, size) => this.figure(id)?.values.get(size.name),
    kind: (id) => this.figure(id)?.kind,
    memo: (size) => {
      const known = this.#memos.get(size.name) ?? new Map();
      this.#memos.set(size.name, known);
      return known;
    },
  };
  readonly #memos = new Map<string, ReturnType<FigureSource['memo']>>();

  constructor(pattern: Pattern, rooms: readonly Room[]) {
    this.#pattern = pattern;
    this.#rooms = rooms;
    this.show = new Show(pattern.house.system);
    for (const definition of rooms.flatMap((room) => room.define(pattern)))
      if (!this.#definitions.has(definition.id)) this.#definitions.set(definition.id, definition);
  }

  get ids(): readonly string[] {
    return [...this.#definitions.keys()];
  }

  figure(id: string): Figure | undefined {
    if (this.#figures.has(id)) return this.#figures.get(id);
    const definition = this.#definitions.get(id);
    if (!definition) return undefined;
    if (this.#open.includes(id)) throw circle(id, this.#open);
    if (this.#open.length > MOST_OPEN) throw tooLong(id);
    this.#open.push(id);
    try {
      const figure = this.#compute(definition);
      this.#figures.set(id, figure);
      return figure;
    } finally {
      this.#open.pop();
    }
  }

  check(): Finding[] {
    for (const id of this.#definitions.keys()) this.figure(id);
    const objections = [
      ...this.#objections.values(),
      ...this.#rooms.flatMap((room) => {
        const watch = new Watch(this.#pattern);
        const found = room.check?.(watch.pattern, this) ?? [];
        return watch.isSpoiled ? [] : found;
      }),
    ];
    return objections.flatMap((objection) => this.#finding(objection));
  }

  #compute(definition: Definition): Figure | undefined {
    const values = new Map<string, FigureValue>();
    let { kind } = definition;
    for (const size of this.#pattern.sizes) {
      const derived = this.#derive(definition, size);
      if (!derived) continue;
      if (values.size > 0 && kind !== derived.kind) {
        this.#object({
          code: 'bad-expression',
          path: ['figures', definition.id],
          message: 'This is a count for one size and a length for another.',
        });
        continue;
      }
      kind = derived.kind;
      values.set(size.name, derived.value);
    }
    if (values.size === 0) return undefined;
    const { id, title, rule, isCut = false } = definition;
    return { id, title, kind, rule, isCut, values };
  }

  #derive(definition: Definition, size: Size): { value: FigureValue; kind: FigureKind } | undefined {
    const at = new Derivation(this.#pattern, size, this.#source, this.show);
    try {
      const derived = definition.derive(at);
      if (!derived || at.isSpoiled) return undefined;
      const kind = derived.kind ?? definition.kind;
      return { value: this.#round(kind, derived, at), kind };
    } catch (error) {
      if (at.isSpoiled) return undefined;
      if (!(error instanceof FigureError)) throw error;
      // A name may be unknown only because the entry that would make it known cannot be read.
      const isConsequence = error.objection.code === 'unknown-figure' && this.#pattern.broken.hidesFigures;
      if (!isConsequence) this.#object(error.objection);
      return undefined;
    }
  }

  /** The same objection for several sizes is one. */
  #object(objection: Objection): void {
    this.#objections.set(`${objection.code} ${objection.path.join(' ')}`, objection);
  }

  /** The one rounding, to the step in the safe direction, and said in the working. */
  #round(kind: FigureKind, derived: Derived, at: Derivation): FigureValue {
    const { need, least, steps, remarks, because, against, round = 'up' } = derived;
    // A value that is not rational must be rounded to be shown at all: to the step of the ruler.
    const step = derived.step ?? (need.exact ? undefined : kind === 'count' ? ONE : at.house['cut to']);
    const shown = step ? (round === 'up' ? roundUp : roundDown)(need, step) : need.exact;
    if (!shown) throw new TypeError('a figure has neither a step nor a rational value');
    const usual = kind === 'yardage' ? at.house['generous over'] : undefined;
    const working = [...steps, ...this.show.ending({ need, shown, step, round, kind })];
    return {
      need,
      shown,
      step,
      round,
      least,
      spare: derived.spare === 'any' ? undefined : (derived.spare ?? usual),
      steps,
      get working() {
        return remarks ? [...working, ...remarks()] : working;
      },
      because,
      against: against ?? (() => undefined),
      inputs: at.inputs,
      uses: at.uses,
      assumes: at.assumes,
    };
  }

  #finding({ code, path, message, within, atKey }: Objection): Finding[] {
    const range = atKey ? this.#pattern.keyPlace(path) : this.#pattern.place(path);
    if (!range) return [];
    const text = within && this.#pattern.textPlace(path);
    const place: Range = text
      ? { start: text.start + within.start, end: Math.min(text.end, text.start + within.end) }
      : range;
    return [{ code, severity: CODES[code].severity, message, ...place, related: [], fixes: [] }];
  }
}

function circle(id: string, open: readonly string[]): FigureError {
  const round = [...open.slice(open.indexOf(id)), id];
  return new FigureError({
    code: 'figure-circle',
    path: ['figures', id],
    message: `This figure depends on itself: ${round.join(' → ')}.`,
  });
}

function tooLong(id: string): FigureError {
  return new FigureError({
    code: 'bad-expression',
    path: ['figures', id],
    message: 'Too many figures are computed one from the other here.',
  });
}

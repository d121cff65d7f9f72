/**
 * What a figure may ask for while it is computed. Everything it reads is recorded, so that no rule can forget to
 * say what it depends on.
 */
import type { House } from '../block/house.ts';
import type { Entries, Pattern } from '../block/pattern.ts';
import type { BlockPath } from '../block/place.ts';
import type { FabricLabel } from '../block/values/fabricLabel.ts';
import { PerSize, type Size } from '../block/values/perSize.ts';
import type { UnitName } from '../block/values/unitName.ts';
import type { Rational } from '../quantity/rational.ts';
import type { FigureKind, FigureValue, HouseRule } from './figure.ts';
import type { Ledger } from './ledger.ts';
import { Show } from './show.ts';
import { isContainer, Watch } from './watch.ts';

/** Where a derivation gets the values of other figures from. */
export interface FigureSource {
  ids(): readonly string[];
  value(id: string, size: Size): FigureValue | undefined;
  kind(id: string): FigureKind | undefined;
  /** What derivations of a size have worked out once for all of them. */
  memo(size: Size): Map<string, Remembered>;
}

interface Remembered {
  readonly value: unknown;
  readonly inputs: readonly BlockPath[];
  readonly uses: readonly string[];
  readonly assumes: readonly HouseRule[];
  readonly isSpoiled: boolean;
}

export class Derivation {
  readonly size: Size;
  readonly show: Show;
  readonly #pattern: Pattern;
  readonly #source: FigureSource;
  readonly #watch: Watch;
  readonly #inputs = new Map<string, BlockPath>();
  readonly #uses = new Set<string>();
  readonly #assumes = new Set<HouseRule>();

  constructor(pattern: Pattern, size: Size, source: FigureSource, show: Show) {
    this.#pattern = pattern;
    this.#watch = new Watch(pattern, size);
    this.size = size;
    this.#source = source;
    this.show = show;
  }

  /** A derivation that knows no other figures, for looking at the entries before there is a ledger. */
  static unrecorded(pattern: Pattern, size: Size): Derivation {
    const memo = new Map<string, Remembered>();
    const nothing = { ids: () => [], value: () => undefined, kind: () => undefined, memo: () => memo };
    return new Derivation(pattern, size, nothing, new Show(pattern.house.system));
  }

  /** A derivation that reads the figures of a ledger, for looking at the entries when all of them are known. */
  static reading(pattern: Pattern, size: Size, ledger: Ledger): Derivation {
    const memo = new Map<string, Remembered>();
    const source: FigureSource = {
      ids: () => ledger.ids,
      value: (id) => ledger.figure(id)?.values.get(size.name),
      kind: (id) => ledger.figure(id)?.kind,
      memo: () => memo,
    };
    return new Derivation(pattern, size, source, ledger.show);
  }

  /** The entries of the block; values per size are already those of this size. */
  get entries(): Settled<Entries> {
    return this.#track(this.#watch.pattern.entries, []) as Settled<Entries>;
  }

  get house(): House {
    return this.#track(this.#watch.pattern.house, ['house']) as House;
  }

  figure(id: string): FigureValue | undefined {
    this.#uses.add(id);
    return this.#source.value(id, this.size);
  }

  /**
   * Works something out once for all figures of this size: the cuts of a unit, the quilt after its borders. What it
   * read counts as read by everyone who asks for it.
   */
  once<T>(key: string, compute: (at: Derivation) => T): T {
    const memo = this.#source.memo(this.size);
    let known = memo.get(key);
    if (!known) {
      const inner = new Derivation(this.#pattern, this.size, this.#source, this.show);
      try {
        const value = compute(inner);
        const { inputs, uses, assumes, isSpoiled } = inner;
        known = { value, inputs, uses, assumes, isSpoiled };
      } finally {
        if (inner.isSpoiled) this.#watch.spoil();
      }
      memo.set(key, known);
    }
    for (const input of known.inputs) this.#inputs.set(input.join('\u0000'), input);
    for (const id of known.uses) this.#uses.add(id);
    for (const rule of known.assumes) this.#assumes.add(rule);
    if (known.isSpoiled) this.#watch.spoil();
    return known.value as T;
  }

  kindOf(id: string): FigureKind | undefined {
    return this.#source.kind(id);
  }

  /** Ids of all figures of the pattern. */
  get ids(): readonly string[] {
    return this.#source.ids();
  }

  /** Whether it read something that cannot be understood, so that what follows from it is unknown. */
  get isSpoiled(): boolean {
    return this.#watch.isSpoiled;
  }

  get inputs(): BlockPath[] {
    return [...this.#inputs.values()];
  }

  get uses(): string[] {
    return [...this.#uses];
  }

  /** Rules of the house that it read and nobody stated. */
  get assumes(): HouseRule[] {
    return [...this.#assumes];
  }

  #track(container: object, path: BlockPath): unknown {
    return new Proxy(container, {
      get: (target, key) => {
        const value: unknown = Reflect.get(target, key);
        if (typeof key !== 'string') return value;
        const here = [...path, Array.isArray(target) && /^\d+$/.test(key) ? Number(key) : key];
        if (value instanceof PerSize) {
          this.#record([...here, ...value.pathAt(this.size)]);
          return value.at(this.size);
        }
        if (isContainer(value)) return this.#track(value, here);
        if (value !== undefined && typeof value !== 'function') this.#record(here);
        return value;
      },
    });
  }

  #record(path: BlockPath): void {
    const stated = this.#pattern.statedPath(path);
    if (stated) this.#inputs.set(stated.join('\u0000'), stated);
    else if (path[0] === 'house' && path.length === 2) this.#assumes.add(path[1] as HouseRule);
  }
}

/** The same structure with every value per size replaced by the value of one size. */
export type Settled<T> =
  T extends PerSize<infer V>
    ? V | undefined
    : T extends Leaf
      ? T
      : { readonly [K in keyof T]: Settled<T[K]> };

type Leaf = string | number | bigint | boolean | undefined | null | Rational | FabricLabel | UnitName;

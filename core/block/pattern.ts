/** What all measure blocks of a manuscript say together, with the place of everything they say. */
import type { Finding, Range } from '../findings/finding.ts';
import type { Broken } from './broken.ts';
import type { ENTRIES } from './entries/index.ts';
import type { Entry } from './entry.ts';
import type { House } from './house.ts';
import type { BlockPath } from './place.ts';
import type { Origin } from './used.ts';
import type { Size } from './values/perSize.ts';

type Value<E> = E extends { readonly form: 'many' } & Entry<infer T>
  ? Readonly<Record<string, T>>
  : E extends Entry<infer T>
    ? T
    : never;

/** The entries as they stand in the blocks; an entry that is absent or cannot be read is left out. */
export type Entries = { readonly [Key in keyof typeof ENTRIES]?: Value<(typeof ENTRIES)[Key]> };

export type EntryKey = keyof typeof ENTRIES;

export interface Pattern {
  readonly entries: Entries;
  readonly house: House;
  /** In the order of the block; a pattern of one size has one size with an empty name. */
  readonly sizes: readonly Size[];
  /** Whether there is any measure block at all. */
  readonly stated: boolean;
  /** What stands in a block but cannot be read: what depends on it is unknown, not wrong. */
  readonly broken: Broken;
  readonly findings: readonly Finding[];
  /**
   * The place in the source of the value at `path`, or of the nearest entry around it; of the path under `use` where
   * the value is taken from another manuscript.
   */
  place(path: BlockPath): Range | undefined;
  /** The place of the text of the value at `path`; `undefined` where the block writes it otherwise than it reads. */
  textPlace(path: BlockPath): Range | undefined;
  /** The place of the name of the entry at `path`. */
  keyPlace(path: BlockPath): Range | undefined;
  /**
   * The path as far as the author's own text, be it in a manuscript that this one uses; `undefined` when nobody says
   * it and a common rule holds.
   */
  statedPath(path: BlockPath): BlockPath | undefined;
  /** Where the value at `path` stands if it is taken from another manuscript. */
  origin(path: BlockPath): Origin | undefined;
  /** What the author wrote at `path`, or at the nearest value around it; `undefined` where no block says it. */
  textAt(path: BlockPath): string | undefined;
  /** The path of the innermost entry at a source offset. */
  pathAt(offset: number): BlockPath | undefined;
}

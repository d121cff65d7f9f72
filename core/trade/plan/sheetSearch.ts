/**
 * Whether all pieces of a list can be cut from a number of sheets: by trying, for short lists.
 *
 * The pieces are placed one after the other, the largest first: each into a strip that was begun, into a new strip
 * of a sheet that was begun, or into a new strip of a new sheet, whose strips may run either way. Every plan of
 * strips can be reached like that, so when none is found there is none. Cut short by
 * - the area: what is wanted must fit on what is left of the sheets and of the length of strips. What lies beside
 *   a piece that is lower than its strip is lost;
 * - likeness: equal pieces go into sheets in the order of the sheets, and of two sheets or strips that are alike
 *   only the first is tried. What is left out so differs from what is tried by an exchange of equal things.
 */
import type { Placement } from './problem.ts';
import type { SheetDirection } from './sheetRelaxation.ts';

export interface TriedStrip {
  height: number;
  left: number;
  /** Index of the placement of each piece. */
  readonly placements: number[];
}

export interface TriedSheet {
  readonly direction: number;
  left: number;
  readonly strips: TriedStrip[];
}

/** The sheets; `none` when there is no such plan; `undecided` when the work was not enough to tell. */
export type Trial = readonly TriedSheet[] | 'none' | 'undecided';

/** @param work limit in places tried. */
export function trySheets(directions: readonly SheetDirection[], sheets: number, work: number): Trial {
  return new SheetSearch(directions, sheets, work).run();
}

class SheetSearch {
  readonly #directions: readonly SheetDirection[];
  readonly #most: number;
  #work: number;
  /** The kind of each piece, the largest first; the area that is wanted from there on. */
  readonly #pieces: readonly number[];
  readonly #sheets: TriedSheet[] = [];
  readonly #wanted: readonly number[];

  constructor(directions: readonly SheetDirection[], sheets: number, work: number) {
    this.#directions = directions;
    this.#most = sheets;
    this.#work = work;
    const kinds = directions[0]?.problem.kinds ?? [];
    const area = (kind: number) => (kinds[kind]?.width ?? 0) * (kinds[kind]?.length ?? 0);
    const order = [...kinds.keys()].sort((a, b) => area(b) - area(a) || a - b);
    this.#pieces = order.flatMap((kind) => Array<number>(kinds[kind]?.demand ?? 0).fill(kind));
    const wanted: number[] = [0];
    for (const kind of [...this.#pieces].reverse()) wanted.push((wanted.at(-1) ?? 0) + area(kind));
    this.#wanted = wanted.reverse();
  }

  run(): Trial {
    if (this.#place(0, 0)) return this.#sheets;
    return this.#work > 0 ? 'none' : 'undecided';
  }

  /** @param from equal pieces go into sheets from this one on. */
  #place(at: number, from: number): boolean {
    const kind = this.#pieces[at];
    if (kind === undefined) return true;
    if (this.#work <= 0 || (this.#wanted[at] as number) > this.#free()) return false;
    const isSame = this.#pieces[at + 1] === kind;
    const next = (sheet: number) => this.#place(at + 1, isSame ? sheet : 0);
    const tried = new Set<string>();
    for (let i = from; i < this.#sheets.length; i++) {
      const sheet = this.#sheets[i] as TriedSheet;
      // Of sheets alike only the first; not where equal pieces before this one set where it may begin.
      const key = from === 0 ? alike(sheet) : String(i);
      if (tried.has(key)) continue;
      tried.add(key);
      if (this.#placeOn(sheet, kind, () => next(i))) return true;
    }
    if (this.#sheets.length === this.#most) return false;
    for (const direction of this.#directions.keys()) {
      const sheet = { direction, left: this.#directions[direction]?.room ?? 0, strips: [] };
      this.#sheets.push(sheet);
      if (this.#placeOn(sheet, kind, () => next(this.#sheets.length - 1))) return true;
      this.#sheets.pop();
    }
    return false;
  }

  #placeOn(sheet: TriedSheet, kind: number, next: () => boolean): boolean {
    const { problem } = this.#directions[sheet.direction] as SheetDirection;
    for (const index of problem.ways[kind] ?? []) {
      const { height, span } = problem.placements[index] as Placement;
      const tried = new Set<string>();
      for (const strip of sheet.strips) {
        const more = Math.max(0, height - strip.height);
        const key = `${strip.height} ${strip.left}`;
        if (strip.left < span || more > sheet.left || tried.has(key)) continue;
        tried.add(key);
        if (this.#work-- <= 0) return false;
        strip.left -= span;
        strip.height += more;
        sheet.left -= more;
        strip.placements.push(index);
        if (next()) return true;
        strip.placements.pop();
        sheet.left += more;
        strip.height -= more;
        strip.left += span;
      }
      if (height > sheet.left || span > problem.capacity) continue;
      if (this.#work-- <= 0) return false;
      sheet.strips.push({ height, left: problem.capacity - span, placements: [index] });
      sheet.left -= height;
      if (next()) return true;
      sheet.left += height;
      sheet.strips.pop();
    }
    return false;
  }

  /** The area that is not cut yet: ends of strips, rests of sheets, and sheets that are whole. */
  #free(): number {
    const whole = (this.#directions[0]?.problem.capacity ?? 0) * (this.#directions[0]?.room ?? 0);
    let free = (this.#most - this.#sheets.length) * whole;
    for (const { direction, left, strips } of this.#sheets) {
      const { problem } = this.#directions[direction] as SheetDirection;
      free += left * problem.capacity;
      for (const strip of strips) free += strip.left * strip.height;
    }
    return free;
  }
}

function alike({ direction, left, strips }: TriedSheet): string {
  const each = strips.map((strip) => `${strip.height}:${strip.left}`).sort();
  return `${direction} ${left} ${each.join(' ')}`;
}

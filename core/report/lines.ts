/** Lines and columns of a source, for reports that people read: both count from 1, in UTF-16 code units. */

export interface Position {
  readonly line: number;
  readonly column: number;
  readonly offset: number;
}

export class Lines {
  readonly #source: string;
  /** Offset of the first character of each line. */
  readonly #starts: readonly number[];

  /** Lines end as in Markdown and in the Language Server Protocol: with CR LF, LF or CR. */
  constructor(source: string) {
    this.#source = source;
    this.#starts = [0, ...Array.from(source.matchAll(/\r\n|\n|\r/g), (end) => end.index + end[0].length)];
  }

  /** @throws RangeError when the offset lies outside the source. */
  position(offset: number): Position {
    if (!(offset >= 0 && offset <= this.#source.length)) throw new RangeError(`no offset ${offset} here`);
    let [low, high] = [0, this.#starts.length];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (this.#start(middle) <= offset) low = middle;
      else high = middle;
    }
    return { line: low + 1, column: offset - this.#start(low) + 1, offset };
  }

  /** The text of a line, counted from 1, without its line end. */
  text(line: number): string {
    return this.#source.slice(this.#start(line - 1), this.#starts[line]).replace(/\r\n$|[\n\r]$/, '');
  }

  #start(index: number): number {
    return this.#starts[index] ?? this.#source.length;
  }
}

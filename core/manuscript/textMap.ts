/** Text with the place of every UTF-16 unit in the source. */
import type { Range } from '../findings/finding.ts';
import { decodeEscape, decodeReference } from './references.ts';

export class TextMap {
  #text = '';
  readonly #starts: number[] = [];
  readonly #ends: number[] = [];

  get text(): string {
    return this.#text;
  }

  get length(): number {
    return this.#text.length;
  }

  /** Characters that all come from one stretch of the source: those of a reference, or one of the source's own. */
  add(characters: string, start: number, end: number): void {
    this.#text += characters;
    for (let unit = 0; unit < characters.length; unit++) {
      this.#starts.push(start);
      this.#ends.push(end);
    }
  }

  /** Characters of the source, or of a text that was mapped before, as they stand. */
  copy(text: string, start: number, end: number, from?: TextMap): void {
    this.#text += text.slice(start, end);
    for (let at = start; at < end; at++) {
      this.#starts.push(from ? (from.#starts[at] ?? 0) : at);
      this.#ends.push(from ? (from.#ends[at] ?? 0) : at + 1);
    }
  }

  append(other: TextMap): void {
    this.copy(other.#text, 0, other.length, other);
  }

  /**
   * Characters of the source, or of a text that was mapped before, in which references stand for characters, and
   * with `escapes` a backslash for the character behind it.
   */
  addEncoded(text: string, start: number, end: number, escapes: boolean, from?: TextMap): void {
    let plain = start;
    for (let at = start; at < end; at++) {
      const decoded = decodeAt(text, at, escapes);
      if (!decoded || decoded.end > end) continue;
      this.copy(text, plain, at, from);
      const place = from?.range(at, decoded.end) ?? { start: at, end: decoded.end };
      this.add(decoded.text, place.start, place.end);
      plain = decoded.end;
      at = decoded.end - 1;
    }
    this.copy(text, plain, end, from);
  }

  /** From the first to the last character of the source behind a stretch of the text. */
  range(start: number, end: number): Range {
    const from = this.#starts[start] ?? this.#ends.at(-1) ?? 0;
    return { start: from, end: end > start ? (this.#ends[end - 1] ?? from) : from };
  }

  /** The place of each unit, and of the end of the last one; an empty text stands at `otherwise`. */
  offsets(otherwise: number): Int32Array {
    const offsets = new Int32Array(this.#starts.length + 1);
    offsets.set(this.#starts);
    offsets[this.#starts.length] = this.#ends.at(-1) ?? otherwise;
    return offsets;
  }

  ends(): Int32Array {
    return Int32Array.from(this.#ends);
  }
}

function decodeAt(text: string, at: number, escapes: boolean): { text: string; end: number } | undefined {
  switch (text[at]) {
    case '&':
      return decodeReference(text, at);
    case '\\':
      return escapes ? decodeEscape(text, at) : undefined;
    case '\0':
      return { text: '\ufffd', end: at + 1 };
    default:
      return undefined;
  }
}

/** The stretches of the source behind the units from `start` to `end`, joined where they touch. */
export function sourceRanges(
  { offsets, ends }: { readonly offsets: Int32Array; readonly ends: Int32Array },
  start: number,
  end: number,
): readonly [Range, ...Range[]] {
  const at = offsets[Math.min(start, offsets.length - 1)] ?? 0;
  let last = { start: at, end: at };
  const ranges: [Range, ...Range[]] = [last];
  for (let unit = start; unit < end; unit++) {
    const [from = 0, to = 0] = [offsets[unit], ends[unit]];
    if (from <= last.end) last.end = Math.max(last.end, to);
    else {
      last = { start: from, end: to };
      ranges.push(last);
    }
  }
  return ranges;
}

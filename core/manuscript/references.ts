/** Character references (`&frac12;`, `&#189;`, `&#xBD;`) and backslash escapes, as CommonMark defines them. */
import { decodeNamedCharacterReference } from 'decode-named-character-reference';

export interface Decoded {
  readonly text: string;
  readonly end: number;
}

const REFERENCE = /&(?:#(\d{1,7})|#[xX]([\da-fA-F]{1,6})|([A-Za-z\d]{1,31}));/y;
const ESCAPE = /\\[!-/:-@[-`{-~]/y;

/** The reference at `offset`, where an `&` stands; `undefined` when it is a plain ampersand. */
export function decodeReference(source: string, offset: number): Decoded | undefined {
  REFERENCE.lastIndex = offset;
  const match = REFERENCE.exec(source);
  if (!match) return undefined;
  const [all, decimal, hexadecimal, name] = match;
  const text =
    name === undefined
      ? fromCode(Number.parseInt(decimal ?? hexadecimal ?? '', decimal === undefined ? 16 : 10))
      : decodeNamedCharacterReference(name);
  return text === false ? undefined : { text, end: offset + all.length };
}

/** The escaped character at `offset`, where a backslash stands. */
export function decodeEscape(source: string, offset: number): Decoded | undefined {
  ESCAPE.lastIndex = offset;
  const match = ESCAPE.exec(source);
  return match ? { text: match[0].slice(1), end: offset + 2 } : undefined;
}

/** Codes that are no characters become the replacement character, as in the parser. */
function fromCode(code: number): string {
  const isControl = code < 9 || code === 11 || (code > 13 && code < 32) || (code > 126 && code < 160);
  const isSurrogate = code > 0xd7ff && code < 0xe000;
  const isNoncharacter = (code > 0xfdcf && code < 0xfdf0) || (code & 0xfffe) === 0xfffe;
  return isControl || isSurrogate || isNoncharacter || code > 0x10ffff
    ? '\ufffd'
    : String.fromCodePoint(code);
}

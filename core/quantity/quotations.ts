/** Quotation marks that close a quotation although they stand behind a number: the clue named “Row 5”. */
import { isDigit, VULGAR_FRACTIONS } from './characters.ts';

const QUOTES = /["“”″]/g;
const OPENING_BEFORE = /[\s([{—–\u00a0]/;

/**
 * The places of quotation marks behind a number that rather close a quotation than mean inches. A quotation
 * opens before a word; the first later mark that does not follow a number closes it, and without such a mark
 * the last one before punctuation does, or else the first.
 */
export function closingQuotes(text: string): ReadonlySet<number> {
  const closing = new Set<number>();
  let open = false;
  let candidates: number[] = [];
  const close = () => {
    const choice =
      candidates.findLast((at) => /^(?:$|[\s.,;:!?)\]])/.test(text.slice(at + 1, at + 2))) ?? candidates[0];
    const punctuated = candidates.findLast((at) => /^(?:$|[.,;:!?)\]])/.test(text.slice(at + 1, at + 2)));
    const last = candidates.length > 1 ? (punctuated ?? candidates[0]) : choice;
    if (open && last !== undefined) closing.add(last);
    open = false;
    candidates = [];
  };
  for (const { index } of text.matchAll(QUOTES)) {
    if (opens(text, index)) {
      close();
      open = true;
    } else if (open && followsNumber(text, index)) candidates.push(index);
    else {
      open = false;
      candidates = [];
    }
  }
  close();
  return closing;
}

function opens(text: string, index: number): boolean {
  const [before, after] = [text[index - 1], text[index + 1]];
  if (before !== undefined && !OPENING_BEFORE.test(before)) return false;
  if (after === undefined || /\s/.test(after)) return false;
  const spacedMark = before === ' ' && endsNumber(text[index - 2]) && !/[\p{L}\d]/u.test(after);
  const bySign = /^[xX×]\s/.test(text.slice(index + 1, index + 3));
  return !spacedMark && !bySign;
}

function followsNumber(text: string, index: number): boolean {
  const before = text[index - 1];
  return endsNumber(before) || (before === '.' && endsNumber(text[index - 2]));
}

function endsNumber(character: string | undefined): boolean {
  return isDigit(character) || VULGAR_FRACTIONS.has(character ?? '') || /[₀-₉]/.test(character ?? '');
}

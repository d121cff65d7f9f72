/** The finished size of the quilt, if the manuscript tells one and only one. */
import { max, min, type Rational, rational } from '../../quantity/rational.ts';
import type { Said, Text, Told } from './said.ts';

export interface Rectangle {
  /** As written; for a square both are the same number. */
  readonly sides: readonly [Told, Told];
  readonly short: Rational;
  readonly long: Rational;
  readonly text: string;
}

const QUILT = '(?:quilt|throw|topper|wall ?hanging|wall quilt|runner|table runner|coverlet)';
const TELLS = new RegExp(
  [
    `\\b(?:finished|completed) (?:${QUILT}(?: size)?|size)\\b[^.;\\d]{0,20}$`,
    `\\b${QUILT} (?:size|finishes|measures finished)\\b[^.;\\d]{0,20}$`,
    `^\\s*(?:the )?(?:finished )?size\\b[^.;\\d]{0,16}$`,
  ].join('|'),
  'i',
);
const OTHER =
  /\b(?:blocks?|units?|pillows?|cushions?|shams?|borders?|unfinished|before|cent(?:er|re)|backing|batting|wadding|top|mini|squares? finish)\b/i;

export function finishedQuilt({ phrases }: Text): Rectangle | undefined {
  const told = phrases.flatMap((said) => {
    const before = `${said.before}`.replace(/\|/g, ' ').replace(/[*_:]/g, '');
    if (!TELLS.test(before.trimEnd()) || OTHER.test(before) || said.count) return [];
    if (/^[^.;\d]{0,24}\b(?:unfinished|before|without|block)\b/i.test(said.behind)) return [];
    return rectangleOf(said) ?? [];
  });
  const [first] = told;
  const isOne = told.every(
    ({ short, long }) => first && isNear(short, first.short) && isNear(long, first.long),
  );
  return isOne ? first : undefined;
}

/** The edge of the top and that of the bound quilt differ by two seam allowances. */
function isNear(a: Rational, b: Rational): boolean {
  return a.sub(b).abs().compare(rational(1, 2)) <= 0;
}

/** Two sides, or one that is called square. */
export function rectangleOf({ size, own, line, phrase }: Said): Rectangle | undefined {
  const [a, b] = size;
  if (!a) return undefined;
  const isSquare =
    /^["”″)]?\s*square(?!s)\b/i.test(line.text.slice(phrase.core.end)) ||
    /\bsquare:?\s*$/i.test(own.slice(0, phrase.core.start - phrase.start));
  if (!b && !isSquare) return undefined;
  const other = b ?? a;
  return {
    sides: [a, other],
    short: min(a.value, other.value),
    long: max(a.value, other.value),
    text: b ? `${a.text} × ${b.text}` : `${a.text} square`,
  };
}

/** How wide the fabric is of which strips are cut across, as far as the manuscript tells. */
import { max, type Rational, rational } from '../../quantity/rational.ts';
import { INCHES_PER } from '../../quantity/units.ts';
import type { Said, Text } from './said.ts';
import { isMetricLength } from './seams.ts';

/** More than any common cotton is wide: what even this width does not give is wrong (common practice: 40" to 44"). */
const WIDEST: Rational = rational(44);
/** The same where fabric is sold by the metre: 110 cm to 115 cm (common practice). */
const WIDEST_METRIC: Rational = INCHES_PER.cm.mul(115n);

const SPEAKS = /\b(?:usable|WOF\s*=|width of (?:the )?fabric|fabric width|selv(?:a|ed)ges?)\b/i;

/** In inches: the widest that the text states, or that is common. */
export function usableWidth({ phrases }: Text): Rational {
  const stated = phrases.flatMap(({ size, sentence, count }) =>
    count === undefined && size.length === 1 && SPEAKS.test(sentence) ? (size[0]?.value ?? []) : [],
  );
  const likely = stated.filter((width) => width.compare(36) >= 0 && width.compare(62) <= 0);
  return likely.length > 0 ? likely.reduce(max) : isMetricText(phrases) ? WIDEST_METRIC : WIDEST;
}

function isMetricText(phrases: readonly Said[]): boolean {
  const lengths = phrases.flatMap(({ size }) => size);
  return lengths.filter(isMetricLength).length * 2 > lengths.length;
}

const ACROSS =
  /\b(?:WOF|width of (?:the )?fabric|selv(?:a|ed)ge[- ]to[- ]selv(?:a|ed)ge|across the (?:width|fabric))/i;
const LENGTHWISE =
  /\b(?:lengthwise|LOF|length of (?:the )?fabric|parallel|(?:from|of) the (?:length|long)|bias|panels?)\b/i;

/** How long each strip is: as stated, or as the fabric is wide; `undefined` when it may be longer. */
export function stripLength({ size, own, sentence, line }: Said, fabric: Rational): Rational | undefined {
  if (LENGTHWISE.test(`${sentence}\n${line.around}`)) return undefined;
  const [, length] = size;
  if (length)
    return length.value.compare(18) < 0 ? undefined : max(length.value, size[0]?.value ?? length.value);
  return ACROSS.test(own) ? fabric : max(fabric, WIDEST);
}

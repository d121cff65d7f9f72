/** Ordinals, parts of names, repetitions, and the number words of ordinary speech. */
import type { Recogniser } from '../recognisers.ts';
import { isBareInteger, isCardinal, isOrdinaryWord, nounsBehind } from '../sights.ts';

export const ORDINALS = [
  {
    reason: 'ordinal',
    when: ({ number }) => number.notation.ordinal !== '' && isCardinal(number),
    example: 'Sew the «2nd» border on.',
    counterexample: 'Each wedge is «1/8th» of a circle.',
  },
] as const satisfies readonly Recogniser[];

export const WORDS = [
  {
    reason: 'part of a name',
    behind: /^(?:[-\s][Pp]atch\b|['’]s\b|[-\s]at[-\s]a[-\s]time\b|[-‐‑](?!by\b)\p{L})/u,
    when: ({ number, text, behind }) =>
      number.unit === undefined &&
      (!/^[-‐‑]\p{L}/u.test(behind) ||
        /^[-‐‑]patch(?:es)?\b/i.test(behind) ||
        nounsBehind(text, number.end + 1)[0]?.at !== 0),
    example: 'Make four «9»-patch blocks.',
    counterexample: 'Make «9» patches.',
  },
  {
    reason: 'part of a name',
    before: /(?:^|[^\p{L}])(?:the|our|my|called|named|at|in|by)\s$/u,
    behind: /^\s\p{Lu}\p{Ll}/u,
    when: ({ number: { notation, end }, text }) =>
      notation.numeral.form === 'words' &&
      notation.numeral.letterCase === 'capital' &&
      nounsBehind(text, end).length === 0,
    example: 'My grandmother called it the «Seven» Willows.',
    counterexample: 'My grandmother made the «Seven» Blue Strips.',
  },
  {
    reason: 'part of a name',
    before: /^$/,
    behind: /^(?:\s\p{Lu}\p{L}+){1,3}$/u,
    when: ({ number: { notation, end }, text }) =>
      notation.numeral.form === 'words' && nounsBehind(text, end).length === 0,
    example: '«Four» Winds',
    counterexample: '«Four» Squares',
  },
  {
    reason: 'number of times',
    behind: /^(?:\s(?:or|to)\s\S+|\s?[-–]\s?\d+)?(?:\s|\smore\s)times?\b/i,
    when: ({ number }) => number.unit === undefined,
    example: 'Repeat «3» times.',
    counterexample: 'Repeat with «3» more.',
  },
  {
    reason: 'number of times',
    when: ({ number, text }) => /^(?:once|twice|thrice)$/i.test(text.slice(number.start, number.end)),
    example: 'Cut the squares «twice» diagonally.',
    counterexample: 'Cut «two» squares diagonally.',
  },
  {
    reason: 'number of times',
    before: /\b(?:repeat|do)\b[^.;\d]{0,24}\s$/i,
    behind: /^x\b(?!\s?\d)/i,
    example: 'Repeat this «4»x.',
    counterexample: 'Repeat for «4» x 6 rows.',
  },
  {
    reason: 'fold',
    before: /\bfold(?:ed|ing)?\b[^.;,\d]{0,30}\sin(?:to)?\s$/i,
    when: ({ number, text }) => isBareInteger(number, 2, 16) && nounsBehind(text, number.end).length === 0,
    example: 'Fold the quilt in «four» and find the centre.',
    counterexample: 'Fold the strip and cut it in «four» lengths.',
  },
  {
    reason: 'ordinary word',
    before: /\ball\s$/i,
    behind: /^\s(?:sides|edges|corners|ends|layers|ways|directions|angles)\b/i,
    when: ({ number }) => isBareInteger(number, 2, 12),
    example: 'Bind all «four» edges.',
    counterexample: 'Bind all «four» blankets.',
  },
  {
    reason: 'ordinary word',
    around:
      /(?<![\d/])(?:24\/7(?![\d/"”″])|\b(?:day|square|number|plan)\sone\b|\bone\sby\sone\b|\bone\sor\stwo\b|\btwo\sby\stwo\b)/gi,
    when: ({ number, text }) => number.unit === undefined && nounsBehind(text, number.end).length === 0,
    example: 'Sew the pairs «two» by two.',
    counterexample: 'Sew the pairs to «two» sides.',
  },
  {
    reason: 'ordinary word',
    behind:
      /^\s(?:of\s)?(?:the|your|each)\s(?:time|day|night|fun|battle|work|job|story|price|class|group|pleasure)\b/i,
    when: ({ number }) => number.weak,
    example: 'The planning is «half» the fun.',
    counterexample: 'The planning takes «half» the strips.',
  },
  {
    reason: 'ordinary word',
    when: isOrdinaryWord,
    example: 'Sew them to «one» another.',
    counterexample: 'Cut «one» square.',
  },
] as const satisfies readonly Recogniser[];

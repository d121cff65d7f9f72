/** Amounts of something that a pattern does not cut or sew: shares, money, heat, turns, weights, people. */
import type { Recogniser } from '../recognisers.ts';
import { countsPieces, isBareInteger } from '../sights.ts';

const MONEY = '(?:[$£€¥]|\\b(?:USD|GBP|EUR|AUD|NZD|CAD)\\s?)';

export const AMOUNTS = [
  {
    reason: 'percentage',
    behind: /^[-\s]?(?:%|per\s?cent\b)/i,
    example: 'Use «100»% cotton.',
    counterexample: 'Use «100» cotton squares.',
  },
  {
    reason: 'percentage',
    around: /(?<![\d/])(?:50[/-]50|60[/-]40|70[/-]30|80[/-]20)(?![\d/])(?!["”″])/g,
    when: ({ number, text }) => number.unit === undefined && !countsPieces(text, number.end),
    example: 'Batting: an 80/«20» blend.',
    counterexample: 'Batting: 88/«90»" wide.',
  },
  {
    reason: 'price',
    before: new RegExp(`${MONEY}\\s?(?:\\d[\\d.,]*\\s?(?:[-–—]|to|or)\\s?)?$`),
    example: 'The kit costs $«48».',
    counterexample: 'The kit holds «48» squares.',
  },
  {
    reason: 'price',
    behind:
      /^(?:p\b|\s?(?:[€£¥]|(?:USD|GBP|EUR|AUD|NZD|CAD|kr)\b|(?:dollars?|cents?|pounds?|euros?|pence)\b))/,
    example: 'A kit for «48» dollars.',
    counterexample: 'The kit fills «48» squares.',
  },
  {
    reason: 'price',
    before: /\b(?:costs?|prices?|priced(?:\sat)?|fee)\b:?\s(?:is\s|of\s)?$/i,
    when: ({ number, text }) => number.unit === undefined && !countsPieces(text, number.end),
    example: 'The day costs «25», with soup.',
    counterexample: 'A mistake costs «25» squares.',
  },
  {
    reason: 'temperature',
    behind: /^\s?(?:[°º]\s?[CF]\b|(?:degrees?\s)?(?:Celsius|Fahrenheit|centigrade)\b)/i,
    example: 'Press at «150» °C, and mind the steam.',
    counterexample: 'Cut at «150» cm.',
  },
  {
    reason: 'temperature',
    before: /\b(?:wash(?:ed|es)?|washing|machine)\b[^.;\d]{0,16}\sat\s$/i,
    when: ({ number, text }) => number.unit === undefined && !countsPieces(text, number.end),
    example: 'Wash it at «40», and dry it flat.',
    counterexample: 'Wash it, and cut at «40» cm.',
  },
  {
    reason: 'angle',
    behind: /^(?:\s?[°º]|[-\s]degrees?\b)/,
    example: 'Line up the «60»° mark.',
    counterexample: 'Line up the «60» strips.',
  },
  {
    reason: 'weight or volume',
    behind:
      /^[-\s]?(?:oz|ounces?|g|gr|gsm|grams?|kg|lbs?|ml|litres?|liters?|cups?(?=\sof)|tsp|tbsp|tea-?spoons?)\b/,
    when: ({ number, text }) => number.unit === undefined && !countsPieces(text, number.end),
    example: 'Wadding of «4» oz.',
    counterexample: 'Wadding of «4» yards.',
  },
  {
    reason: 'distance',
    behind: /^\s?(?:miles?|kilomet(?:re|er)s?|km)\b/,
    when: ({ number }) => number.unit === undefined,
    example: 'The shop is «12» miles away.',
    counterexample: 'The seams are «12» cm away.',
  },
  {
    reason: 'count outside the pattern',
    behind:
      /^\+?\s(?:(?:new|free|other|more|easy|simple|great|happy|kind|lovely|old|young)\s)?(?:comments?|repl(?:y|ies)|likes|shares|views|followers|subscribers|readers|downloads|ratings|reviews|places|seats|tickets|members|students|pupils|people|persons|quilters|stitchers|makers|friends|guests|participants|teachers|testers|children|kids|grandchildren|daughters|sons|sisters|brothers|cats|dogs|emails|photos|pictures|sockets|slices|cups|biscuits|cookies|seasons|episodes|films|podcasts|chapters|lessons|classes|workshops|tips|ways|reasons|ideas|techniques|methods|steps|mistakes|tutorials|videos)\b/i,
    when: ({ number, text }) => number.unit === undefined && !number.weak && !countsPieces(text, number.end),
    example: 'No more than «14» places.',
    counterexample: 'No more than «14» placemats.',
  },
  {
    reason: 'count outside the pattern',
    behind: /^\s(?:different\s|finished\s)?sizes\b/i,
    when: ({ number }) => number.unit === undefined && number.value.compare(9) <= 0,
    example: 'A quilt in «three» sizes.',
    counterexample: 'A quilt of «three» sized squares.',
  },
  {
    reason: 'rating',
    before:
      /\b(?:skill(?=:)|skill\slevel|difficulty|rating|rated)\b[:,]?\s(?:is\s|of\s)?(?:\d\s?(?:of|out\sof|\/)\s?)?$/i,
    when: ({ number, text, behind }) =>
      number.unit === undefined &&
      number.value.compare(10) <= 0 &&
      (/^\sstars\b/.test(behind) || !countsPieces(text, number.end)),
    example: 'Skill level: «2» of 5.',
    counterexample: 'With a little skill «2» blocks fit.',
  },
  {
    reason: 'rating',
    before: /\b(?:skill|difficulty|rating)\b[^.;:\n\d]{0,12}:[^.;\n\d]{0,30}\sout\sof\s$/i,
    when: ({ number }) => isBareInteger(number, 1, 10),
    example: 'Skill rating: two thimbles out of «five».',
    counterexample: 'With some skill two units come out of «five» strips.',
  },
  {
    reason: 'rating',
    behind: /^-star\s(?:pattern|rating|review|tutorial)/i,
    example: 'A «5»-star pattern for beginners.',
    counterexample: 'A «5»-star block for beginners.',
  },
  {
    reason: 'rating',
    around: /(?<![\d/])\d(?:\.5)?(?:\s?\/\s?|\sout\sof\s)(?:5|10)(?=\s(?:stars?|points?|hearts?)\b)/g,
    example: 'Readers gave it 4 out of «5» points.',
    counterexample: 'Readers use 4 out of «5» strips.',
  },
] as const satisfies readonly Recogniser[];

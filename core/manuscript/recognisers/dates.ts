/** Dates and years. */
import type { Recogniser } from '../recognisers.ts';
import { countsPieces, isBareInteger, isYear, runAround, runBehind } from '../sights.ts';
import { CLOCK, DAY, MONTH, UNTIL } from './calendar.ts';

export const DATES = [
  {
    reason: 'date',
    before: new RegExp(`\\b${DAY},?\\s(?:the\\s)?$`),
    behind: new RegExp(`^(?!${UNTIL}${CLOCK})(?!\\s(?:of|more)\\b)`),
    when: ({ number, text }) => isBareInteger(number, 1, 31) && !countsPieces(text, number.end),
    example: 'We sew on Friday «14», in the hall.',
    counterexample: 'We sew on Friday «14» blocks each.',
  },
  {
    reason: 'date',
    behind: new RegExp(
      `^(?:\\s?(?:,|and|&|to|[-–—])\\s?\\d{1,2})?\\.?\\s(?:of\\s)?${MONTH}\\b(?!\\s\\w+\\s(?:sew|cut))`,
    ),
    when: ({ number }) => isBareInteger(number, 1, 31),
    example: 'Revised «14» June 2019.',
    counterexample: 'Quilt «14» juniper blocks.',
  },
  {
    reason: 'date',
    before: new RegExp(`\\b${MONTH}\\.?\\s(?:\\d{1,2}\\s?(?:,|and|&|to|[-–—])\\s?)?$`),
    when: ({ number, text }) => isBareInteger(number, 1, 31) && !countsPieces(text, number.end),
    example: 'Revised June «14», 2019.',
    counterexample: 'You may cut «14» strips.',
  },
  {
    reason: 'date',
    when: ({ number, text }) =>
      /^(?:\d{1,2}([./-])\d{1,2}\1(?:19|20)\d\d|(?:19|20)\d\d-\d\d-\d\d|(?:0?\d|1[0-2])[./-](?:19|20)\d\d|(?:19|20)\d\d[/-]\d\d)$/.test(
        runAround(text, number),
      ) && !countsPieces(text, number.end + runBehind(text, number).length),
    example: 'First shown on 14.6.«2019».',
    counterexample: 'First makes 14.6. «2016» squares follow.',
  },
  {
    reason: 'date',
    before:
      /\b(?:on|dated?|revised|updated|posted|published|printed|since|until|till|before|after|by|from)\b:?\s[\d./-]*$/i,
    when: ({ number, text }) =>
      /^(?:[0-3]?\d([./-])[01]?\d|[01]?\d([./-])[0-3]?\d)(?:\1|\2)\d\d$/.test(runAround(text, number)) &&
      !countsPieces(text, number.end + runBehind(text, number).length),
    example: 'Revised 6/«14»/19.',
    counterexample: 'Blocks: 12/«20»/30.',
  },
  {
    reason: 'date',
    before: /\b(?:dated?|revised|updated|posted|published|printed)\b:?\s[\d./-]*$/i,
    when: ({ number, text }) =>
      /^(?:0?\d|1[0-2])[./]\d\d$/.test(runAround(text, number)) && !countsPieces(text, number.end),
    example: 'Printed 11/«22».',
    counterexample: 'Printed strips: 11/«22».',
  },
  {
    reason: 'year',
    before: /(?:©|\(c\)|\bcopyright)\s?(?:\d{4}\s?[-–,]\s?)?$/i,
    when: ({ number }) => isBareInteger(number, 1000, 2099),
    example: '© «2021» Blocks by the Sea.',
    counterexample: 'We copyright nothing: «2021» blocks.',
  },
  {
    reason: 'year',
    behind: /^['’]?s\b/,
    when: ({ number }) => number.unit === undefined && number.value.d === 1n && number.value.n % 10n === 0n,
    example: 'A reproduction print of the «1880»s.',
    counterexample: 'A reproduction print, «1880» strips.',
  },
  {
    reason: 'year',
    before: new RegExp(`\\b(?:spring|summer|autumn|fall|winter|since|of|in|${MONTH})\\s['’‘]$`, 'i'),
    when: ({ number }) => isBareInteger(number, 0, 99) && number.end - number.start === 2,
    example: 'First shown in summer ’«24».',
    counterexample: 'First sew in the summer «24» squares.',
  },
  {
    reason: 'year',
    before: /\b(?:in|since|circa|c\.|around|from|early|late)\s$/i,
    when: ({ number, text }) =>
      isBareInteger(number, 1700, 1899) && number.end - number.start === 4 && !countsPieces(text, number.end),
    example: 'An old block, in print since «1897».',
    counterexample: 'A block sewn from «1897» hexagons.',
  },
  {
    reason: 'year',
    when: (sight) => isYear(sight),
    example: 'First shown in «2019».',
    counterexample: 'You need «2016» squares.',
  },
] as const satisfies readonly Recogniser[];

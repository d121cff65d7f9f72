/** Times of day, lengths of time, and ages. */
import type { Recogniser } from '../recognisers.ts';
import { countsPieces, isBareInteger, isClock } from '../sights.ts';
import { CLOCK, DAY, MONTH, UNTIL } from './calendar.ts';

/** With minutes that hardly any length has behind its point. */
const SURE_CLOCK = '(?:[01]?\\d|2[0-3])[.:](?:00|15|30|45)';
/** No unit, fraction or further digit behind the other end of a range. */
const NO_LENGTH =
  '(?![\\d.:½¼¾⅛⅜⅝⅞/]*[\\d½¼¾⅛⅜⅝⅞]|\\s?(?:["”″′\'’x×]|(?:in|inch|inches|cm|mm|m|yds?|yards?)\\b))';
const SPELL =
  '(?:seconds|secs?|minutes?|mins?|hours?|hrs?|days|nights|evenings|mornings|afternoons|weekends|weeks|fortnights|months|years|yrs|decades|sittings)\\b';
/** "2 cosy evenings", but not "2 in days" or "4 of these weeks". */
const ADJECTIVE =
  '(?:(?!(?:of|in|on|for|to|at|by|and|or|per|a|an|the|these|those|all|every|each|most|some|over|after|with)\\s)\\p{L}+\\s)?';

const RANGE_OF_HOURS = new RegExp(`^${UNTIL}${CLOCK}${NO_LENGTH}`);

export const TIMES = [
  {
    reason: 'time of day',
    behind: /^(?::\d\d(?!\d)|\s?[ap]\.?m\b|\s?o['’]clock\b)/,
    example: 'We meet at «10»:30 in the hall.',
    counterexample: 'Fabric A, «10»: 3" squares.',
  },
  {
    reason: 'time of day',
    before: /(?<!\d)\d{1,2}:$/,
    when: ({ number }) => number.end - number.start === 2,
    example: 'We meet at 10:«30» in the hall.',
    counterexample: 'Squares: «30» of them.',
  },
  {
    reason: 'time of day',
    behind: new RegExp(`^${UNTIL}${CLOCK}\\s?[ap]\\.?m\\b`),
    when: ({ number }) => isBareInteger(number, 0, 24) || isClock(number),
    example: 'The class runs «10» to 4pm.',
    counterexample: 'Take «10» to 4 per row.',
  },
  {
    reason: 'time of day',
    behind: new RegExp(`^${UNTIL}${CLOCK}${NO_LENGTH}`),
    when: ({ number }) => isClock(number),
    example: 'The hall is ours from «9.30» to 4.',
    counterexample: 'Buy «1.30» to 2 m.',
  },
  {
    reason: 'time of day',
    before: new RegExp(`(?<![\\d.])${SURE_CLOCK}${UNTIL}$`),
    when: ({ number, text }) =>
      (isBareInteger(number, 0, 24) || isClock(number)) && !countsPieces(text, number.end),
    example: 'The hall is ours from 9.30 to «4».',
    counterexample: 'Buy 1.30 to «4» m.',
  },
  {
    reason: 'time of day',
    behind: new RegExp(`^${UNTIL}${SURE_CLOCK}${NO_LENGTH}`),
    when: ({ number }) => isBareInteger(number, 0, 24),
    example: 'The hall is ours from «9» to 4.30.',
    counterexample: 'Buy «2» to 2.30 m.',
  },
  {
    reason: 'time of day',
    before: new RegExp(`(?<![\\d.])\\d{1,2}${UNTIL}$`),
    when: ({ number }) => isClock(number),
    example: 'The hall is ours from 9 to «4.30».',
    counterexample: 'Strips of 2 to «4.25».',
  },
  {
    reason: 'time of day',
    before: new RegExp(
      `\\b(?:lunch|dinner|supper|tea|coffee|elevenses|doors(?:\\sopen)?|arrivals?|registration)\\b[:,]?\\s(?:is\\s)?(?:at\\s|from\\s)?(?:${CLOCK}${UNTIL})?$`,
      'i',
    ),
    when: ({ number, text }) =>
      (isBareInteger(number, 1, 24) || isClock(number)) && !countsPieces(text, number.end),
    example: 'Lunch «12.30», with soup.',
    counterexample: 'Over coffee «12» squares were cut.',
  },
  {
    reason: 'time of day',
    before: /\b(?:at|until|till|by|before|after)\s$/i,
    when: ({ number, text }) =>
      isClock(number) && !/00$/.test(text.slice(number.start, number.end)) && !countsPieces(text, number.end),
    example: 'Come back at «6.30» for soup.',
    counterexample: 'Trim it at «6.25».',
  },
  {
    reason: 'time of day',
    before: new RegExp(
      `\\b(?:${DAY}(?:\\s\\d{1,2}\\p{L}{0,2}\\s${MONTH}(?:\\s\\d{4})?)?|weekdays|weekends|daily|every\\sday|open)[ ,:]*\\s(?:from\\s|at\\s|between\\s)?(?:${CLOCK}(?:${UNTIL}|\\sand\\s))?$`,
      'iu',
    ),
    behind: /^(?!\s(?:of|more)\b)/,
    when: ({ number, text }) =>
      (isBareInteger(number, 1, 24) || isClock(number)) && !countsPieces(text, number.end),
    example: 'Ring us on weekdays from 9 to «5».',
    counterexample: 'On weekdays we cut from 9 to «5» strips.',
  },
  {
    reason: 'time of day',
    before: new RegExp(`\\b(?:Mon|Tues?|Wed|Thu(?:rs)?|Fri|Sat|Sun)\\.?:?\\s(?:${CLOCK}${UNTIL})?$`),
    when: ({ number, text, before, behind }) =>
      isBareInteger(number, 1, 24) &&
      (RANGE_OF_HOURS.test(behind) || new RegExp(`\\d${UNTIL}$`).test(before)) &&
      !countsPieces(text, number.end + (/^\D{1,7}\d+/.exec(behind)?.[0].length ?? 0)),
    example: 'Shop: Sat «9»-12.',
    counterexample: 'Sun «9»-12" strips.',
  },
  {
    reason: 'length of time',
    behind: new RegExp(`^\\s${ADJECTIVE}${SPELL}`, 'iu'),
    when: ({ number, text }) => number.unit === undefined && !countsPieces(text, number.end),
    example: 'Soak it for «20» minutes.',
    counterexample: 'Soak «20» squares.',
  },
  {
    reason: 'length of time',
    behind: /^-(?:second|minute|min|hour|hr|day|night|week|weekend|month|year)s?\b/i,
    example: 'A «10»-minute break does you good.',
    counterexample: 'Cut «10» midnight blue triangles.',
  },
  {
    reason: 'length of time',
    behind: /^\s(?:second|day|night|evening|morning|afternoon|weekend|week|month|year|decade)\b/i,
    when: ({ number, text, behind }) =>
      !countsPieces(text, number.end) &&
      (isBareInteger(number, 1, 1) ||
        /^\s\p{L}+\s(?:class|workshop|course|retreat|event|wait)/u.test(behind)),
    example: 'Leave it for «1» day.',
    counterexample: 'Leave «4» night squares.',
  },
  {
    reason: 'length of time',
    behind: new RegExp(
      `^\\s?(?:[-–—]|to|or)\\s?(?:\\d+(?:\\.\\d+|\\s?½)?|two|three|four|five|six|seven)[-\\s]${ADJECTIVE}${SPELL}`,
      'iu',
    ),
    when: ({ number }) => number.unit === undefined,
    example: 'It takes «2» to 3 hours.',
    counterexample: 'It takes «2» to 3 strips.',
  },
  {
    reason: 'length of time',
    behind: /^\s(?:of\s)?an?\s(?:hour|minute|day|week|month|year|century)\b/i,
    when: ({ number }) => number.unit === undefined,
    example: '«Three-quarters» of an hour will do.',
    counterexample: '«Three-quarters of an inch» will do.',
  },
  {
    reason: 'length of time',
    behind: /^\s(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)days?\b(?!-)/,
    when: ({ number }) => number.unit === undefined,
    example: 'It took me «2» Sundays.',
    counterexample: 'It took me «2» Sunday-best shirts.',
  },
  {
    reason: 'time of day',
    before: /\bat\s$/i,
    behind: /^\s(?:at\snight|in\sthe\s(?:morning|afternoon|evening))\b/i,
    when: ({ number }) => isBareInteger(number, 1, 12),
    example: 'Nobody sews well at «eleven» at night.',
    counterexample: 'Sew at «eleven» at the top.',
  },
  {
    reason: 'age',
    behind: /^[-\s](?:year|month|week)s?[-\s]olds?\b/i,
    example: 'Mind the pins: I have a «2» year old.',
    counterexample: 'Mind the pins: I have «2» old blocks.',
  },
  {
    reason: 'age',
    before:
      /\b(?:aged?|ages|aged\s(?:from|over|under|between)|who(?:\s(?:is|was|are)|['’]s)(?:\s(?:just|now|only|nearly|almost))?|(?:s?he|I)\s(?:is|was|am|turned)|under[-\s]?|over[-\s]?)\s?(?:\d{1,2}\s?(?:to|[-–—]|and|or)\s?)?$/i,
    behind: /^(?!\s?(?:of|%|["”″x×/]))/,
    when: ({ number, text, before }) =>
      isBareInteger(number, 0, 110) &&
      !countsPieces(text, number.end) &&
      (!/\b(?:under|over)[-\s]?$/i.test(before) ||
        /\b(?:child(?:ren)?|kids?|babies|infants?|anyone|those)\s\S+$/i.test(before.trimEnd())),
    example: 'My youngest, who is «6», chose the yellow.',
    counterexample: 'Whoever is quick needs «6» strips.',
  },
] as const satisfies readonly Recogniser[];

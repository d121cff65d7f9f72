/** Numbers that are names: of fabrics, rows, rooms, patterns, versions, and parts of names. */
import type { Recogniser } from '../recognisers.ts';
import { countsPieces, isBareInteger, isGlued, isTold, measuresBehind } from '../sights.ts';

const LABELLED =
  'fabric|colou?r|shade|tone|colou?rway|border|round|row|column|unit|block|section|segment|quadrant|panel|clue|part|day|week|month|lesson|' +
  'session|chapter|issue|volume|option|template|pattern|strip|piece|handout|leaflet|booklet|worksheet|workshop|edition|episode|' +
  'lock|lot|sheet|shop|room|suite|flat|floor|hall|stand|booth|stall|level|phase|project|bag|tip|note|corner|version|method';
const JOINER = '\\s?(?:,\\s?and|,|and|&|[-–—]|to|or|through|thru)\\s?';
/** Right behind the last of a list comes no mark, fraction or further digit. */
const MEMBER = '\\d{1,3}(?![\\d/"”″½¼¾])';

export const LABELS = [
  {
    reason: 'label',
    before: new RegExp(
      `(?<!\\b(?:per|each|every|of|next|last|same|other|this|that|a)\\s)\\b(?:${LABELLED})\\s$`,
      'i',
    ),
    when: (sight) =>
      isBareInteger(sight.number, 0, 9999) &&
      !countsPieces(sight.text, sight.number.end) &&
      !measuresBehind(sight),
    example: 'Sew Row «2» to the top.',
    counterexample: 'In the row «8» blocks meet.',
  },
  {
    reason: 'label',
    before:
      /(?<!\b(?:finished|unfinished|cut|final|block|quilt|top|trim|total|overall|strip|square|piece|unit|border|print|paper|right|that|same|this|actual|to)\s)\bsizes?\s$/i,
    when: (sight) =>
      isBareInteger(sight.number, 0, 130) &&
      !countsPieces(sight.text, sight.number.end) &&
      !measuresBehind(sight),
    example: 'A snap of size «20» holds the flap.',
    counterexample: 'A finished size «20» x 24 is small.',
  },
  {
    reason: 'label',
    before: new RegExp(`\\b(?:${LABELLED})s\\s(?:\\d{1,3}${JOINER}){1,6}$`, 'i'),
    when: ({ number }) => isBareInteger(number, 0, 999),
    example: 'Sew rows 1, 2 and «3» together.',
    counterexample: 'Sew the rows and «3» borders together.',
  },
  {
    reason: 'label',
    before: new RegExp(`\\b(?:${LABELLED})s\\s$`, 'i'),
    behind: new RegExp(`^${JOINER}${MEMBER}`),
    when: ({ number }) => isBareInteger(number, 0, 999),
    example: 'Sew rows «1» and 2 together.',
    counterexample: 'Sew rows «1»" apart.',
  },
  {
    reason: 'label',
    before: new RegExp(
      `\\b(?:${LABELLED})\\s(?:\\d{1,3},\\s?){0,6}\\d{1,3},?\\s?(?:and|&|[-–—]|to|or)\\s?$`,
      'i',
    ),
    when: (sight) =>
      isBareInteger(sight.number, 0, 9999) &&
      !countsPieces(sight.text, sight.number.end) &&
      !measuresBehind(sight),
    example: 'Press Fabric 1 and «2» well.',
    counterexample: 'From Fabric 1 and «2» strips make a set.',
  },
  {
    reason: 'label',
    before: new RegExp(`\\b(?:${LABELLED})\\s(?:\\d{1,3},\\s){1,6}$`, 'i'),
    behind: new RegExp(`^(?:,\\s\\d{1,3}){0,6},?\\s(?:and|&|or)\\s${MEMBER}`),
    when: ({ number }) => isBareInteger(number, 0, 999),
    example: 'Press Fabric 1, «2» and 3 well.',
    counterexample: 'From Fabric 1, «2» strips.',
  },
  {
    reason: 'label',
    before: /(?:#\s?|\b(?:No|Nos|Nr)\.?\s?|\b(?:no|nos|nr)\.\s?|(?:^|[\s(])[A-Z]{1,2}-)$/,
    when: ({ number }) => number.unit === undefined,
    example: 'Sew piece F-«1» to the end.',
    counterexample: 'Sew piece F - «1» of them.',
  },
  {
    reason: 'label',
    before: /\bnumber\s$/i,
    when: (sight) =>
      isBareInteger(sight.number, 0, 9999) &&
      !countsPieces(sight.text, sight.number.end) &&
      !/\b(?:total|whole|the|a|their|this|that)\snumber\s$/i.test(sight.before),
    example: 'The quilt in the picture is number «31» for me.',
    counterexample: 'The total number «31» is odd.',
  },
  {
    reason: 'label',
    when: isGlued,
    example: 'Sew B«2» to C.',
    counterexample: 'Cut «18»strips.',
  },
  {
    reason: 'version number',
    before: /\b(?:v(?:ersion|er)?|rev(?:ision)?|edition|printing|release)\.?\s?[\d.]*$/i,
    when: (sight) =>
      sight.number.unit === undefined && !isTold(sight) && !countsPieces(sight.text, sight.number.end),
    example: 'This is version «1.2» of the pattern.',
    counterexample: 'The other version takes «1.2» m.',
  },
] as const satisfies readonly Recogniser[];

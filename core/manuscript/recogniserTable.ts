/**
 * How numbers that measure nothing are told from those that do, the surest first.
 *
 * The rows follow the forms of manuscripts that name such numbers: steps, labels, references, ordinals, and the
 * numbers of needles, threads and tools. Every row is tested with its own example and counterexample.
 */

import type { Recogniser } from './recognisers.ts';
import {
  countsPieces,
  isBareInteger,
  isCardinal,
  isGlued,
  isOrdinaryWord,
  isYear,
  runAround,
  runBehind,
} from './sights.ts';

const MONTH =
  '(?:Jan(?:uary)?|Feb(?:ruary)?|Mar(?:ch)?|Apr(?:il)?|May|June?|July?|Aug(?:ust)?|Sept?(?:ember)?|Oct(?:ober)?|Nov(?:ember)?|Dec(?:ember)?)';
/** Earlier members of a list: the `1, ` before the 2 of "rows 1, 2 and 3". */
const LIST = '(?:\\d{1,3}[A-Za-z]?\\s?(?:,|and|&|-|–|—|to|or|,\\s?and)\\s?){0,6}';
const LABELLED =
  'fabric|colou?r|border|round|row|column|unit|block|section|segment|quadrant|panel|clue|part|day|week|month|lesson|' +
  'session|chapter|issue|volume|option|template|pattern|strip|piece|size';
const NEEDLES = '60|65|70|75|80|90|100|110|120|130';
const NEEDLE_PARTNERS = '8|9|10|11|12|14|16|18|19|20|21';

export const RECOGNISERS = [
  {
    reason: 'ordinal',
    when: ({ number }) => number.notation.ordinal !== '' && isCardinal(number),
    example: 'Sew the «2nd» border on.',
    counterexample: 'Each wedge is «1/8th» of a circle.',
  },
  {
    reason: 'percentage',
    behind: /^\s?(?:%|per\s?cent\b)/i,
    example: 'Use «100»% cotton.',
    counterexample: 'Use «100» cotton squares.',
  },
  {
    reason: 'price',
    before: /[$£€]\s?$/,
    example: 'The kit costs $«48».',
    counterexample: 'The kit holds «48» squares.',
  },
  {
    reason: 'price',
    behind: /^\s?(?:€|USD\b|GBP\b|EUR\b|dollars?\b|cents?\b|pounds?\b)/,
    example: 'The kit costs «48» dollars.',
    counterexample: 'The kit fills «48» squares.',
  },
  {
    reason: 'temperature',
    behind: /^\s?°\s?[CF]\b/,
    example: 'Press at «150» °C, and mind the steam.',
    counterexample: 'Cut at «150» cm.',
  },
  {
    reason: 'angle',
    behind: /^(?:\s?[°º]|[-\s]degrees?\b)/,
    example: 'Line up the «60»° mark.',
    counterexample: 'Line up the «60» strips.',
  },
  {
    reason: 'time of day',
    behind: /^(?::\d\d(?!\d)|\s?[ap]\.?m\b)/,
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
    reason: 'length of time',
    behind: /^[-\s](?:seconds?|minutes?|mins?|hours?|hrs?|days?|weeks?|months?|years?)\b/i,
    example: 'Soak it for «20» minutes.',
    counterexample: 'Soak «20» squares.',
  },
  {
    reason: 'date',
    behind: new RegExp(`^\\s(?:of\\s)?${MONTH}\\b(?!\\s\\w+\\s(?:sew|cut))`),
    when: ({ number }) => isBareInteger(number, 1, 31),
    example: 'Revised «14» June 2019.',
    counterexample: 'Quilt «14» juniper blocks.',
  },
  {
    reason: 'date',
    before: new RegExp(`\\b${MONTH}\\.?\\s$`),
    when: ({ number }) => isBareInteger(number, 1, 31),
    example: 'Revised June «14», 2019.',
    counterexample: 'You may cut «14» strips.',
  },
  {
    reason: 'date',
    when: ({ number, text }) =>
      !countsPieces(text, number.end + runBehind(text, number).length) &&
      /^(?:\d{1,2}([./-])\d{1,2}\1(?:\d\d|(?:19|20)\d\d)|(?:19|20)\d\d-\d\d-\d\d)$/.test(
        runAround(text, number),
      ),
    example: 'Revised 6/«14»/19.',
    counterexample: 'Makes 12/«20»/30 blocks.',
  },
  {
    reason: 'year',
    when: (sight) => isYear(sight),
    example: 'First shown in «2019».',
    counterexample: 'You need «2016» squares.',
  },
  {
    reason: 'telephone number',
    before: /\b(?:tel|telephone|phone|call|fax|mobile)\b[^\p{L}]{0,24}$/iu,
    example: 'Telephone: 020 7946 «0958».',
    counterexample: 'Call the «4» corner squares A.',
  },
  {
    reason: 'telephone number',
    when: ({ number, text }) => /^(?:\+?\d[-.])?(?:\d{3}[-.])?\d{3}[-.]\d{4}$/.test(runAround(text, number)),
    example: 'Questions? 555-«0142».',
    counterexample: 'Cut 30-«6»" squares.',
  },
  {
    reason: 'article number',
    before: /\b(?:sku|item|style|art(?:icle)?|isbn|ref)\b\.?\s?(?:no\.?\s?|#\s?|:\s?)?[\w-]{0,12}$/i,
    example: 'Plum, style «4011».',
    counterexample: 'Plum squares: «4011» in all.',
  },
  {
    reason: 'article number',
    when: ({ number, text }) =>
      number.unit === undefined &&
      /^\d{5,}(?:-\d+)*$/.test(runAround(text, number)) &&
      !countsPieces(text, number.end),
    example: 'Plum, 40118-«22».',
    counterexample: 'Cut «12000» hexagons.',
  },
  {
    reason: 'needle size',
    behind: new RegExp(`^/(?:${NEEDLE_PARTNERS})(?![\\d/])`),
    when: ({ number, text }) => new RegExp(`^(?:${NEEDLES})$`).test(text.slice(number.start, number.end)),
    example: 'Sew with size «80»/12.',
    counterexample: 'Fabric is «44»/45" wide.',
  },
  {
    reason: 'needle size',
    before: new RegExp(`(?<![\\d/])(?:${NEEDLES})/$`),
    when: ({ number, text }) =>
      new RegExp(`^(?:${NEEDLE_PARTNERS})$`).test(text.slice(number.start, number.end)),
    example: 'Sew with size 80/«12».',
    counterexample: 'Fabric is 44/«45»" wide.',
  },
  {
    reason: 'needle size',
    behind: /^\s(?:\p{L}+\s)?(?:needles?|sharps|betweens)\b/iu,
    when: ({ number }) => number.unit === undefined,
    example: 'Quilt with «10» sharps.',
    counterexample: 'Quilt with «10» stars.',
  },
  {
    reason: 'thread weight',
    behind: /^[-\s]?(?:wt|weight|ply|denier|tex)\b/i,
    example: 'Piece with «50» wt cotton.',
    counterexample: 'Piece «50» strips.',
  },
  {
    reason: 'stitch length',
    behind: /^\s?(?:mm\s)?(?:stitch(?:es)?|sts)\b/i,
    example: 'Sew «15» stitches per inch.',
    counterexample: 'Stitch «15» strips.',
  },
  {
    reason: 'stitch length',
    before: /\bstitch(?:es)?(?:\slength(?:\s(?:of|at|to|is|about))?|\s(?:of|at|to|is)):?\s(?:about\s)?$/i,
    when: ({ number }) => number.unit === undefined || number.unit === 'mm',
    example: 'Set the stitch length to «2.0».',
    counterexample: 'Stitch «¼»" from the edge.',
  },
  {
    reason: 'grit of sandpaper',
    behind: /^[-\s]grit\b/i,
    example: 'A scrap of «320»-grit paper holds the fabric.',
    counterexample: 'A scrap of «320» cm holds it.',
  },
  {
    reason: 'size of a tool',
    behind:
      /^(?:["”″]?\s?[x×X]\s?\d[\d\s./⁄½¼¾⅛⅜⅝⅞-]*(?:["”″]|cm|in\b)?)?\s(?:\p{L}+\s){0,2}(?:rulers?|mats?|rotary|cutters?|hoop|paper|cardstock)\b/iu,
    example: 'You need a «6½»" x 24" ruler.',
    counterexample: 'You need a «6½»" x 24" strip.',
  },
  {
    reason: 'size of a tool',
    behind: /^\s(?:\p{L}+\s)?foot\b/iu,
    when: ({ number }) => number.unit === 'in' || number.unit === 'mm',
    example: 'Use a «¼»" foot.',
    counterexample: 'Sew «¼»" from the foot of the seam.',
  },
  {
    reason: 'figure reference',
    before: new RegExp(
      `\\b(?:fig(?:ure)?s?|diagrams?|diag|photos?|pictures?|pic|illustrations?|illus|charts?|tables?)\\.?\\s${LIST}$`,
      'i',
    ),
    when: ({ number }) => isBareInteger(number, 0, 999),
    example: 'Arrange them as in Figures 2 and «3».',
    counterexample: 'The figures show «3» strips.',
  },
  {
    reason: 'page reference',
    before: new RegExp(`\\b(?:pages?\\s|pp?\\.\\s?)${LIST}$`, 'i'),
    when: ({ number }) => isBareInteger(number, 0, 9999),
    example: 'See pages 12 and «14».',
    counterexample: 'Print the pages and cut «14» shapes.',
  },
  {
    reason: 'step number',
    before: new RegExp(`\\bsteps?\\s${LIST}$`, 'i'),
    when: ({ number }) => isBareInteger(number, 0, 999),
    example: 'Repeat steps 3–«5».',
    counterexample: 'In this step make «5» units.',
  },
  {
    reason: 'step number',
    before: /^\s*$/,
    behind:
      /^(?:[.)]\s|\s(?=(?:Cut|Sew|Press|From|Make|Join|Arrange|Lay|Repeat|Trim|Draw|Place|Pin|Fold|Stitch|Mark|Layer|Quilt|Attach|Bind|Turn|Using|With|To)\s))/,
    when: ({ number }) => isBareInteger(number, 0, 99),
    example: '«3» Cut 4 strips.',
    counterexample: '«3» Ripple blocks.',
  },
  {
    reason: 'label',
    before: new RegExp(`(?<!\\b(?:per|each|every|of)\\s)\\b(?:${LABELLED})\\s$`, 'i'),
    when: ({ number, text }) => isBareInteger(number, 0, 999) && !countsPieces(text, number.end),
    example: 'Sew Row «2» to the top.',
    counterexample: 'In the row «8» blocks meet.',
  },
  {
    reason: 'label',
    before: new RegExp(
      `\\b(?:${LABELLED})s\\s(?:\\d{1,3}\\s?(?:,|and|&|-|–|—|to|or|,\\s?and)\\s?){1,6}$`,
      'i',
    ),
    when: ({ number }) => isBareInteger(number, 0, 999),
    example: 'Sew rows 1, 2 and «3» together.',
    counterexample: 'Sew the rows and «3» borders together.',
  },
  {
    reason: 'label',
    before: new RegExp(`\\b(?:${LABELLED})s\\s$`, 'i'),
    behind: /^\s?(?:,|and|&|-|–|—|to|or|through)\s?\d{1,3}(?![\d/"”″½¼¾])/,
    when: ({ number }) => isBareInteger(number, 0, 999),
    example: 'Sew rows «1» and 2 together.',
    counterexample: 'Sew rows «1»" apart.',
  },
  {
    reason: 'label',
    before: new RegExp(
      `\\b(?:${LABELLED})\\s(?:\\d{1,3},\\s?){0,6}\\d{1,3},?\\s?(?:and|&|-|–|to|or)\\s?$`,
      'i',
    ),
    when: ({ number, text }) => isBareInteger(number, 0, 999) && !countsPieces(text, number.end),
    example: 'Press Fabric 1 and «2» well.',
    counterexample: 'From Fabric 1 and «2» strips make a set.',
  },
  {
    reason: 'label',
    before: new RegExp(`\\b(?:${LABELLED})\\s(?:\\d{1,3},\\s){1,6}$`, 'i'),
    behind: /^(?:,\s\d{1,3}){0,6},?\s(?:and|&|or)\s\d{1,3}(?![\d/"”″½¼¾])/,
    when: ({ number }) => isBareInteger(number, 0, 999),
    example: 'Press Fabric 1, «2» and 3 well.',
    counterexample: 'From Fabric 1, «2» strips.',
  },
  {
    reason: 'label',
    before: /(?:#\s?|\b(?:No|Nos|Nr)\.?\s?|(?:^|[\s(])[A-Z]{1,2}-)$/,
    when: ({ number }) => number.unit === undefined,
    example: 'Sew piece F-«1» to the end.',
    counterexample: 'Sew piece F - «1» of them.',
  },
  {
    reason: 'label',
    when: isGlued,
    example: 'Sew B«2» to C.',
    counterexample: 'Cut «18»strips.',
  },
  {
    reason: 'version number',
    before: /\bv(?:ersion|er)?\.?\s?[\d.]*$/i,
    when: ({ number }) => number.unit === undefined,
    example: 'This is version «1.2» of the pattern.',
    counterexample: 'The other version takes «1.2» m.',
  },
  {
    reason: 'part of a name',
    behind:
      /^(?:[-\s][Pp]atch\b|['’]s\b|[-\s]at[-\s]a[-\s]time\b|[-‐‑](?!(?:strip|piece|block|square|unit)s?\b)\p{L})/u,
    when: ({ number }) => number.unit === undefined,
    example: 'Make four «9»-patch blocks.',
    counterexample: 'Make «9» patches.',
  },
  {
    reason: 'number of times',
    behind: /^(?:\s|\smore\s)times?\b/i,
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
    reason: 'ordinary word',
    when: isOrdinaryWord,
    example: 'Sew them to «one» another.',
    counterexample: 'Cut «one» square.',
  },
] as const satisfies readonly Recogniser[];

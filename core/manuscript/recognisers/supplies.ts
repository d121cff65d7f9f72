/** Needles, threads, stitches, the settings of a machine, and the sizes and numbers of tools. */
import type { Recogniser } from '../recognisers.ts';
import { countsPieces, isBareInteger } from '../sights.ts';

const NEEDLES = '60|65|70|75|80|90|100|110|120|130';
const NEEDLE_PARTNERS = '8|9|10|11|12|14|16|18|19|20|21';
/** One side of a tool as authors write it, with its mark. */
const SIDE = "\\d[\\d\\s./⁄½¼¾⅛⅜⅝⅞-]*(?:\\s?(?:[\"”″]|''|cm\\b|mm\\b|in\\b\\.?|inch(?:es)?\\b))?";
const TOOL =
  '(?:rulers?|(?:cutting\\s|pressing\\s|ironing\\s)?(?:mats?|boards?)|rotary|cutters?|blades?|hoops?|frames?|iron|lamp|(?:masking|painters?|washi)\\stape|safety[-\\s]pins?)';
/** Adjectives of a tool; "6\" with your ruler" measures. */
const QUALIFIER =
  '(?:(?!(?:with|from|on|by|using|of|along|to|and|or|at|in|into|under|over|off|past|for|as|the|your|a|an|each)\\s)[\\p{L}-]+\\s)';

export const SUPPLIES = [
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
    behind: new RegExp(
      `^(?:\\s?(?:or|to|[-–/])\\s?\\d{1,3})?\\s${QUALIFIER}?(?:needles?|sharps?|betweens?|milliners|crewels?)\\b`,
      'iu',
    ),
    when: ({ number, before, behind }) =>
      number.unit === undefined &&
      (!/(?:between|sharp)\b/i.test(behind) || /\bsizes?\s(?:\d{1,2}\s(?:or|to)\s)?$/i.test(before)),
    example: 'Quilt with «10» sharps.',
    counterexample: 'Quilt with «10» stars.',
  },
  {
    reason: 'needle size',
    before:
      /\b(?:needles?|sharps?|betweens?|milliners)\b[,:(]{0,2}\s?(?:sizes?\s|no\.?\s)?(?:\d{1,3}\s?(?:\/|or|to|[-–])\s?)?$/i,
    when: ({ number, text }) => isBareInteger(number, 1, 130) && !countsPieces(text, number.end),
    example: 'Spare needles, size «80».',
    counterexample: 'With new needles «80» squares are soon sewn.',
  },
  {
    reason: 'thread weight',
    behind: /^[-\s]?(?:wt|weight|ply|denier|tex|strands?)\b/i,
    when: ({ number }) => number.unit === undefined,
    example: 'Piece with «50» wt cotton.',
    counterexample: 'Piece «50» strips.',
  },
  {
    reason: 'thread weight',
    before:
      /\b(?:threads?|perl[eé]|floss)(?!\p{L})[,:]?\s(?:size\s|no\.?\s|weight\s|wt\.?\s)?(?:\d{1,3}\/)?$/iu,
    when: ({ number, text }) => isBareInteger(number, 2, 120) && !countsPieces(text, number.end),
    example: 'Quilt in coton perlé, size «12».',
    counterexample: 'Without a thread «12» squares come loose.',
  },
  {
    reason: 'thread weight',
    behind: new RegExp(`^(?:/[236])?\\s${QUALIFIER}?thread(?:s|\\scount)?\\b`, 'iu'),
    when: ({ number, text }) => isBareInteger(number, 2, 999) && !countsPieces(text, number.end),
    example: 'Quilt with a «40» cotton thread.',
    counterexample: 'Quilt «40» threadbare squares.',
  },
  {
    reason: 'length of thread',
    before: /\b(?:reels?|spools?|cones?|skeins?)\sof\s[^.;:\d\n]{1,30}[,(]\s?$/i,
    when: ({ number }) => number.unit === 'm' || number.unit === 'yd',
    example: 'Two reels of ecru cotton, «500 m» each.',
    counterexample: 'Wind the reel, and cut «500 m» of tape.',
  },
  {
    reason: 'length of thread',
    behind: /^\s(?:\p{L}+\s){0,2}(?:of\s(?:\p{L}+\s)?thread|reels?|spools?|cones?|skeins?)\b/iu,
    when: ({ number }) => number.unit === 'm' || number.unit === 'yd',
    example: 'A «500 m» spool lasts for years.',
    counterexample: 'A «3 m» length of tape lasts for years.',
  },
  {
    reason: 'stitch length',
    behind:
      /^(?:\s?(?:[-–]|to|or)\s?\d{1,2}(?:\.\d+)?)?\s?(?:mm\s)?(?:stitches|sts|spi|stitch(?:\slength)?(?![-\s](?:and|&|n)\b)(?![-\w]))\b/i,
    example: 'Sew «15» stitches per inch.',
    counterexample: 'Sew «15» stitch-and-flip units.',
  },
  {
    reason: 'stitch length',
    behind: /^\s(?:to\s(?:the|an)|per)\sinch\b/i,
    when: ({ number }) => number.unit === undefined,
    example: 'Quilt it by hand, about «9» to the inch.',
    counterexample: 'Quilt it by hand, «9» to the row.',
  },
  {
    reason: 'stitch length',
    before:
      /\bstitch(?:es)?(?:\slength(?:\s(?:of|at|to|is|about))?|\s(?:of|at|to|is))?:?\s(?:about\s)?\(?(?:\d(?:\.\d+)?\s?(?:mm\s?)?(?:[-–]|to|or)\s?)?$/i,
    when: ({ number, before, text }) =>
      (number.unit === undefined || number.unit === 'mm') &&
      number.value.compare(8) <= 0 &&
      (/length|\s(?:of|at|to|is):?\s|\($/i.test(before.slice(-24)) ||
        number.notation.numeral.form === 'decimal') &&
      !countsPieces(text, number.end),
    behind: /^(?!\s?(?:mm\s)?(?:to|from|on|at|along|outside|beside|beyond|away)\b)/i,
    example: 'Set the stitch length to «2.0».',
    counterexample: 'Stitch «¼»" from the edge.',
  },
  {
    reason: 'setting of a machine',
    before:
      /\b(?:tension|speed|foot\spressure|needle\sposition|(?:stitch|zigzag)\s(?:width|number)|(?:presser|patchwork|quilting|walking|piecing)\sfoot)\b(?:\s(?:of|to|at|on|is|no\.?|number))?:?\s$/i,
    when: ({ number, text }) =>
      (number.unit === undefined || number.unit === 'mm') && !countsPieces(text, number.end),
    example: 'Set the tension to «4».',
    counterexample: 'Mind the tension of the «4» bias edges.',
  },
  {
    reason: 'grit of sandpaper',
    behind: /^[-\s]grit\b/i,
    example: 'A scrap of «320»-grit paper holds the fabric.',
    counterexample: 'A scrap of «320» cm holds it.',
  },
  {
    reason: 'size of a tool',
    behind: new RegExp(
      `^(?:["”″]?\\s?[x×X]\\s?${SIDE})?[-\\s]${QUALIFIER}{0,2}(?:${TOOL}|paper|card(?:stock)?)\\b(?!-\\p{L}|\\s(?:piec|hexagon|template|shape|strip|square))`,
      'iu',
    ),
    when: ({ number, before, behind }) =>
      number.unit !== undefined ||
      /^["”″]?\s?[x×X]\s?\d/.test(behind) ||
      /\d["”″]?\s?(?:in\.?|cm|mm)?\s?[x×X]\s?$/.test(before),
    example: 'You need a «6½»" x 24" ruler.',
    counterexample: 'You need a «6½»" x 24" strip.',
  },
  {
    reason: 'size of a tool',
    before: new RegExp(`\\b${TOOL}[,:]?\\s(?:at\\sleast\\s)?\\(?(?:${SIDE}\\s?[x×X]\\s?)?$`, 'iu'),
    behind: new RegExp(
      `^(?:\\s?[x×X]\\s?${SIDE})?(?:\\s(?:long|wide))?\\s?(?:[,.;)\\n]|$|and\\b|or\\b)`,
      'iu',
    ),
    when: ({ number }) => number.unit !== undefined,
    example: "Rotary cutter, mat, quilter's ruler «6 in» x 24 in, pins.",
    counterexample: 'Beside the ruler «6»" of fabric must lie.',
  },
  {
    reason: 'size of a tool',
    before: new RegExp(
      `\\d\\S*\\s(?:\\p{L}+\\s)?rulers?(?:,|\\s(?:and|or|&))\\san?\\s(?:${SIDE}\\s?[x×X]\\s?)?$`,
      'iu',
    ),
    behind: new RegExp(
      `^(?:\\s?[x×X]\\s?${SIDE})?(?:\\s(?:square|one)\\b(?!\\s(?:of|from)))?\\s?(?:[,.;)\\n]|$)`,
      'iu',
    ),
    when: ({ number }) => number.unit !== undefined,
    example: 'A 24" ruler and a «12½»" square, pins.',
    counterexample: 'With a 24" ruler and a «12½»" square of plum, begin.',
  },
  {
    reason: 'size of a tool',
    before: new RegExp(`\\b${TOOL}\\s(?:of|that\\sis)\\s(?:at\\sleast\\s)?$`, 'iu'),
    when: ({ number }) => number.unit !== undefined,
    example: 'Bring a square ruler of «9½ inches».',
    counterexample: 'Bring a strip of «9½ inches».',
  },
  {
    reason: 'size of a tool',
    behind: new RegExp(`^[-\\s]${QUALIFIER}?foot\\b`, 'iu'),
    when: ({ number }) => number.unit === 'in' || number.unit === 'mm',
    example: 'Use a «¼»" foot.',
    counterexample: 'Sew «¼»" from the foot of the seam.',
  },
  {
    reason: 'number of tools',
    behind:
      /^\s(?:(?!(?:of|and|or|in|on|at|to|for|with|from|by|as|per|under)\s)[\p{L}-]+\s){0,2}(?:reels?|spools?|bobbins?|skeins?|mugs?|pencils?|pens|markers?|scissors|shears|pins|clips|pegs|chairs|irons?|trays)\b(?!\s(?:strips?|squares?|blocks?|pieces?|borders?|prints?))/iu,
    when: ({ number, text }) => number.unit === undefined && !countsPieces(text, number.end),
    example: 'Pack «2» reels of cotton.',
    counterexample: 'Pack «2» real cotton fat quarters.',
  },
  {
    reason: 'number of tools',
    behind: /^\sof\s(?:[\p{L}-]+\s){0,2}(?:scissors|shears|snips|tweezers|hands|glasses|gloves)\b/iu,
    when: ({ number }) => number.unit === undefined,
    example: 'You need «a pair» of sharp scissors.',
    counterexample: 'You need «a pair» of sharp points.',
  },
] as const satisfies readonly Recogniser[];

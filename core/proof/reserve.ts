/**
 * Numbers that do not say what they seem to say, so that a difference proves nothing: about 8 in, 2 to 3 yards,
 * 5 ft 6 in. Such a number may be verified, but it is never called wrong, and nothing is offered to change it.
 *
 * "At least 7 strips" states a requirement and "a scant ¼"" the seam itself: both can be wrong.
 */
import type { ReadNumber } from '../manuscript/manuscript.ts';
import { countsPieces } from '../manuscript/sights.ts';

/** What a reservation looks at. */
export interface Standing {
  readonly number: ReadNumber;
  /** Whether the numbers beside it are tied too, one for each size: `5"/7"` is then no range. */
  readonly isList: boolean;
  /** A little of the text right before the number, and right behind it. */
  readonly before: string;
  readonly behind: string;
}

/** One way to speak with reserve. All of its conditions must hold. */
export interface Reservation {
  readonly before?: RegExp;
  readonly behind?: RegExp;
  readonly when?: (standing: Standing) => boolean;
  /** A sentence in which the number in « » is one, and the likest one in which it is not. */
  readonly example: string;
  readonly counterexample: string;
}

/** Verbs behind which "over", "under" and "around" say where: press the seam over, trim under, sew around. */
const HANDLING =
  '(?:press|fold|turn|flip|lap|hem|roll|tuck|trim|bring|sew|stitch|slide|place|lay|pin|go|quilt|wrap|bind|run|all)';
const HANDLED = `(?<!\\b${HANDLING}(?:ing|ed|s)?\\s(?:[^.;,\\d]{0,24}\\s)?)`;

export const RESERVATIONS: readonly Reservation[] = [
  {
    before:
      /(?:\b(?:about|approx(?:imately)?|roughly|nearly|almost|circa|ca|close\sto|maybe|perhaps|probably|say|estimated(?:\sat)?)\b\.?,?\s|[~≈]\s?)(?:an?\s)?$/i,
    example: 'It is about «65»" wide.',
    counterexample: 'The note about it says «65»".',
  },
  {
    before: new RegExp(`${HANDLED}\\baround\\s$`, 'i'),
    example: 'It is around «65»" wide.',
    counterexample: 'Sew the braid around «65»" of edge.',
  },
  {
    before: /(?:^|[^,]\s)some\s$/i,
    when: ({ number }) => number.value.compare(2) > 0,
    example: 'There are some «40» squares.',
    counterexample: 'Of some, «40» are blue.',
  },
  {
    before: /(?:[±]|\+\/[-−])\s?$/,
    example: 'Blocks may differ by ± «⅛»".',
    counterexample: 'Blocks are cut with + «⅛»".',
  },
  {
    before:
      /(?:(?<!\b(?:sew|stitch|quilt|cut|press|trim|mark)\s)\bup\sto|\bmore\sthan|(?<!\b(?:no|not)\s)\b(?:less|fewer)\sthan|\bat\smost|\bno\s(?:longer|wider|larger)\sthan)\s$/i,
    example: 'It takes up to «7» strips.',
    counterexample: 'It takes at least «7» strips.',
  },
  {
    before: new RegExp(`${HANDLED}\\b(?:over|under|above|below)\\s$`, 'i'),
    example: 'The edge is over «280»" long.',
    counterexample: 'Press the long seam over «¼»".',
  },
  {
    before: /\b(?:just|slightly|a\slittle|a\sbit|a\sshade|a\stouch|well)\s(?:over|under|above|below)\s$/i,
    example: 'Trim it to just under «2½»".',
    counterexample: 'Trim it under «2½»".',
  },
  {
    before: /\bbetween\s$/i,
    behind: /^\s?(?:and|to|[-–—])\s?\d/,
    example: 'It takes between «6» and 8 strips.',
    counterexample: 'Sew it between «6» and then the other strips.',
  },
  {
    before: /\bbetween\s\d[^\s.;]*(?:\s(?:in|inch(?:es)?|cm|m|yds?|yards?))?\s(?:and|to)\s$/i,
    example: 'It takes between 6 and «8» strips.',
    counterexample: 'Sew it between strips and «8» squares.',
  },
  {
    before:
      /\b(?:if|in\scase)\b[^.;,]{0,50}\s(?:is|are|measures?|has|have|was|were|needs?|gives?|comes?(?:\sout)?(?:\s(?:at|to))?)\s(?:only\s)?$/i,
    example: 'If yours is «6¼»", your seams are a bit fat.',
    counterexample: 'If you measure it, the unit is «6¼»" tall.',
  },
  {
    before:
      /\b(?:may|might|could|should\syours)\s(?:\p{L}+\s)?(?:be|measure|need|have|take|come\s(?:out\s)?(?:at|to))\s(?:only\s|as\s\p{L}+\sas\s)?$/iu,
    example: 'Yours may be «6¼»" tall.',
    counterexample: 'Yours should be «6¼»" tall.',
  },
  {
    behind:
      /^(?:-?ish\b|[\s\p{L}]{0,18}[,\s]\s?\(?(?:or\s(?:so|thereabouts|more|less|fewer|longer|larger|bigger|wider)|give\sor\stake|more\sor\sless|approx(?:imately)?)\b)/iu,
    example: 'It is «65»" wide, give or take.',
    counterexample: 'It is «65»" wide, so take it.',
  },
  {
    before: /\b(?:give\sor\stake|plus\sor\sminus)\s(?:an?\s)?$/i,
    example: 'They are alike, give or take «¼»".',
    counterexample: 'They are alike; now take «¼»" off.',
  },
  {
    when: ({ number, isList }) => number.group?.kind === 'range' && !isList,
    example: 'Fabric is «44»/45" wide.',
    counterexample: 'Fabric is «44» x 45" large.',
  },
  {
    before: /\d["”″]?\s*(?:-|–|—|\bto\b|\bor\b)\s*$/i,
    when: ({ number, before }) => !(/\d\s*[-–—]\s*$/.test(before) && isCounted(number)),
    example: 'Cut 5-«6» strips.',
    counterexample: 'Cut 8 – «3½»" squares.',
  },
  {
    behind: /^\s*(?:–|—|-|to\b|or\b)\s*\d/i,
    when: ({ number, behind }) => !(number.unit === undefined && /^\s*[-–—]/.test(behind) && counts(number)),
    example: 'Cut «5»-6 strips.',
    counterexample: 'Cut «8» – 3½" squares.',
  },
  {
    before: /\d\s*(?:ft\b\.?|feet|foot|['’′]|yds?\b\.?|yards?|m)\s*(?:and|\+|,)?\s*$/i,
    when: ({ number: { unit } }) => unit === 'in' || unit === 'cm' || unit === 'mm',
    example: 'It is 5 ft «6 in» wide.',
    counterexample: 'It is in 5 parts, «6 in» wide.',
  },
  {
    behind: /^\s*(?:and|\+)?\s*\d[\d\s./½¼¾⅛⅜⅝⅞⅓⅔-]*(?:["”″]|''|in\b|inch|cm\b)/i,
    when: ({ number: { unit } }) => unit === 'ft' || unit === 'yd' || unit === 'm',
    example: 'It is «5 ft» 6 in wide.',
    counterexample: 'It is «5 ft» wide, and 6 in deep.',
  },
];

/** Whether it is the size of a count and a size: the 3½" of 8 – 3½" squares, the 3½ of 8 – 3½ x 9½ rectangles. */
function isCounted({ written, passage, group }: ReadNumber): boolean {
  if (group?.kind === 'size' && group.members[0] === written) return true;
  return written.unit !== undefined && countsPieces(passage.text, written.end);
}

/** Whether it is the count of such a pair. */
function counts({ written, passage: { numbers } }: ReadNumber): boolean {
  const next = numbers.find((number) => number.written.start >= written.end);
  return next !== undefined && isCounted(next);
}

/** How much text around a number is looked at. */
const NEARBY = 72;

export function standingOf(number: ReadNumber, isList: boolean): Standing {
  const { passage, written } = number;
  return {
    number,
    isList,
    before: passage.text.slice(Math.max(0, written.start - NEARBY), written.start),
    behind: passage.text.slice(written.end, written.end + NEARBY),
  };
}

export function isReservedBy({ before, behind, when }: Reservation, standing: Standing): boolean {
  return (
    (before === undefined || before.test(standing.before)) &&
    (behind === undefined || behind.test(standing.behind)) &&
    (when === undefined || when(standing))
  );
}

export function isReserved(number: ReadNumber, isList: boolean): boolean {
  const standing = standingOf(number, isList);
  if (RESERVATIONS.some((row) => isReservedBy(row, standing))) return true;
  // "Roughly 60 x 71 in" says so of both sides.
  const first = number.group?.kind === 'size' ? number.group.members[0] : undefined;
  const leader = number.passage.numbers.find(({ written }) => written === first);
  return leader !== undefined && leader !== number && isReserved(leader, isList);
}

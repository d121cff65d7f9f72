/** Squares against the triangles, or the units of two triangles, that the same sentence makes of them. */
import type { Contradiction } from './contradiction.ts';
import type { Said, SaidLine, Text, Told } from './said.ts';

const TWICE =
  /\b(?:twice (?:on the )?diagonal|(?:diagonally|corner to corner),? (?:twice|both ways)|twice diagonally|both (?:diagonals|ways diagonally)|in an X\b|on both diagonals|into quarters|quarter(?:ed|ing)\b|quarter-?cut)/i;
const ONCE =
  /\b(?:once (?:on the )?diagonal|diagonally once|once diagonally|(?:in half|in two) (?:on the )?diagonal|in half (?:from )?corner to corner|cut (?:them |each |these )?(?:on the )?diagonal(?:ly)?(?: once)?|along one diagonal|on one diagonal|halved diagonally)/i;
const MULTIPLIED =
  /\b(?:(?:from|of|for|in|with) (?:each|every)|per\b|each (?:fabric|print|colou?r|block)|both fabrics)/i;
/** Triangles that the author knows to be more than are needed, or fewer. */
const SPARE = /\b(?:need|use[ds]?|spare|extra|left ?over|discard|only|more|another|remain\w*|plus|toss)\b/i;
const RESULT = /\b(?:yield\w*|giv\w*|mak\w*|total\w*|in all|for|into|you (?:will |should )?have)\b|=|\(\s*$/i;

export function triangles({ lines }: Text): Contradiction[] {
  return lines.flatMap((line) => [...cutApart(line), ...atOnce(line)]);
}

function cutApart(line: SaidLine): Contradiction[] {
  return line.phrases.flatMap((squares, index) => {
    const pieces = line.phrases[index + 1];
    const [n, m] = [squares.count, pieces?.count];
    if (!pieces || !n || !m || pieces.size.length > 0) return [];
    if (
      !/\bsquares?\b/i.test(squares.own) ||
      /\btriangles?\b/i.test(squares.own.split(/\bsquares?\b/i)[0] ?? '')
    )
      return [];
    if (
      !/^[\s)\]]*(?:[\p{L}½¼’'-]+\s+){0,4}?(?:half-square |quarter-square |side |corner |setting )*triangles?\b(?!-square)/iu.test(
        textBehind(pieces),
      )
    )
      return [];
    const between = line.text.slice(squares.phrase.core.start, pieces.phrase.core.start);
    if (/\n\n|[.!?]\s+(?!cut|then|this|these|each)/i.test(between) || MULTIPLIED.test(line.text)) return [];
    const [isTwice, isOnce] = [TWICE.test(between), ONCE.test(between)];
    if (isTwice === isOnce && !isTwice) return [];
    const times = isTwice ? 4n : 2n;
    const given = n.value.mul(times);
    if (given.equals(m.value)) return [];
    if (given.compare(m.value) > 0) {
      const isTelling =
        RESULT.test(pieces.before) && [1n, 2n, 4n].some((f) => n.value.mul(f).equals(m.value));
      // Twelve triangles where ten or eleven are needed are no mistake.
      if (!isTelling || SPARE.test(line.text) || n.value.compare(2) < 0) return [];
    }
    return [
      {
        code: 'counts-disagree',
        message: `${squaresText(n)} cut ${isTwice ? 'twice' : 'once'} diagonally ${n.value.equals(1) ? 'gives' : 'give'} ${given.toString()} triangles, not ${m.text}.`,
        at: m,
        against: [{ told: n, says: `They are cut from ${n.text} of these squares.` }],
      },
    ];
  });
}

function squaresText({ text, value }: Told): string {
  const said = text.charAt(0).toUpperCase() + text.slice(1);
  return `${said} ${value.equals(1) ? 'square' : 'squares'}`;
}

function textBehind({ line, phrase }: Said): string {
  return line.text.slice(phrase.core.end);
}

const METHODS = { two: 2n, '2': 2n, four: 4n, '4': 4n, eight: 8n, '8': 8n } as const;
const METHOD = /\b(two|four|eight|2|4|8)[- ]at[- ](?:a[- ]time|once)\b/gi;
const UNITS =
  /^[\s)\]]*(?:[\p{L}’'-]+\s+){0,3}?(?:HSTs?|half[- ]square[- ]triangles?|triangle[- ]squares?|units?)\b/iu;

/** Pairs of squares, and the units that a method makes of each. */
function atOnce(line: SaidLine): Contradiction[] {
  const methods = [...new Set([...line.about.matchAll(METHOD)].map(([, word]) => word?.toLowerCase()))];
  const times = METHODS[methods[0] as keyof typeof METHODS];
  if (
    methods.length !== 1 ||
    !times ||
    MULTIPLIED.test(line.text) ||
    SPARE.test(line.text.replace(/\buse\b/i, ''))
  )
    return [];
  return line.phrases.flatMap((pairs, index) => {
    const { count: n } = pairs;
    if (!n || n.value.equals(1) || !/^[\s)\]]*(?:[\p{L}’'-]+\s+){0,2}?pairs?\b/iu.test(textBehind(pairs)))
      return [];
    const later = line.phrases.slice(index + 1).filter((each) => each.count && UNITS.test(textBehind(each)));
    const [units] = later;
    const m = units?.count;
    if (!units || !m || later.length !== 1 || !RESULT.test(units.before)) return [];
    const given = n.value.mul(times);
    if (given.equals(m.value)) return [];
    // A few units more than are needed are no mistake; as many as another method makes are.
    const isOther = [1n, 2n, 4n, 8n].some((factor) => n.value.mul(factor).equals(m.value));
    if (given.compare(m.value) > 0 && !isOther) return [];
    return [
      {
        code: 'counts-disagree',
        message: `${n.text} pairs of squares, ${methods[0]} units from each, make ${given.toString()}, not ${m.text}.`,
        at: m,
        against: [{ told: n, says: `They are made of ${n.text} pairs.` }],
      },
    ];
  });
}

/** A piece with a label of one letter: what the cutting list says of it against what the steps say. */
import type { Contradiction } from './contradiction.ts';
import { isLenient, type Said, type Text, type Told } from './said.ts';

/** A capital letter, perhaps with a digit. I is a word of its own, O a nought, and X a sign. */
const LABEL = '[A-HJ-NP-WYZ]\\d?';
/** What may carry a letter and is no piece. */
const OTHER = new RegExp(
  `\\b(?:fabrics?|blocks?|rows?|units?|sizes?|steps?|templates?|fig(?:ure|\\.)s?|diagrams?|charts?|colou?rs?|options?|versions?|borders?|prints?|sections?|parts?|columns?|tables?|quilts?|strips?|sets?|bags?) ${LABEL}\\b`,
);
/** "A: 16 squares", "| A | 16 | 2½" |", "Piece A – cut 16". */
const AHEAD = new RegExp(
  `^[\\s*_]*(?:pieces?|patch(?:es)?|label)?\\s*\\(?(${LABEL})\\)?[*_]*\\s*(?:[:.|–—)-]|$)`,
  'i',
);
/** "16 squares 2½" (A)", "label them A". */
const BEHIND = new RegExp(
  `^["”″]?\\s*(?:squares?|rectangles?|pieces?|patch(?:es)?)?,?\\s*(?:\\((?:pieces? |label(?:led|ed)? )?(${LABEL})\\)|(?:label(?:led|ed)?|marked?) (?:these |them |it |each )?[“"]?(${LABEL})[”"]?)(?![\\p{L}\\d])`,
  'u',
);
const SHAPE = '(?:squares?|rectangles?|pieces?|patch(?:es)?)';
/** "16 A squares", "a 2½" A square", "2½" squares A". */
const NAMED_BEHIND = new RegExp(
  `^["”″]?\\s*(?:(${LABEL}) ${SHAPE}\\b|${SHAPE} (${LABEL})(?![\\p{L}\\d’']))`,
  'u',
);
/** "the A squares (2½")". */
const NAMED_AHEAD = new RegExp(`(?<![\\p{L}\\d/×x])(${LABEL}) (?:${SHAPE} )?\\(?$`, 'u');
const SHAPED =
  /\b(?:trim\w*|finish\w*|unfinished|measur\w*|scraps?|fold\w*|press\w*|square up|half|halves|triangles?|diagonal\w*|corner to corner|sub-?cut)\b/i;
const CUTTING = /\bcut(?:ting)?\b/i;
/** Pieces that are cut block by block, or of which others with this label are cut elsewhere. */
const EACH =
  /\b(?:(?:each|every|per|one) (?:block|unit|quilt|fabric|print|colou?r)|more|another|also|repeat)\b/i;

/** Blocks with letters, and blocks of several kinds. */
const SEVERAL = new RegExp(`\\b(?:block|quilt)s? ${LABEL}\\b`);

interface Cut {
  readonly count: Told | undefined;
  readonly size: readonly Told[];
}

export function labels(text: Text): Contradiction[] {
  // Each block may have a piece A of its own.
  if (SEVERAL.test(text.words)) return [];
  const cut = cutPieces(text);
  return text.phrases.flatMap((said) => {
    const label = sewnLabel(said);
    const piece = label === undefined ? undefined : cut.get(label);
    return label && piece ? [...sizes(label, said, piece), ...counts(label, said, piece)] : [];
  });
}

/** The pieces whose label stands in one place of the cutting list only. */
function cutPieces(text: Text): Map<string, Cut> {
  const found = new Map<string, Cut | undefined>();
  for (const said of text.phrases) {
    const label = cutLabel(said);
    if (label === undefined) continue;
    const { count, size, line } = said;
    const isWhole = !EACH.test(line.about) && !isLenient(line.text) && !/\bstrips?\b|\bWOF\b/.test(line.text);
    found.set(label, found.has(label) || !isWhole ? undefined : { count, size });
  }
  return new Map([...found].flatMap(([label, cut]) => (cut ? [[label, cut] as const] : [])));
}

function cutLabel(said: Said): string | undefined {
  const { line, phrase, size } = said;
  if (size.length === 0 || OTHER.test(line.text) || !isCutting(said)) return undefined;
  const ahead = line.text.slice(0, phrase.core.start);
  const behind = BEHIND.exec(line.text.slice(phrase.core.end));
  return (
    (line.phrases[0]?.phrase === phrase ? AHEAD.exec(ahead)?.[1] : undefined) ?? behind?.[1] ?? behind?.[2]
  );
}

/** The label that stands right beside the numbers of a phrase of the steps. */
function sewnLabel(said: Said): string | undefined {
  const { line, phrase, sentence } = said;
  if (cutLabel(said) !== undefined || OTHER.test(sentence) || isCutting(said) || SHAPED.test(sentence))
    return undefined;
  const behind = NAMED_BEHIND.exec(line.text.slice(phrase.core.end));
  return behind?.[1] ?? behind?.[2] ?? NAMED_AHEAD.exec(line.text.slice(0, phrase.core.start))?.[1];
}

/** By its own words, or by the headings and lead-ins that it stands under. */
function isCutting({ line: { text, line } }: Said): boolean {
  const [spot] = line.spots;
  const headings = spot?.number.passage.context.headings ?? [];
  const around = line.layers.filter(({ where }) => where === 'lead-in' || where === 'list');
  return [text, ...headings.map((each) => each.text), ...around.map((each) => each.text)].some((each) =>
    CUTTING.test(each),
  );
}

function sizes(label: string, { size }: Said, cut: Cut): Contradiction[] {
  if (size.length !== cut.size.length) return [];
  const at = size.find(({ value }) => !cut.size.some((side) => side.value.equals(value)));
  const [first] = cut.size;
  if (!at || !first || at.number.unit !== first.number.unit) return [];
  return [
    {
      code: 'sizes-disagree',
      message: `Piece ${label} is cut ${shown(cut.size)}, but here it is ${shown(size)}.`,
      at,
      against: cut.size.map((told) => ({ told, says: `Piece ${label} is cut ${shown(cut.size)} here.` })),
    },
  ];
}

function shown(size: readonly Told[]): string {
  return size.map(({ text }) => text).join(' × ');
}

/** "all 16 A squares" must be all; no step can take more of them than are cut. */
function counts(label: string, { count, before, line }: Said, cut: Cut): Contradiction[] {
  if (!count || !cut.count || isLenient(line.text) || EACH.test(line.about)) return [];
  const isAll = /\ball(?: of)?(?: the| your)?\s*\(?$/i.test(before);
  const difference = count.value.compare(cut.count.value);
  if (difference === 0 || (difference < 0 && !isAll)) return [];
  return [
    {
      code: 'counts-disagree',
      message: `${cut.count.text} of piece ${label} are cut, but ${count.text} are sewn here.`,
      at: count,
      against: [{ told: cut.count, says: `${cut.count.text} of piece ${label} are cut here.` }],
    },
  ];
}

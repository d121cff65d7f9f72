/** The fabrics: from the materials list, where each stands beside the yardage or the fat quarters to buy. */
import type { Range } from '../../findings/finding.ts';
import { wordsOf } from '../../reading/stems.ts';
import type { Clause, Text } from '../text.ts';

export interface NamedFabric extends Range {
  readonly label: string;
  readonly name: string | undefined;
  readonly cutFrom: string | undefined;
}

const MATERIALS =
  /\b(?:materials?|fabrics?(?: requirements?)?|need|shopping|yardages?|requirements?|bring|supplies|grab)\b/i;
const NO_FABRIC =
  /\b(?:are|is|amounts?|quantit\w+|yardages?|batting|wadding|thread|cotton reels?|reels?|needles?|ruler|interfacing|ribbon|cord)\b/i;
const LABEL =
  /^(?:(?:[Ff]abric|[Cc]olou?r)\s+([A-Z]{1,2}|\d)\b|([A-Z]{1,2})(?=[,.):]? |\s*\(|$))[\s,:.)–—-]*/;
const LABEL_BEHIND = /\(([A-Z]{1,2})\)\s*$/;

export function findFabrics(text: Text): NamedFabric[] {
  const found = new Map<string, NamedFabric>();
  for (const clause of text.clauses) {
    const fabric = fabricIn(clause);
    if (!fabric) continue;
    const key = fabric.label.toLowerCase();
    if (!found.has(key)) found.set(key, fabric);
  }
  return [...found.values()];
}

function fabricIn(clause: Clause): NamedFabric | undefined {
  const { line, phrase, sides, count } = clause;
  const heads = line.layers.filter(({ where }) => where === 'heading').map(({ text }) => text);
  if (!heads.some((head) => MATERIALS.test(head)) && !isOnly(line.text)) return undefined;
  if (clause.says('part:selvage') >= 0.85) return undefined;
  const [side, second] = sides;
  const isQuarters = count && /^\)?\s*(?:fat quarters|FQs?)\b/i.test(clause.behind);
  const isYardage = side && !second && !count && isBought(clause);
  if (!isQuarters && !isYardage) return undefined;
  const sentenceStart = line.isRow ? 0 : startOf(line.text, phrase.core.start);
  const ahead = line.text.slice(sentenceStart, phrase.core.start).replace(/^[\s*•·]+/, '');
  const hasName = /\p{L}/u.test(ahead);
  const raw = hasName ? ahead : clause.behind.replace(/^[^\p{L}]*(?:yards?\b|yds?\b|of\b|\s)*/u, '');
  const named = nameOf(raw, line.isRow && hasName);
  if (!named || NO_FABRIC.test(named.name ?? named.label)) return undefined;
  const { start, end } = count ?? (side as Range);
  return { ...named, cutFrom: isQuarters ? 'fat quarters' : undefined, start, end };
}

/** "Blue, 5/8yd. White lawn, 2yd.": a list of fabrics in a line. */
function isOnly(text: string): boolean {
  return /^[^.:;]{2,60}[:,] \d\S*(?: \d\/\d)? ?(?:yards?|yds?|m|cm)\b/.test(text) && text.length < 60;
}

/** A yardage, or a number under a head that says yards. */
function isBought({ sides: [side], line, phrase, behind }: Clause): boolean {
  if (!side) return false;
  if (/^["”″)]*\s*(?:wide|square|from|for the (?:lap|twin))\b/i.test(behind)) return false;
  if (/^\)?\s*(?:yards?|yds?)\b/i.test(behind)) return true;
  if (side.unit === 'yd' || side.unit === 'm') return true;
  if (side.unit === 'cm') return side.values.every((value) => value.compare(7) > 0) && !line.isRow;
  const column = (phrase.size ?? phrase.count)?.sides[0].spots[0]?.column ?? '';
  return line.isRow && /\byards?\b/i.test(`${column} ${line.layers.map(({ text }) => text).join(' ')}`);
}

function startOf(text: string, end: number): number {
  const before = text.slice(0, end);
  const stop = [...before.matchAll(/[.;!?]\s+|\n/g)].at(-1);
  return stop ? stop.index + stop[0].length : 0;
}

function nameOf(raw: string, isRow: boolean): Pick<NamedFabric, 'label' | 'name'> | undefined {
  const cells = isRow ? raw.split(' | ') : [raw];
  const text = (cells[0] ?? '').replace(/\s+/g, ' ').trim();
  const led = LABEL.exec(text);
  const rest = led ? text.slice(led[0].length) : text;
  const behind = LABEL_BEHIND.exec(rest.replace(/[\s:,–—|-]+$/, ''));
  const label = led?.[1] ?? led?.[2] ?? behind?.[1];
  const name =
    (behind ? rest.slice(0, behind.index) : rest)
      .replace(/^\(([^)]*)\).*$/, '$1')
      .split(/[,:;(|–—.!]| for | which | to /)[0]
      ?.replace(/^(?:of|the|a)\s+/i, '')
      .trim() ?? '';
  const described = name || (isRow ? (cells[1] ?? '').trim() : '');
  if (label) return { label, name: described || undefined };
  if (!described || described.length > 40) return undefined;
  const word = /\bback(?:ing)?\b/i.test(described) ? 'backing' : wordsOf(described)[0];
  return word && /^\p{L}{3,}/u.test(word) ? { label: labelIn(described, word), name: described } : undefined;
}

/** The first telling word of a name as the manuscript spells it. */
function labelIn(name: string, word: string): string {
  if (word === 'backing') return word;
  const first = name.split(/\s+/).find((each) => /^\p{L}{3,}/u.test(each));
  return (first ?? word).toLowerCase().replace(/[^\p{L}\p{N}-]/gu, '');
}

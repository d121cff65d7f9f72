/** The cutting list: squares and rectangles that are cut from one fabric, with their number. */
import type { Range } from '../findings/finding.ts';
import type { Rational } from '../quantity/rational.ts';
import type { Clause, Text, Told } from './text.ts';

export interface CutPiece extends Range {
  readonly fabric: string;
  readonly count: Told;
  readonly width: Told;
  readonly length: Told;
  /** What it is for, as the list says: `corner`; `undefined` where it says no more than its shape. */
  readonly purpose: string | undefined;
}

/** What other entries of the block cut. */
const ELSEWHERE = new Set([
  'binding',
  'border',
  'backing',
  'batting',
  'sleeve',
  'piping',
  'sashing',
  'cornerstones',
  'setting side',
  'setting corner',
  'corner squares',
]);
const NOT_CUT = /\b(?:make|sew|trim|lay|arrange|place|pair|join|take|draw|press|each block|every block)\b/i;
const SEVERAL = /\b(?:each|every|per)\b/i;

export function findCutPieces(text: Text): CutPiece[] {
  return text.clauses.flatMap((clause) => pieceIn(clause, text) ?? []);
}

function pieceIn(clause: Clause, text: Text): CutPiece | undefined {
  const { count } = clause;
  const fabric = clause.nearest('fabric', 0.35);
  if (!count || count.unit || !fabric || !isCutting(clause)) return undefined;
  if (!isForParts(clause)) return undefined;
  const form = clause.nearest('form', 0.85);
  if (form === 'strip' || form === 'set' || form === 'segment' || form === 'triangle' || form === 'unit')
    return undefined;
  const [a, b] = clause.sides.length > 0 ? clause.sides : stripBefore(clause, text);
  if (!a?.unit || (!b && form !== 'square' && form !== undefined)) return undefined;
  if (!b && clause.sides.length === 0 && form !== 'square') return undefined;
  return {
    fabric,
    count,
    width: a,
    length: b ?? a,
    purpose: purposeOf(clause),
    start: Math.min(count.start, a.start),
    end: count.end > a.end ? count.end : clause.sides.length > 0 ? (b ?? a).end : count.end,
  };
}

/** For blocks, or for nothing that has an entry of its own. */
export function isForParts(clause: Clause): boolean {
  return !ELSEWHERE.has(clause.nearest('part', 0.6) ?? '');
}

/** Told under a heading or in a sentence about cutting, for the whole quilt. */
export function isCutting(clause: Clause): boolean {
  const heads = clause.line.layers.filter(({ where }) => where !== 'before').map(({ text }) => text);
  const isList = heads.some((head) => /\bcut(?:ting)?\b/i.test(head));
  if (!isList && !/\bcut\b/i.test(clause.sentence)) return false;
  const leadIn = clause.line.layers.find(({ where }) => where === 'lead-in')?.text ?? '';
  return (
    !NOT_CUT.test(clause.before) &&
    !SEVERAL.test(clause.own) &&
    !(leadIn.endsWith(':') && SEVERAL.test(leadIn))
  );
}

/** "8 strips 4" wide; cut them into 60 squares": the squares are as wide as the strips. */
function stripBefore(clause: Clause, { clauses }: Text): readonly Told[] {
  const before = clauses[clauses.indexOf(clause) - 1];
  if (!before || before.line !== clause.line || before.says('form:strip') < 0.85) return [];
  return before.sides.slice(0, 1);
}

/** "squares for the corners": the last word behind "for". */
function purposeOf({ behind }: Clause): string | undefined {
  const match = /\bfor (?:the )?((?:[\p{L}-]+ )?[\p{L}-]+)/iu.exec(behind);
  return match?.[1]?.toLowerCase().replace(/\s+/g, ' ');
}

export function isSame(a: readonly Rational[], b: readonly Rational[]): boolean {
  const most = Math.max(a.length, b.length);
  return Array.from({ length: most }, (_, index) => index).every((index) =>
    (a[index] ?? a[0])?.equals(b[index] ?? b[0] ?? 0),
  );
}

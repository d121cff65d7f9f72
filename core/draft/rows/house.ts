/** The rules of the house that a manuscript tells. */
import { choice, claims, type Row } from '../row.ts';
import type { Clause, Told } from '../text.ts';

/** A single length between bounds of inches, without a count. */
export function lengthBetween({ sides, count }: Clause, least: number, most: number): Told | undefined {
  const [side, second] = sides;
  if (!side?.unit || second || count) return undefined;
  return side.values.every((value) => value.compare(least) >= 0 && value.compare(most) <= 0)
    ? side
    : undefined;
}

/** Fabric is at least so wide, and at most (common practice: from 36" to 62", without wide backing). */
const NARROWEST = 36;
const WIDEST = 62;

const SEAM = /\bseams?(?: allowances?)?\b/i;
const ALL_SEAMS =
  /\bseams? allowances?\b|\bseams?\b[^.;]{0,20}\b(?:throughout|everywhere)|\b(?:all |\*?\*?)seams?\*?\*? (?:are |is )?\S{0,2}$/i;

/** Beside a length the word seam, near enough to be measured by it. */
function isSeam({ before, behind, speaksOf }: Clause): boolean {
  return speaksOf('part:seam') && (SEAM.test(before.slice(-40)) || /^[^.;]{0,12}\bseams?\b/i.test(behind));
}

function isOfBacking({ says, sentence }: Clause): boolean {
  return says('part:backing', 'form:panel') > says('part:binding') && !/\bbinding\b/i.test(sentence);
}

const OVERHANG = (clause: Clause): Told | undefined =>
  clause.says('part:overhang') >= 0.7 ? lengthBetween(clause, 1, 12) : undefined;

export const HOUSE_ROWS: readonly Row[] = [
  {
    path: ['house', 'seam'],
    title: 'the seam allowance',
    find: claims(
      (clause) => (isSeam(clause) && !isOfBacking(clause) ? lengthBetween(clause, 0, 1) : undefined),
      ({ before, behind }) =>
        ALL_SEAMS.test(`${before.slice(-40)}`) || /^[^.;]{0,30}(?:allowance|throughout)/i.test(behind)
          ? 2
          : 1,
    ),
    example: 'Sew with ¼" seams throughout.',
    gives: '1/4"',
    counterexample: 'Trim ¼" beyond the points.',
  },
  {
    path: ['house', 'usable width'],
    title: 'the usable width of the fabric',
    find: claims(
      (clause) => (clause.speaksOf('part:selvage') ? lengthBetween(clause, NARROWEST, WIDEST) : undefined),
      ({ before, behind }) =>
        /\b(?:usable|uses?|used|assum\w+|gives?|count on|figure on|width)[^,;.]{0,24}$/i.test(
          before.slice(-36),
        ) || /^["”″)]*[^,;.]{0,16}\b(?:usable|between|after|once|can be used)\b/i.test(behind)
          ? 2
          : 1,
    ),
    example: 'Yardage assumes 42" of usable width.',
    gives: '42"',
    counterexample: 'The backing is 42" wide.',
  },
  {
    path: ['house', 'overhang'],
    title: 'how far backing and batting reach beyond the top',
    find: claims((clause) => (isOneLayer(clause) ? undefined : OVERHANG(clause))),
    example: 'Backing and batting are 3" larger than the top on every side.',
    gives: '3"',
    counterexample: 'The outer border is 3" wide on every side.',
  },
  {
    path: ['backing', 'overhang'],
    title: 'how far the backing reaches beyond the top',
    find: claims((clause) => (isOneLayer(clause) === 'backing' ? OVERHANG(clause) : undefined)),
    example: 'The backing is 4" larger than the top on every side.',
    gives: '4"',
    counterexample: 'The backing and batting are 4" larger than the top on every side.',
  },
  {
    path: ['batting', 'overhang'],
    title: 'how far the batting reaches beyond the top',
    find: claims((clause) => (isOneLayer(clause) === 'batting' ? OVERHANG(clause) : undefined)),
    example: 'The batting is 3" larger than the top on every side.',
    gives: '3"',
    counterexample: 'The batting is 66" long.',
  },
  {
    path: ['house', 'joining allowance'],
    title: 'what the binding is longer than the edge',
    find: claims((clause) =>
      clause.speaksOf('part:joining') && clause.says('part:joining') >= 0.85
        ? lengthBetween(clause, 4, 40)
        : undefined,
    ),
    example: 'Join the binding strips, with 12" extra for joining the ends.',
    gives: '12"',
    counterexample: 'Join the binding strips to 240".',
  },
  {
    path: ['house', 'backing seam'],
    title: 'the seam allowance of the backing',
    find: claims((clause) =>
      isSeam(clause) && isOfBacking(clause) ? lengthBetween(clause, 0, 2) : undefined,
    ),
    example: 'Join the two backing panels with a ½" seam.',
    gives: '1/2"',
    counterexample: 'Join the two rows with a ¼" seam.',
  },
  {
    path: ['binding', 'join'],
    title: 'how the binding strips are joined',
    find: choice([
      [
        'straight',
        /\bjoin (?:mine|them|the strips|the binding strips|binding strips) (?:straight|with straight seams)\b/i,
      ],
      ['diagonal', /\bbinding strips? [^.;]{0,30}\b(?:diagonal(?:ly)? seams?|on the diagonal)\b/i],
    ]),
    example: 'Join the binding strips with diagonal seams.',
    gives: 'diagonal',
    counterexample: 'Join the binding strips end to end.',
  },
];

/** Which one of both layers the clause is about. */
function isOneLayer({ own, sentence }: Clause): 'backing' | 'batting' | undefined {
  const layers = (text: string) =>
    [
      /\bback(?:ing)?\b|\bcalico\b/i.test(text) ? ('backing' as const) : [],
      /\b(?:batting|wadding)\b/i.test(text) ? ('batting' as const) : [],
    ].flat();
  const near = layers(own);
  const named = near.length > 0 ? near : layers(sentence);
  return named.length === 1 ? named[0] : undefined;
}

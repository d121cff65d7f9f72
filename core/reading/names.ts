/** The names that a pattern gives to its fabrics, blocks, pieces and sizes, as its manuscript may write them. */
import type { Pattern } from '../block/pattern.ts';
import type { Concept } from './concept.ts';
import { wordsOf } from './stems.ts';
import { UNIT_WORDS } from './unitWords.ts';
import { escaped, wholeWords } from './wholeWords.ts';

export interface Name {
  readonly says: Concept;
  readonly pattern: RegExp;
}

export function namesOf(pattern: Pattern): Name[] {
  return [
    ...fabricNames(pattern),
    ...borderNames(pattern),
    ...blockNames(pattern),
    ...unitNames(pattern),
    ...pieceNames(pattern),
    ...sizeWords(pattern),
  ];
}

/** Words of a fabric's name that tell nothing about which fabric it is. */
const COMMON = new Set(
  'fabric fabrics print prints solid solids cotton linen tonal texture dot dots stripe floral batik scrap scraps assorted light dark medium and the for with a of in on to quilt'.split(
    ' ',
  ),
);

function fabricNames({ entries: { fabrics = {} } }: Pattern): Name[] {
  const all = Object.entries(fabrics).map(([label, { name = '' }]) => ({
    label,
    words: [...new Set([...wordsOf(name), ...(isWord(label) ? wordsOf(label) : [])])],
    name,
  }));
  const uses = (word: string) => all.filter(({ words }) => words.includes(word)).length;
  return all.flatMap(({ label, name, words }): Name[] => {
    const says: Concept = `fabric:${label}`;
    const telling = words.filter((word) => word.length > 2 && !COMMON.has(word) && uses(word) === 1);
    const short = escaped(label);
    return [
      ...(name ? [{ says, pattern: wholeWords(escaped(name)) }] : []),
      ...telling.map((word) => ({ says, pattern: wholeWords(`${escaped(word)}s?`) })),
      {
        says,
        pattern: wholeWords(
          `(?:fabrics?|colou?rs?|prints?) (?:[\\p{L}\\p{N}]{1,3}(?:, | and | & |\\/|, and ))*${short}|(?<=\\()${short}(?=\\))|(?<=^|\\| )${short}(?=$| \\||[,.:]| [–—(-])`,
        ),
      },
      ...(isWord(label)
        ? []
        : [
            {
              says,
              pattern: wholeWords(
                // "A" alone may be the article.
                `${label === 'A' ? '(?<=[\\p{Ll}\\p{N})"”″] )' : ''}${short}(?= (?:\\S+ )?(?:squares?|strips?|rectangles?|triangles?|pieces?|print|fabric|[a-z]+$))`,
                'gu',
              ),
            },
          ]),
    ];
  });
}

function isWord(label: string): boolean {
  return /^\p{L}{3,}/u.test(label);
}

/** Ordinals that tell a border, counted from the inside; of one border nothing needs to be told. */
function borderNames({ entries: { borders = [] } }: Pattern): Name[] {
  const last = borders.length;
  const NUMBERS = ['first|1st', 'second|2nd', 'third|3rd', 'fourth|4th', 'fifth|5th', 'sixth|6th'];
  return borders.flatMap((_, index): Name[] => {
    const words = [
      `(?:${NUMBERS[index] ?? 'none'})(?= border)`,
      `borders? (?:no\\. |#)?${index + 1}(?! ?\\S*["”″])`,
    ];
    if (last > 1 && index === 0)
      words.push('inner(?:most)?(?= border| strips?| side| top|:|$)', 'inside(?= border)', 'inner');
    if (last > 1 && index === last - 1)
      words.push(
        'outer(?:most)?(?= border| strips?| side| top|:|$)',
        'final(?= border)',
        'last(?= border)',
        'outside(?= border)',
        'outer',
      );
    if (last === 3 && index === 1) words.push('middle(?= border)');
    return [{ says: `border:${index + 1}`, pattern: wholeWords(words.join('|')) }];
  });
}

function blockNames({ entries: { blocks = {} } }: Pattern): Name[] {
  return Object.keys(blocks).map((name) => ({
    says: `name:block.${name}`,
    pattern: wholeWords(plural(name)),
  }));
}

function unitNames({ entries: { blocks = {} } }: Pattern): Name[] {
  return Object.entries(blocks).flatMap(([block, { of = [] }]) =>
    of.flatMap((part, index): Name[] => {
      if (!('unit' in part)) return [];
      const says: Concept = `name:unit.${block}.${index + 1}`;
      const known = UNIT_WORDS[part.unit.kind.name];
      return known ? [{ says, pattern: wholeWords(known.words) }] : [];
    }),
  );
}

function pieceNames({ entries: { blocks = {}, pieces = {} } }: Pattern): Name[] {
  const names = [
    ...Object.keys(pieces),
    ...Object.values(blocks).flatMap(({ of = [] }) =>
      of.flatMap((part) => ('piece' in part ? part.piece : [])),
    ),
  ];
  return [...new Set(names)].map((name) => ({
    says: `name:piece.${name}`,
    pattern: wholeWords(plural(name)),
  }));
}

function sizeWords({ sizes }: Pattern): Name[] {
  return sizes
    .filter(({ name }) => name !== '')
    .map(({ name }) => ({ says: `size:${name}`, pattern: wholeWords(escaped(name)) }));
}

/** A name with its usual plural, in both spellings of `center`. */
function plural(name: string): string {
  return `${escaped(name)
    .replace(/cent(?:er|re)/gi, 'cent(?:er|re)')
    .replace(/[ -]/g, '[ -]')}(?:s|es)?`;
}

/**
 * A line of patterns over one house file, the same at every call: each manuscript in another style, each number with
 * what it states. What depends on the width of the binding strip is worked out here by the trade's rule, without the
 * program: n strips joined on the diagonal give n × 40" less (n - 1) strip widths, and must reach 12" beyond the edge.
 */
import fc from 'fast-check';

/** A number in a manuscript, with its right text for each strip width. */
export interface LineNumber {
  readonly start: number;
  readonly end: number;
  /** What the number is with strips of another width; the same where nothing depends on them. */
  at(strip: number): Amount;
}

/** Inches, or a count. */
interface Amount {
  readonly value: number;
  /** A requirement is right when it is met. */
  readonly atLeast: boolean;
}

export interface LineManuscript {
  readonly name: string;
  readonly source: string;
  readonly numbers: readonly LineNumber[];
}

export const HOUSE_NAME = 'house.md';

/** @param strip as it is written */
export function houseFile(strip: string): string {
  return [
    '# The house rules of the Saltmarsh line',
    '',
    '```measure',
    'house:',
    '  seam: 1/4"',
    '  usable width: 40"',
    '  sell by: 1/8 yd',
    '  join: diagonal',
    '  joining allowance: 12"',
    '  overhang: 4"',
    `  binding strip: ${strip}`,
    'fabrics: { A: Reed, B: Slate }',
    '```',
    '',
  ].join('\n');
}

/** The narrow strip with which the manuscripts are right, and the wide one. */
export const STRIPS = { before: 2.25, after: 2.5 } as const;

/** The text that each number must have for a width, as far as it states something that the width decides. */
export function isRight(number: LineNumber, strip: number): boolean {
  const stated = number.at(STRIPS.before);
  const now = number.at(strip);
  return now.atLeast ? shownOf(stated) >= now.value : stated.value === now.value;
}

/** What is printed for an amount of fabric: whole eighths of a yard. */
function shownOf({ value, atLeast }: Amount): number {
  return atLeast && !Number.isInteger(value) ? Math.ceil(value / EIGHTH) * EIGHTH : value;
}

const EIGHTH = 36 / 8;

interface Size {
  readonly name: string;
  readonly width: number;
  readonly length: number;
}

interface Recipe {
  readonly sizes: readonly Size[];
  readonly numeral: number;
  readonly words: boolean;
  readonly frame: number;
  readonly lineEnd: string;
  readonly deep: boolean;
}

const NAMES = [[''], ['lap', 'twin'], ['wall', 'throw', 'queen']];

const recipes: fc.Arbitrary<Recipe> = fc.constantFrom(...NAMES).chain((names) =>
  fc.record({
    sizes: fc
      .array(fc.record({ width: fc.integer({ min: 30, max: 60 }), more: fc.integer({ min: 0, max: 30 }) }), {
        minLength: names.length,
        maxLength: names.length,
      })
      .map((all) =>
        all.map(({ width, more }, index) => {
          const grown = width + index * 24;
          return { name: names[index] ?? '', width: grown, length: grown + more };
        }),
      ),
    numeral: fc.nat({ max: 3 }),
    words: fc.boolean(),
    frame: fc.nat({ max: 2 }),
    lineEnd: fc.constantFrom('\n', '\n', '\r\n'),
    deep: fc.boolean(),
  }),
);

/** Thirty manuscripts, all of which use the house file. */
export function patternLine(): LineManuscript[] {
  return fc
    .sample(recipes, { seed: 20_261_125, numRuns: 30 })
    .map((recipe, index) => write(recipe, `${recipe.deep ? 'deep/' : ''}pattern-${index + 1}.md`));
}

type Part = string | { readonly text: string; at(strip: number): Amount };

function write(recipe: Recipe, name: string): LineManuscript {
  let source = '';
  const numbers: LineNumber[] = [];
  for (const part of partsOf(recipe)) {
    const text = typeof part === 'string' ? part.replaceAll('\n', recipe.lineEnd) : part.text;
    if (typeof part !== 'string')
      numbers.push({ start: source.length, end: source.length + text.length, at: part.at });
    source += text;
  }
  return { name, source, numbers };
}

function partsOf(recipe: Recipe): Part[] {
  const { sizes, deep, frame } = recipe;
  const [first] = sizes;
  const each = (value: (size: Size) => string) =>
    sizes.length === 1 && first
      ? value(first)
      : `{ ${sizes.map((size) => `${size.name}: ${value(size)}`).join(', ')} }`;
  const block = [
    '```measure',
    `use: ${deep ? '../' : ''}${HOUSE_NAME}`,
    ...(sizes.length > 1 ? [`sizes: [${sizes.map(({ name }) => name).join(', ')}]`] : []),
    `finished: ${each(({ width, length }) => `${width}" x ${length}"`)}`,
    'binding: { from: B, grain: straight }',
    'batting: {}',
    '```',
  ];
  return [
    `# 🧵 A pattern\n\n${block.join('\n')}\n\n`,
    'Use a size 80/12 needle and a 45 mm cutter; close its blade after every cut.\n\n',
    ...finished(recipe),
    ...([table, list, tagged][frame] ?? tagged)(recipe),
    'No. 7 of the line, printed in 2026.\n',
  ];
}

/** What no strip changes. */
function finished(recipe: Recipe): Part[] {
  return recipe.sizes.flatMap(({ name, width, length }) => {
    const at = name === '' ? '' : ` @ ${name}`;
    return [
      `Finished${name === '' ? '' : `, ${name}`}: `,
      inches(recipe, () => width),
      ' × ',
      inches(recipe, () => length),
      ` <!-- = finished.width x finished.length${at} -->, on batting of `,
      inches(recipe, () => width + 8, true),
      ' × ',
      inches(recipe, () => length + 8, true),
      ` <!-- = batting.width x batting.length${at} -->.\n\n`,
    ];
  });
}

/** A row for each figure, a column for each size. */
function table(recipe: Recipe): Part[] {
  const { sizes } = recipe;
  const row = (title: string, part: (size: Size) => Part, id: string): Part[] => [
    `| ${title} |`,
    ...sizes.flatMap((size): Part[] => [' ', part(size), ` <!-- = ${id} --> |`]),
    '\n',
  ];
  return [
    `| Binding | ${sizes.map(({ name }) => name || 'Amount').join(' | ')} |\n|---|${sizes.map(() => '---|').join('')}\n`,
    ...row('Strips', (size) => strips(recipe, size), 'binding.strips'),
    ...row('Width', () => inches(recipe, (strip) => strip), 'binding.strip'),
    ...row('Length to sew', (size) => edge(recipe, size), 'binding.length'),
    ...row('Fabric', (size) => yardage(recipe, size), 'binding.yardage'),
    '\n',
  ];
}

/** Without any tag, as the trade writes. */
function list(recipe: Recipe): Part[] {
  const [first, ...others] = recipe.sizes;
  if (!first) return [];
  return [
    '## Binding\n\nFrom Fabric B, cut:\n\n- ',
    strips(recipe, first),
    ...(others.length === 0
      ? []
      : [
          ' (',
          ...others.flatMap((size, index): Part[] => [index > 0 ? ', ' : '', strips(recipe, size)]),
          ')',
        ]),
    ' strips, ',
    inches(recipe, (strip) => strip),
    ' × WOF, for the binding. Join them end to end.\n\n',
  ];
}

/** In sentences, each number with its tag. */
function tagged(recipe: Recipe): Part[] {
  return recipe.sizes.flatMap((size) => {
    const at = size.name === '' ? '' : ` @ ${size.name}`;
    return [
      `For the binding${size.name === '' ? '' : ` of the ${size.name}`} buy `,
      yardage(recipe, size),
      ` <!-- = binding.yardage${at} --> and cut **`,
      strips(recipe, size),
      `** <!-- = binding.strips${at} --> strips, `,
      inches(recipe, (strip) => strip),
      ` <!-- = binding.strip${at} --> wide; they join to at least `,
      edge(recipe, size),
      ` <!-- = binding.length${at} -->.\n\n`,
    ];
  });
}

function strips({ words }: Recipe, size: Size): Part {
  const count = stripCount(size, STRIPS.before);
  const text = (words && WORDS[count]) || String(count);
  return { text, at: (strip) => ({ value: stripCount(size, strip), atLeast: true }) };
}

function yardage({ numeral }: Recipe, size: Size): Part {
  const need = (strip: number) => stripCount(size, strip) * strip;
  const eighths = Math.ceil(need(STRIPS.before) / EIGHTH);
  const text = `${mixed(eighths / 8, numeral)} ${numeral % 2 === 0 ? 'yd' : eighths > 8 ? 'yards' : 'yard'}`;
  return { text, at: (strip) => ({ value: need(strip), atLeast: true }) };
}

function edge(recipe: Recipe, { width, length }: Size): Part {
  return inches(recipe, () => 2 * (width + length) + 12, true);
}

function inches({ numeral }: Recipe, value: (strip: number) => number, atLeast = false): Part {
  const mark = ['"', '″', ' inches', '”'][numeral];
  return {
    text: `${mixed(value(STRIPS.before), numeral)}${mark}`,
    at: (strip) => ({ value: value(strip), atLeast }),
  };
}

function stripCount({ width, length }: Size, strip: number): number {
  const need = 2 * (width + length) + 12;
  let count = 1;
  while (count * 40 - (count - 1) * strip < need) count++;
  return count;
}

const WORDS = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');
const GLYPHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];
const FRACTIONS = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

/** Whole eighths: `2¼`, `2 1/4`, `2-1/4` or `2 ¼`. */
function mixed(value: number, numeral: number): string {
  const whole = Math.floor(value);
  const eighths = (value - whole) * 8;
  const part = (numeral % 2 === 0 ? GLYPHS : FRACTIONS)[eighths] ?? '';
  if (part === '' || whole === 0) return part === '' ? String(whole) : part;
  return `${whole}${['', ' ', ' ', '-'][numeral]}${part}`;
}

/** The text with every number, in digits or in words, replaced: what stays the same when only numbers change. */
export function withoutNumbers(text: string): string {
  return text.replace(NUMBER, '#');
}

const NUMBER = new RegExp(
  String.raw`\b(?:${WORDS.join('|')})\b|\d+(?:[ -]?(?:\d+\/\d+|[¼½¾⅛⅜⅝⅞])|\/\d+)?|[¼½¾⅛⅜⅝⅞]`,
  'g',
);

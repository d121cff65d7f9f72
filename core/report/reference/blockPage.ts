/** The page about the language of the measure block, written from its schemas. */
import { ENTRIES } from '../../block/entries/index.ts';
import type { Entry } from '../../block/entry.ts';
import { completeHouse, type House } from '../../block/house.ts';
import { listed } from '../../block/words.ts';
import { Show } from '../../figures/show.ts';
import { rational } from '../../quantity/rational.ts';
import { toInches } from '../../quantity/units.ts';
import { plain } from '../plainMarkdown.ts';
import { anchor, capitalised, code, fenced, type Page, page, present, table } from './markdown.ts';
import { type Group, type ValueWords, valueWords, type Word } from './schemaWords.ts';
import { unitsSection } from './unitsSection.ts';

const INTRODUCTION = `\
A measure block says what a pattern is: how large it finishes, what it is made of, how it is bound. From that the
figures follow, and every number of the manuscript that is tied to a figure is checked against it.

The block stands anywhere in the manuscript, between a line of three backticks with the word \`measure\` and a line of
three backticks. A manuscript may hold several blocks; together they describe one pattern.`;

const EXAMPLE = ['```measure', 'finished: 36" x 48"', 'binding: { strip: 2 1/4", grain: straight }', '```'];

const WRITING = `\
- Each line is a word, a colon, a space and a value: \`finished: 36" x 48"\`.
- What belongs together stands in braces with commas between, \`binding: { strip: 2 1/4", grain: straight }\`, or on
  lines of its own below, each moved in by two spaces. Use spaces for that, not tabs.
- A list stands in square brackets, \`[wall, throw]\`, or on lines of its own that begin with a dash.
- Between braces or brackets a value that itself holds a comma stands in single quotation marks:
  \`{ method: 'two at a time, trimmed' }\`.
- What stands behind a space and \`#\` is a note to yourself.
- Every length has its unit. All inch marks are understood, straight or curly, and so are \`in\`, \`yd\`, \`ft\`, \`mm\`,
  \`cm\` and \`m\`. Fractions are written \`2 1/4"\`, \`2-1/4"\` or \`2¼"\`.
- Where the pattern comes in several sizes, a value that may differ from size to size is written once for all of
  them, or with their names, \`{ wall: 36" x 48", throw: 54" x 72" }\`, or as a list in the order of \`sizes\`.
- The order of the entries is yours. The block is YAML, so whoever knows YAML may use all of it.`;

export function blockPage(): Page {
  const entries: [string, Entry<unknown>][] = Object.entries(ENTRIES);
  const sections = entries.map(([name, entry]) => ({ name, entry, value: valueWords(entry.schema, [name]) }));
  return page(
    'measure-block.md',
    '# The measure block',
    INTRODUCTION,
    fenced('markdown', EXAMPLE.join('\n')),
    table(
      ['Entry', 'What it says'],
      sections.map(({ name, entry }) => [link(name), plain(entry.summary)]),
    ),
    '## How it is written',
    WRITING,
    '## Kinds of values',
    kindsOfValues(sections.map(({ value }) => value)),
    '## The entries',
    ...sections.flatMap(({ name, entry, value }) => section(name, entry, value)),
    ...unitsSection(),
  );
}

function section(name: string, entry: Entry<unknown>, value: ValueWords): string[] {
  const own = value.groups.length > 0 ? value.groups.flatMap((group) => words(name, group)) : [stands(value)];
  return present([
    `### ${name}`,
    plain(entry.summary),
    entry.form === 'many'
      ? 'Each stands under a name of your own, and there may be as many as you like.'
      : undefined,
    ...own,
    ...value.groups.flatMap(({ words: inner }) => inner.flatMap((word) => nested(name, word))),
    'For example:',
    fenced('yaml', entry.example),
  ]);
}

/** The words of a mapping inside an entry, under a heading of its own. */
function nested(entry: string, word: Word): string[] {
  return word.groups.flatMap((group) => [
    `#### ${headingOf(entry, group)}`,
    group.name === word.name
      ? plain(word.meaning)
      : `One of the things that can stand under ${code(word.name)}.`,
    ...words(entry, group),
  ]);
}

function words(entry: string, { words: all }: Group): string[] {
  const rows = all.map((word) => [
    code(word.name),
    plain(word.meaning),
    valueText(entry, word),
    word.needed ? 'yes' : '',
    word.perSize ? 'yes' : '',
    entry === 'house' ? (ifLeftOut(word.name) ?? '') : '',
  ]);
  return [table(['Word', 'Meaning', 'Value', 'Needed', 'May differ by size', 'If left out'], rows)];
}

function stands({ title, examples, perSize }: ValueWords): string {
  const sizes = perSize ? ' It may differ from size to size.' : '';
  return `Here stands ${plain(title ?? 'a value')}: ${alternatives(examples)}.${sizes}`;
}

function valueText(entry: string, { name, title, examples, isChoice, isList, groups }: Word): string {
  if (groups.length > 0) {
    const links = groups.map((group) => `[${plain(group.name)}](#${anchor(headingOf(entry, group))})`);
    return isList ? `a list, each item a ${listed(links, 'or')}` : `words of its own: ${listed(links, 'or')}`;
  }
  if (isChoice) return alternatives(examples);
  if (title === undefined) return code(name);
  const [example] = examples;
  return `${isList ? 'a list, each item ' : ''}${plain(title)}${example === undefined ? '' : `, such as ${code(example)}`}`;
}

function headingOf(entry: string, { name }: Group): string {
  return `${entry}: ${name}`;
}

/** Every kind of value once, with all of its examples. */
function kindsOfValues(values: readonly ValueWords[]): string {
  const kinds = new Map<string, readonly string[]>();
  for (const { title, examples, isChoice } of values.flatMap(withInner))
    if (title !== undefined && !isChoice && !kinds.has(title)) kinds.set(title, examples);
  return table(
    ['Kind of value', 'Written like this'],
    [...kinds].map(([title, examples]) => [plain(capitalised(title)), examples.map(code).join('\n')]),
  );
}

function withInner(value: ValueWords): ValueWords[] {
  return [value, ...value.groups.flatMap(({ words: inner }) => inner.flatMap(withInner))];
}

function alternatives(examples: readonly string[]): string {
  return listed(examples.map(code), 'or');
}

function link(name: string): string {
  return `[${name}](#${anchor(name)})`;
}

const INCHES = completeHouse({});
const METRIC = completeHouse({ seam: { inches: toInches(rational(3, 4), 'cm'), unit: 'cm' } });

/** `¼", or 0.75 cm in a metric house` */
function ifLeftOut(rule: string): string | undefined {
  const [inches, metric] = [INCHES, METRIC].map((house) => ruleText(house, rule));
  if (inches === undefined || metric === undefined) return undefined;
  return inches === metric ? inches : `${inches}, or ${metric} in a metric house`;
}

/** What is bought is told in yards or metres, all the rest in inches or centimetres. */
const BOUGHT: readonly string[] = ['sell by', 'generous over'] satisfies (keyof House)[];

function ruleText(house: House, rule: string): string | undefined {
  if (!Object.hasOwn(house, rule)) return undefined;
  const value = house[rule as keyof House];
  const show = new Show(house.system);
  if (value === undefined || typeof value === 'string') return value;
  if ('unit' in value) return undefined;
  return BOUGHT.includes(rule) ? show.yardage(value) : show.length(value);
}

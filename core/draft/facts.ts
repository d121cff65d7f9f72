/** Everything that the manuscript says of the entries of the block, each settled by itself. */
import { Derivation } from '../figures/derivation.ts';
import { blocksMade } from '../figures/rooms/parts.ts';
import type { Range } from '../findings/finding.ts';
import type { Manuscript } from '../manuscript/manuscript.ts';
import { rational } from '../quantity/rational.ts';
import { compose } from './compose.ts';
import { findBlocks, titleOf } from './names/blocks.ts';
import { borderFabrics, countBorders } from './names/borders.ts';
import { findFabrics, type NamedFabric } from './names/fabrics.ts';
import { findSizes } from './names/sizes.ts';
import { findParts, type OneBlock } from './parts.ts';
import { type Fact, type Gap, type Row, settle } from './row.ts';
import { blockRows } from './rows/blocks.ts';
import { borderRows } from './rows/borders.ts';
import { FINISHED_ROW, LAYER_ROWS } from './rows/finished.ts';
import { FINISHING_ROWS } from './rows/finishing.ts';
import { HOUSE_ROWS } from './rows/house.ts';
import { GRID_ROWS, SASHING_ROWS } from './rows/layout.ts';
import { patternFrom } from './scaffold.ts';
import { readText, type Text } from './text.ts';
import { writeName } from './write.ts';

export interface Facts {
  readonly text: Text;
  readonly facts: readonly Fact[];
  readonly gaps: readonly Gap[];
}

/** Names come first, for the words around a number are understood by them. */
export function findFacts(manuscript: Manuscript): Facts {
  const names: Fact[] = [...patternName(manuscript), ...sizesOf(manuscript)];
  const withSizes = readText(manuscript, patternFrom(compose(names, [], silent)));
  names.push(...findFabrics(withSizes).map(fabricFact));
  const withFabrics = readText(manuscript, patternFrom(compose(names, [], silent)));
  const house = settled(HOUSE_ROWS, withFabrics);
  const told = borderFabrics(withFabrics);
  const borders = Math.max(told.length, countBorders(withFabrics));
  const blocks = findBlocks(withFabrics);
  const scaffold = compose([...names, ...house.facts, ...placeholders(borders, blocks)], [], silent);
  const text = readText(manuscript, patternFrom(scaffold));
  const inside = settled(
    [...blocks.flatMap((name) => blockRows(name, blocks.length)), ...SASHING_ROWS],
    text,
  );
  const known = [...names, ...house.facts, ...inside.facts];
  const rows = [
    FINISHED_ROW,
    ...GRID_ROWS,
    ...Array.from({ length: borders }, (_, index) => borderRows(index, borders, told[index])).flat(),
    ...FINISHING_ROWS,
    ...LAYER_ROWS,
  ];
  const said = settled(rows, { ...text, pattern: patternFrom(compose(known, [], silent)) });
  const facts = [...known, ...said.facts];
  return {
    text,
    facts: [...facts, ...findParts(text, oneBlock(blocks, facts))],
    gaps: [...house.gaps, ...inside.gaps, ...said.gaps],
  };
}

function silent(): string {
  return '';
}

function settled(rows: readonly Row[], text: Text): { facts: Fact[]; gaps: Gap[] } {
  const facts: Fact[] = [];
  const gaps: Gap[] = [];
  for (const row of rows) {
    const result = settle(row, row.find(text));
    if (result && 'message' in result) gaps.push(result);
    else if (result) facts.push(result);
  }
  return { facts, gaps };
}

function patternName({ source }: Manuscript): Fact[] {
  const name = titleOf(source);
  if (!name) return [];
  const start = source.indexOf(name);
  return [
    {
      path: ['pattern'],
      title: 'the name',
      text: writeName(name),
      from: [{ start, end: start + name.length }],
    },
  ];
}

function sizesOf(manuscript: Manuscript): Fact[] {
  const sizes = findSizes(manuscript);
  if (!sizes) return [];
  const text = `[${sizes.names.map(writeName).join(', ')}]`;
  return [{ path: ['sizes'], title: 'the sizes', text, from: [rangeOnly(sizes)] }];
}

function rangeOnly({ start, end }: Range): Range {
  return { start, end };
}

function fabricFact(fabric: NamedFabric): Fact {
  const { label, name, cutFrom } = fabric;
  const text = cutFrom
    ? `{ ${name ? `name: ${writeName(name)}, ` : ''}cut from: ${cutFrom} }`
    : writeName(name ?? label);
  return { path: ['fabrics', label], title: `the fabric “${label}”`, text, from: [rangeOnly(fabric)] };
}

/** So that the text is read with the borders counted and the blocks named, of whatever size they are. */
function placeholders(borders: number, blocks: readonly string[]): Fact[] {
  const fact = (path: Fact['path'], text = '1"'): Fact => ({ path, title: '', text, from: [] });
  return [
    fact(['layout', 'grid'], '1 x 1'),
    ...Array.from({ length: borders }, (_, index) => fact(['borders', index, 'finished'])),
    ...blocks.map((name) => fact(['blocks', name, 'finished'])),
  ];
}

/** The one kind of block, with the number that the layout or a sentence tells. */
function oneBlock(names: readonly string[], facts: readonly Fact[]): OneBlock | undefined {
  const [name] = names;
  if (name === undefined || names.length > 1) return undefined;
  const pattern = patternFrom(compose(facts, [], silent));
  const made = pattern.sizes.flatMap((size) => blocksMade(Derivation.unrecorded(pattern, size), name) ?? []);
  if (made.length < pattern.sizes.length || made.length === 0) return undefined;
  const [size] = pattern.sizes;
  const sides = size && Derivation.unrecorded(pattern, size).entries.blocks?.[name]?.finished;
  return {
    name,
    made: made.map((count) => rational(count)),
    area: sides?.width.mul(sides.length),
    side: sides?.width.equals(sides.length) ? sides.width : undefined,
  };
}

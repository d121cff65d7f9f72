/** Blocks, their units and pieces, and what is cut for them. */

import type { FabricLabel } from '../../block/values/fabricLabel.ts';
import type { Sides } from '../../block/values/sides.ts';
import { Derivation } from '../../figures/derivation.ts';
import { cutNames, isUnit, partsOf } from '../../figures/rooms/parts.ts';
import { piecesOf } from '../../figures/rooms/pieces.ts';
import type { Concept } from '../concept.ts';
import { stripsThing } from './strips.ts';
import {
  fabricWant,
  mustSay,
  need,
  type Quilt,
  type Slot,
  said,
  slot,
  type Thing,
  thing,
  UNFINISHED,
  want,
} from './thing.ts';

export function partThings(quilt: Quilt): Thing[] {
  return [...blockThings(quilt), ...unitThings(quilt), ...pieceThings(quilt)];
}

function blockThings(quilt: Quilt): Thing[] {
  const blocks = Object.keys(quilt.pattern.entries.blocks ?? {});
  return blocks.flatMap((name) => {
    const id = `block.${name}`;
    const called = want(blocks.length > 1 ? 4 : 2, `name:${id}`);
    const axes = (figure: string) =>
      sidesOf(quilt, `${id}.${figure}`, `${id}.${figure}-width`, `${id}.${figure}-length`);
    return [
      ...thing(
        quilt,
        id,
        '',
        [called, need(4, 'part:block', `name:${id}`)],
        [slot('count', `${id}.count`, want(1, 'act:make'))],
        { against: ['form'] },
      ),
      ...thing(
        quilt,
        id,
        'finished',
        [called, need(3, 'part:block', `name:${id}`), need(4, 'state:finished'), want(0, 'state:measured')],
        [slot('count', `${id}.count`, want(1, 'act:make')), ...axes('finished')],
        { against: ['form'] },
      ),
      ...thing(
        quilt,
        id,
        'unfinished',
        [called, need(3, 'part:block', `name:${id}`), want(3, ...UNFINISHED)],
        [slot('count', `${id}.count`, want(1, 'act:make')), ...axes('unfinished')],
      ),
    ];
  });
}

/** One figure for all sides of what is square, else one for each. */
function sidesOf(quilt: Quilt, side: string, width: string, length: string): Slot[] {
  return quilt.has(side) ? [slot('side', side)] : [slot('width', width), slot('length', length)];
}

function unitThings(quilt: Quilt): Thing[] {
  const { entries } = quilt.pattern;
  return partsOf(entries).flatMap(({ block, index, part }) => {
    if (!isUnit(part)) return [];
    const id = `unit.${block}.${index + 1}`;
    const isPlain = part.unit.kind.name === 'squares' || part.unit.kind.name === 'rectangles';
    const name: Concept = `name:${id}`;
    const inBlock = want(1.5, `name:block.${block}`);
    const counts = [
      slot('count', `${id}.count`, want(1.5, 'scope:total', 'act:make')),
      slot('count', `${id}.each`, want(2.5, 'scope:each', 'scope:laid out')),
      slot('count', `${id}.per-set`, need(2.5, 'scope:container')),
    ];
    const axes = (figure: string) =>
      sidesOf(quilt, `${id}.${figure}`, `${id}.${figure}-width`, `${id}.${figure}-length`);
    const from = part.from ?? [];
    const cuts = cutNames(quilt.pattern, { block, index });
    const shape: Concept = part.unit.kind.name === 'squares' ? 'form:square' : 'form:rectangle';
    const called = isPlain ? need(4, shape) : need(4, name, 'form:unit');
    const made = isPlain
      ? thing(quilt, id, '', [called, inBlock, fabricWant([from[0]])], counts.slice(1))
      : [
          ...thing(
            quilt,
            id,
            '',
            [called, inBlock, want(1, ...fabrics(from))],
            [...counts, ...axes('unfinished')],
          ),
          ...thing(
            quilt,
            id,
            'unfinished',
            [called, inBlock, want(3, ...UNFINISHED)],
            [...counts, ...axes('unfinished')],
          ),
          ...thing(
            quilt,
            id,
            'finished',
            [called, inBlock, need(4, 'state:finished'), want(0, 'state:measured')],
            axes('finished'),
          ),
        ];
    return [
      ...made,
      ...cuts.flatMap((cut) => {
        const key = `${id}.${cut.id}`;
        const fabric = from.length > 0 ? from[cut.from % from.length] : undefined;
        const form = formOf(cut.role);
        const uses = [
          fabricWant([fabric]),
          inBlock,
          want(0.5, name, 'part:block'),
          want(1, 'state:cut', 'state:trimmed'),
          roleWant(cut.role),
        ];
        return [
          ...thing(
            quilt,
            key,
            '',
            [...uses, form ? need(4, form) : undefined],
            [
              slot('count', `${key}.count`, want(0.5, 'scope:total')),
              ...sidesOf(quilt, `${key}.cut`, `${key}.width`, `${key}.length`),
              slot('count', `${key}.per-strip`, need(2.5, 'scope:container'), want(0.5, 'form:strip')),
              ...(isPlain ? [slot('count', `${id}.each`, need(2.5, 'scope:each', 'scope:laid out'))] : []),
            ],
          ),
          ...(cut.next === 'once diagonally' && cuts.length > 1
            ? thing(
                quilt,
                key,
                'patches',
                [fabricWant([fabric]), inBlock, need(4, 'form:triangle')],
                [slot('count', `${id}.count`)],
              )
            : []),
          ...stripsThing(quilt, key, fabric, uses, form === 'form:strip' ? undefined : `${key}.strips`),
          // A strip may be as wide as either side of the piece.
          ...(quilt.has(`${key}.cut`)
            ? []
            : stripsThing(quilt, key, fabric, uses, undefined, `${key}.length`)),
        ];
      }),
    ];
  });
}

function fabrics(from: readonly FabricLabel[]): Concept[] {
  return from.map(({ label }): Concept => `fabric:${label}`);
}

function formOf(role: string): Concept | undefined {
  const noun = role.split(' ').at(-1);
  return noun === 'square' || noun === 'rectangle' || noun === 'strip' || noun === 'triangle'
    ? `form:${noun}`
    : undefined;
}

/** "large" in "large square" tells it from the small ones. */
function roleWant(role: string): ReturnType<typeof want> | undefined {
  const words = role.split(' ').slice(0, -1);
  return words.length > 0 ? said(1, ...words) : undefined;
}

/** A piece much longer than wide is called a strip as well. */
function shapesOf(sides: Sides | undefined): Concept[] {
  if (!sides || sides.width.equals(sides.length)) return ['form:square'];
  const [short, long] =
    sides.width.compare(sides.length) < 0 ? [sides.width, sides.length] : [sides.length, sides.width];
  return long.compare(short.mul(3n)) >= 0 ? ['form:rectangle', 'form:strip'] : ['form:rectangle'];
}

function pieceThings(quilt: Quilt): Thing[] {
  const { pattern } = quilt;
  return piecesOf(pattern).flatMap((piece) => {
    const entry = pattern.sizes
      .map((size) => piece.entry(Derivation.unrecorded(pattern, size)))
      .find(Boolean);
    const sides = entry?.cut ?? entry?.finished;
    const forms = shapesOf(sides);
    const name: Concept = `name:piece.${piece.name}`;
    const uses = [
      want(3, name),
      want(0.5, 'part:block'),
      fabricWant([entry?.from]),
      want(1, 'state:cut', 'state:trimmed'),
    ];
    return [
      ...thing(
        quilt,
        piece.id,
        '',
        [...uses, need(3, ...forms, name)],
        [
          slot('count', `${piece.id}.count`, want(0.5, 'scope:total')),
          slot('count', `${piece.id}.each`, need(2.5, 'scope:each', 'scope:laid out')),
          ...sidesOf(quilt, `${piece.id}.cut`, `${piece.id}.width`, `${piece.id}.length`),
          slot('count', `${piece.id}.per-strip`, need(2.5, 'scope:container'), want(0.5, 'form:strip')),
        ],
      ),
      ...thing(quilt, piece.id, 'yield', uses, [slot('count', `${piece.id}.per-strip`, mustSay(3, 'strip'))]),
      ...stripsThing(quilt, piece.id, entry?.from, uses, `${piece.id}.strips`),
    ];
  });
}

/** The quilt as a whole: its sizes at every stage, its rows, and the rules of the house. */
import type { Concept } from '../concept.ts';
import {
  bonus,
  MEASURED,
  mustSay,
  nearby,
  need,
  type Quilt,
  slot,
  type Thing,
  thing,
  UNFINISHED,
  want,
} from './thing.ts';

export function quiltThings(quilt: Quilt): Thing[] {
  return [...houseThings(quilt), ...sizeThings(quilt), ...layoutThings(quilt)];
}

function houseThings(quilt: Quilt): Thing[] {
  return [
    ...thing(quilt, 'house', 'seam', [nearby(need(6, 'part:seam'))], [slot('side', 'house.seam')]),
    ...thing(
      quilt,
      'house',
      'backing seam',
      [nearby(need(6, 'part:seam')), nearby(need(3, 'part:backing', ...quilt.only('backing'), 'form:panel'))],
      [slot('side', 'house.backing seam')],
    ),
    ...thing(quilt, 'house', 'usable width', [need(6, 'part:selvage')], [slot('side', 'house.usable width')]),
    ...thing(
      quilt,
      'house',
      'overhang',
      [need(6, 'part:overhang'), want(0, 'part:backing', 'part:batting')],
      [slot('side', 'house.overhang')],
    ),
    ...(['backing', 'batting'] as const).flatMap((layer) =>
      thing(
        quilt,
        layer,
        'overhang',
        [need(6, 'part:overhang'), need(2, `part:${layer}`)],
        [slot('side', `${layer}.overhang`)],
      ),
    ),
    ...thing(
      quilt,
      'house',
      'joining allowance',
      [need(6, 'part:joining')],
      [slot('side', 'house.joining allowance')],
    ),
  ];
}

/** What is measured as a whole is not told of its sides, nor of its top and bottom. */
const WHOLE = { against: ['edge'] } as const;

function sizeThings(quilt: Quilt): Thing[] {
  const { borders = [] } = quilt.pattern.entries;
  return [
    ...thing(
      quilt,
      'quilt',
      'finished',
      [want(4, 'state:finished', 'state:trimmed'), want(0, ...MEASURED), want(3.5, 'part:quilt', 'part:top')],
      [
        slot('width', 'finished.width', want(1, 'axis:width', 'axis:both')),
        slot('length', 'finished.length', want(1, 'axis:length')),
        slot('side', 'finished.diameter', want(1, 'axis:width', 'axis:both')),
      ],
      WHOLE,
    ),
    ...thing(
      quilt,
      'quilt',
      'unfinished',
      [want(2.5, ...UNFINISHED), want(2, 'part:top'), need(2, 'part:top', 'part:quilt')],
      [
        slot('width', 'unfinished.width', want(1, 'axis:width', 'axis:both')),
        slot('length', 'unfinished.length', want(1, 'axis:length')),
      ],
      WHOLE,
    ),
    ...(['finished', 'unfinished'] as const).flatMap((state) => {
      const figure = state === 'finished' ? 'centre.' : 'centre.unfinished-';
      return thing(
        quilt,
        'centre',
        state,
        [want(3, ...stage(state)), want(4, 'part:centre', 'part:top', 'form:row')],
        [
          slot('width', `${figure}width`, want(1, 'axis:width', 'axis:both')),
          slot('length', `${figure}length`, want(1, 'axis:length')),
        ],
        // The centre is measured while it is sewn, before its edges are sewn into anything.
        { ...WHOLE, prior: state === 'unfinished' ? 0.8 : 0 },
      );
    }),
    ...borders.flatMap((_, index) =>
      (['finished', 'unfinished'] as const).flatMap((state) => {
        const figure = `border.${index + 1}.${state === 'finished' ? 'finished' : 'quilt'}-`;
        return thing(
          quilt,
          `border.${index + 1}`,
          `added, ${state}`,
          [
            want(3, ...stage(state)),
            want(2, 'part:top', 'part:quilt', 'part:centre', 'part:border'),
            want(1, 'part:border'),
            borders.length > 1
              ? want(3, `border:${index + 1}`, ...quilt.only(`border.${index + 1}`))
              : undefined,
          ],
          [
            slot('width', `${figure}width`, want(1, 'axis:width', 'axis:both')),
            slot('length', `${figure}length`, want(1, 'axis:length')),
          ],
          WHOLE,
        );
      }),
    ),
    ...thing(
      quilt,
      'quilt',
      'edge',
      [want(2, 'part:binding', 'part:quilt', 'part:scallops')],
      [slot('side', 'finished.edge', need(4, 'form:edge'))],
    ),
  ];
}

function stage(state: 'finished' | 'unfinished'): readonly Concept[] {
  return state === 'finished' ? ['state:finished'] : UNFINISHED;
}

function layoutThings(quilt: Quilt): Thing[] {
  return [
    ...thing(
      quilt,
      'layout',
      '',
      [bonus(2, 'part:block'), bonus(1, 'scope:laid out')],
      [
        slot('count', 'layout.rows', need(5, 'form:row', 'axis:down')),
        slot('count', 'layout.diagonal-rows', need(6, 'form:diagonal row')),
        slot('count', 'layout.columns', need(5, 'axis:per row', 'axis:width')),
        slot('count', 'layout.blocks', want(3, 'part:block'), want(2, 'scope:total')),
        slot('count', 'layout.between', mustSay(3, 'between')),
      ],
    ),
    ...thing(
      quilt,
      'layout',
      'grid',
      [need(5, 'part:block', 'form:row', 'scope:laid out'), bonus(1, 'scope:laid out')],
      [slot('across', 'layout.columns'), slot('down', 'layout.rows')],
    ),
  ];
}

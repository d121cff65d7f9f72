/** What goes around and between: sashing, setting pieces, borders. */
import { stripsThing } from './strips.ts';
import { fabricWant, need, type Quilt, said, slot, type Thing, thing, want } from './thing.ts';

export function aroundThings(quilt: Quilt): Thing[] {
  return [...sashingThings(quilt), ...settingThings(quilt), ...borderThings(quilt)];
}

function sashingThings(quilt: Quilt): Thing[] {
  const sashing = quilt.pattern.entries.layout?.sashing;
  if (!sashing) return [];
  const posts = [
    want(3, 'part:cornerstones', 'part:sashing'),
    want(1, 'part:cornerstones'),
    fabricWant([sashing.cornerstones]),
  ];
  return [
    ...(['upright', 'lying'] as const).flatMap((way) =>
      thing(
        quilt,
        'sashing',
        way,
        [
          need(5, 'part:sashing'),
          fabricWant([sashing.from]),
          want(1, 'form:rectangle', 'form:strip', 'form:piece', 'part:sashing'),
          said(1, way),
        ],
        [
          slot('count', `sashing.${way}.count`),
          slot('width', 'sashing.strip'),
          slot('length', `sashing.${way}.length`, want(1, 'axis:length')),
        ],
      ),
    ),
    ...thing(
      quilt,
      'sashing',
      '',
      [need(5, 'part:sashing'), fabricWant([sashing.from])],
      [slot('count', 'sashing.count'), slot('width', 'sashing.strip')],
    ),
    ...stripsThing(
      quilt,
      'sashing',
      sashing.from,
      [need(4, 'part:sashing', ...quilt.only('sashing')), fabricWant([sashing.from])],
      undefined,
      'sashing.strip',
    ),
    ...(['upright', 'lying'] as const).flatMap((way) =>
      stripsThing(
        quilt,
        `sashing.${way}`,
        sashing.from,
        [need(4, 'part:sashing', ...quilt.only('sashing')), fabricWant([sashing.from])],
        undefined,
        `sashing.${way}.length`,
      ),
    ),
    ...thing(
      quilt,
      'sashing.cornerstones',
      '',
      [...posts, need(3, 'form:square', 'part:cornerstones')],
      [slot('count', 'sashing.cornerstones.count'), slot('side', 'sashing.cornerstones.square')],
    ),
    ...stripsThing(
      quilt,
      'sashing.cornerstones',
      sashing.cornerstones,
      posts,
      undefined,
      'sashing.cornerstones.square',
    ),
  ];
}

function settingThings(quilt: Quilt): Thing[] {
  const layout = quilt.pattern.entries.layout;
  const from = fabricWant([layout?.triangles?.from]);
  return (['side', 'corner'] as const).flatMap((place) => [
    ...thing(
      quilt,
      `setting.${place}`,
      'squares',
      [want(4, `part:setting ${place}`), from, need(4, 'form:square')],
      [slot('count', `setting.${place}.squares`), slot('side', `setting.${place}.square`)],
    ),
    ...stripsThing(
      quilt,
      `setting.${place}`,
      layout?.triangles?.from,
      [want(3, `part:setting ${place}`), from],
      undefined,
      `setting.${place}.square`,
    ),
    ...thing(
      quilt,
      `setting.${place}`,
      'triangles',
      [need(5, `part:setting ${place}`), from],
      [
        slot('count', `setting.${place}.count`, want(2, 'form:triangle')),
        slot('count', `setting.${place}.spare`, need(3, 'form:spare')),
      ],
    ),
  ]);
}

function borderThings(quilt: Quilt): Thing[] {
  const { borders = [] } = quilt.pattern.entries;
  return borders.flatMap((border, index) => {
    const id = `border.${index + 1}`;
    const which = borders.length > 1 ? want(3.5, `border:${index + 1}`, ...quilt.only(id)) : undefined;
    const called = ['part:border', ...quilt.only(id)] as const;
    const from = fabricWant([border.from]);
    return [
      ...thing(
        quilt,
        id,
        'strips',
        [need(4, ...called), which, from, want(3, 'form:strip'), want(0.5, 'state:cut', 'state:trimmed')],
        [
          slot('count', `${id}.strips`),
          slot('width', `${id}.strip`, want(1, 'axis:width', 'axis:depth')),
          slot('length', 'house.usable width'),
        ],
      ),
      ...thing(
        quilt,
        id,
        'sides',
        [
          want(4, ...called),
          which,
          from,
          need(4, 'edge:side', 'form:panel'),
          want(1, 'form:strip', 'form:panel'),
        ],
        [slot('length', `${id}.side`, want(1, 'axis:length')), slot('width', `${id}.strip`)],
      ),
      ...thing(
        quilt,
        id,
        'top and bottom',
        [
          want(4, ...called),
          which,
          from,
          need(4, 'edge:top', 'form:panel'),
          want(1, 'form:strip', 'form:panel'),
        ],
        [slot('length', `${id}.top`, want(1, 'axis:length')), slot('width', `${id}.strip`)],
      ),
      ...thing(
        quilt,
        id,
        'finished',
        [need(4, ...called), which, from, need(4, 'state:finished')],
        [slot('width', `${id}.finished`)],
        { against: ['form'] },
      ),
      ...thing(
        quilt,
        id,
        'corners',
        [want(4, 'part:corner squares'), which, fabricWant([border['corners from']]), need(3, 'form:square')],
        [slot('count', `${id}.corner.count`), slot('side', `${id}.corner.cut`)],
      ),
    ];
  });
}

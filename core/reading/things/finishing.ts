/** What finishes a quilt: binding, piping, backing, batting, sleeve. */
import { stripsThing } from './strips.ts';
import { fabricWant, need, type Quilt, slot, type Thing, thing, want } from './thing.ts';

export function finishingThings(quilt: Quilt): Thing[] {
  return [...bindingThings(quilt), ...pipingThings(quilt), ...layerThings(quilt), ...sleeveThings(quilt)];
}

function bindingThings(quilt: Quilt): Thing[] {
  const { binding } = quilt.pattern.entries;
  if (!binding) return [];
  const from = fabricWant([binding.from]);
  const called = ['part:binding', ...quilt.only('binding')] as const;
  const words = (weight: number, ...list: string[]) => ({ concepts: [], words: list, weight, needed: true });
  return [
    ...thing(
      quilt,
      'binding',
      'strips',
      [need(4, ...called), from, want(3, 'form:strip')],
      [
        slot('count', 'binding.strips'),
        slot('width', 'binding.strip', want(1, 'axis:width')),
        slot('length', 'house.usable width'),
      ],
    ),
    ...thing(
      quilt,
      'binding',
      'length',
      [need(4, ...called), want(1, 'axis:length')],
      [
        slot('length', 'binding.length', words(3, 'least')),
        slot('length', 'binding.length', words(3, 'long')),
        slot('length', 'binding.length', words(3, 'length')),
        slot('length', 'binding.length', words(3, 'need')),
        slot('length', 'binding.length', words(3, 'reach')),
        slot('length', 'binding.length', words(3, 'total')),
        slot('length', 'binding.length', words(2, 'join')),
        slot('length', 'binding.length', words(2, 'make')),
      ],
    ),
    ...thing(
      quilt,
      'binding',
      'square',
      [need(4, ...called), from, need(3, 'form:square')],
      [slot('side', 'binding.square', want(1, 'axis:both'))],
    ),
    ...thing(
      quilt,
      'binding',
      'shows',
      [need(4, ...called)],
      [
        slot('side', 'binding.finished-width', words(4, 'show')),
        slot('side', 'binding.finished-width', words(3, 'front')),
        slot('side', 'binding.finished-width', need(3, 'state:finished')),
      ],
    ),
    ...thing(
      quilt,
      'binding',
      'tube',
      [need(4, ...called)],
      [
        slot('count', 'binding.passes', words(3, 'strip')),
        slot('count', 'binding.passes', words(3, 'pass')),
        slot('side', 'binding.yield', words(3, 'bias')),
        slot('side', 'binding.yield', words(3, 'give')),
      ],
    ),
    ...thing(quilt, 'binding', 'fabric', [need(5, 'part:binding')], [slot('yardage', 'binding.yardage')]),
    ...thing(
      quilt,
      'binding',
      'edge',
      [need(3, 'part:binding')],
      [slot('side', 'binding.edge', words(4, 'edge')), slot('side', 'binding.edge', words(4, 'around'))],
    ),
  ];
}

function pipingThings(quilt: Quilt): Thing[] {
  return thing(
    quilt,
    'piping',
    '',
    [need(5, 'part:piping')],
    [
      slot('width', 'piping.strip', want(2, 'form:strip'), want(1, 'axis:width')),
      slot('length', 'piping.length', want(2, 'axis:length')),
    ],
  );
}

function layerThings(quilt: Quilt): Thing[] {
  const { backing } = quilt.pattern.entries;
  const back = need(5, 'part:backing', ...quilt.only('backing'));
  return [
    ...thing(
      quilt,
      'backing',
      '',
      [back],
      [
        slot('width', 'backing.width', want(1, 'axis:width', 'axis:both')),
        slot('length', 'backing.length', want(1, 'axis:length')),
        slot('yardage', 'backing.yardage'),
        slot('count', 'backing.seams', { concepts: [], words: ['seam'], weight: 3, needed: true }),
      ],
    ),
    ...thing(
      quilt,
      'backing',
      'panels',
      [back, want(3, 'form:panel', 'form:piece'), fabricWant([backing?.from])],
      [
        slot('count', 'backing.panels', need(2, 'form:panel', 'form:piece')),
        slot('length', 'backing.panel-length', want(2, 'axis:length'), want(1, 'form:panel')),
      ],
    ),
    ...thing(
      quilt,
      'batting',
      '',
      [need(5, 'part:batting')],
      [
        slot('width', 'batting.width', want(1, 'axis:width', 'axis:both')),
        slot('length', 'batting.length', want(1, 'axis:length')),
      ],
    ),
  ];
}

function sleeveThings(quilt: Quilt): Thing[] {
  const sleeve = need(5, 'part:sleeve');
  const { sleeve: entry, backing } = quilt.pattern.entries;
  const from = entry?.from ?? backing?.from;
  return [
    ...thing(
      quilt,
      'sleeve',
      '',
      [sleeve, want(1, 'state:cut', 'state:trimmed')],
      [
        slot('width', 'sleeve.cut-depth', want(1, 'axis:width')),
        slot('length', 'sleeve.cut-length', want(1, 'axis:length')),
      ],
    ),
    ...thing(
      quilt,
      'sleeve',
      'finished',
      [sleeve, want(3, 'state:finished', 'state:unfinished')],
      [slot('length', 'sleeve.length', want(1, 'axis:length'))],
    ),
    ...stripsThing(quilt, 'sleeve', from, [sleeve], undefined, 'sleeve.cut-depth'),
  ];
}

/** What finishes a quilt: binding, piping, backing, batting, sleeve. */
import type { Concept } from '../concept.ts';
import { stripsThing } from './strips.ts';
import { fabricWant, mustSay, need, type Quilt, slot, type Thing, thing, UNFINISHED, want } from './thing.ts';

export function finishingThings(quilt: Quilt): Thing[] {
  return [...bindingThings(quilt), ...pipingThings(quilt), ...layerThings(quilt), ...sleeveThings(quilt)];
}

function bindingThings(quilt: Quilt): Thing[] {
  const { binding } = quilt.pattern.entries;
  if (!binding) return [];
  const from = fabricWant([binding.from]);
  const called: Concept[] = [
    'part:binding',
    ...quilt.only('binding'),
    ...(binding.grain === 'bias' ? (['form:bias'] as const) : []),
  ];
  return [
    ...thing(
      quilt,
      'binding',
      'strips',
      [need(4, ...called), from, want(3, 'form:strip')],
      [
        slot('count', 'binding.strips'),
        slot('width', 'binding.strip', want(1, 'axis:width', 'axis:depth')),
        slot('length', 'house.usable width'),
      ],
    ),
    ...thing(
      quilt,
      'binding',
      'length',
      [need(4, ...called)],
      [slot('length', 'binding.length', need(3, 'act:total', 'axis:length'))],
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
      [slot('side', 'binding.finished-width', need(4, 'act:show', 'state:finished'))],
    ),
    ...thing(
      quilt,
      'binding',
      'tube',
      [need(4, ...called)],
      [
        slot('count', 'binding.passes', need(3, 'form:strip', 'form:pass')),
        slot('side', 'binding.yield', need(3, 'form:bias', 'act:make')),
        slot('width', 'binding.strip', need(3, 'form:bias')),
      ],
    ),
    ...thing(quilt, 'binding', 'fabric', [need(5, ...called)], [slot('yardage', 'binding.yardage')]),
    ...thing(
      quilt,
      'binding',
      'edge',
      [need(3, ...called)],
      [slot('side', 'binding.edge', need(4, 'form:edge'))],
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
        slot('count', 'backing.seams', mustSay(3, 'seam')),
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
        slot('width', 'sleeve.cut-depth', want(1, 'axis:width', 'axis:depth')),
        slot('length', 'sleeve.cut-length', want(1, 'axis:length')),
      ],
    ),
    ...thing(
      quilt,
      'sleeve',
      'finished',
      [sleeve, want(3, 'state:finished', ...UNFINISHED)],
      [slot('length', 'sleeve.length', want(1, 'axis:length'))],
    ),
    ...stripsThing(quilt, 'sleeve', from, [sleeve], undefined, 'sleeve.cut-depth'),
  ];
}

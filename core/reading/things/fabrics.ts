/** Fabric to buy. */
import { need, type Quilt, slot, type Thing, thing, want } from './thing.ts';

export function fabricThings(quilt: Quilt): Thing[] {
  return Object.keys(quilt.pattern.entries.fabrics ?? {}).flatMap((label) => {
    const wants = [need(6, `fabric:${label}`)];
    return [
      ...thing(quilt, `fabric.${label}`, '', wants, [
        slot('yardage', `fabric.${label}.yardage`, want(1.5, 'form:yardage')),
        slot('count', `fabric.${label}.fat-quarters`, {
          concepts: [],
          words: ['fat', 'quarter'],
          weight: 3,
          needed: true,
        }),
        slot('count', `fabric.${label}.fat-eighths`, {
          concepts: [],
          words: ['fat', 'eighth'],
          weight: 3,
          needed: true,
        }),
        slot('count', `fabric.${label}.strips`, want(2, 'form:strip')),
        slot('count', `fabric.${label}.squares`, want(2, 'form:square')),
      ]),
    ];
  });
}

/** Fabric to buy. */
import { bonus, mustSay, need, type Quilt, slot, type Thing, thing, want } from './thing.ts';

export function fabricThings(quilt: Quilt): Thing[] {
  return Object.keys(quilt.pattern.entries.fabrics ?? {}).flatMap((label) => {
    const wants = [need(6, `fabric:${label}`)];
    return [
      ...thing(quilt, `fabric.${label}`, '', wants, [
        slot('yardage', `fabric.${label}.yardage`, bonus(1.5, 'form:yardage')),
        slot('count', `fabric.${label}.fat-quarters`, mustSay(3, 'fat', 'quarter')),
        slot('count', `fabric.${label}.fat-eighths`, mustSay(3, 'fat', 'eighth')),
        slot('count', `fabric.${label}.strips`, want(2, 'form:strip')),
        slot('count', `fabric.${label}.squares`, want(2, 'form:square')),
        slot('side', `fabric.${label}.cut-length`, need(2, 'act:total', 'form:strip', 'form:yardage')),
      ]),
    ];
  });
}

/** Fabric to buy. */
import { bonus, mustSay, nearby, need, type Quilt, slot, type Thing, thing, want } from './thing.ts';

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
      ]),
      ...thing(
        quilt,
        `fabric.${label}`,
        'cut',
        [...wants, nearby(need(2, 'form:strip', 'state:cut'))],
        [slot('side', `fabric.${label}.cut-length`)],
        // Seldom told; the yardage is what is bought.
        { prior: -2 },
      ),
    ];
  });
}

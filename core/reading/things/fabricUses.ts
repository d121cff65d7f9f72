/** What each fabric is used for, by the topics of things. */
import type { Pattern } from '../../block/pattern.ts';
import type { FabricLabel } from '../../block/values/fabricLabel.ts';

export function fabricUses({ entries }: Pattern): Map<string, Set<string>> {
  const uses = new Map<string, Set<string>>();
  const use = (fabric: FabricLabel | undefined, topic: string) => {
    if (fabric) uses.set(fabric.label, (uses.get(fabric.label) ?? new Set()).add(topic));
  };
  for (const [name, { of = [] }] of Object.entries(entries.blocks ?? {}))
    for (const part of of) for (const fabric of part.from ?? []) use(fabric, `block.${name}`);
  for (const [name, { from }] of Object.entries(entries.pieces ?? {})) use(from, `piece.${name}`);
  use(entries.layout?.sashing?.from, 'sashing');
  use(entries.layout?.sashing?.cornerstones, 'sashing.cornerstones');
  use(entries.layout?.triangles?.from, 'setting');
  for (const [index, border] of (entries.borders ?? []).entries()) {
    use(border.from, `border.${index + 1}`);
    use(border['corners from'], `border.${index + 1}`);
  }
  use(entries.binding?.from, 'binding');
  use(entries.piping?.from, 'piping');
  use(entries.backing?.from, 'backing');
  return uses;
}

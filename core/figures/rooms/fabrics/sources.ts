/** Which entries of the block are cut from which fabric. */
import type { Entries, Pattern } from '../../../block/pattern.ts';
import type { BlockPath } from '../../../block/place.ts';
import { Watch } from '../../watch.ts';
import { isUnit } from '../parts.ts';

/** One entry that something is cut for. */
export interface Source {
  readonly path: BlockPath;
  readonly kind:
    | 'unit'
    | 'block piece'
    | 'own piece'
    | 'sashing'
    | 'cornerstones'
    | 'setting triangles'
    | 'border'
    | 'corner squares'
    | 'binding'
    | 'piping'
    | 'backing'
    | 'sleeve';
  /** The labels of its fabrics, in the order of the entry; none where it does not say. */
  readonly fabrics: readonly string[];
}

export interface Sources {
  readonly all: readonly Source[];
  /** Whether an entry cannot be read, so that what it is cut from is unknown. */
  readonly isUnsure: boolean;
}

/** Every entry that fabric is cut for. */
export function sourcesOf(pattern: Pattern): Sources {
  const watch = new Watch(pattern);
  const all = [...found(watch.pattern.entries)];
  const blocks = Object.keys(pattern.entries.blocks ?? {}).map((block) => ['blocks', block, 'of']);
  const hidden: BlockPath[] = [['borders'], ...blocks, ...all.map(({ path }) => path)];
  return { all, isUnsure: watch.isSpoiled || hidden.some((path) => pattern.broken.inside(path)) };
}

type Label = { readonly label: string } | undefined;

const source = (kind: Source['kind'], path: BlockPath, ...from: readonly Label[]): Source => ({
  kind,
  path,
  fabrics: from.flatMap((label) => (label ? [label.label] : [])),
});

function* found(entries: Entries): Generator<Source> {
  for (const [name, { of = [] }] of Object.entries(entries.blocks ?? {}))
    for (const [index, part] of of.entries())
      yield source(
        isUnit(part) ? 'unit' : 'block piece',
        ['blocks', name, 'of', index],
        ...(part.from ?? []),
      );
  for (const [name, { from }] of Object.entries(entries.pieces ?? {}))
    yield source('own piece', ['pieces', name], from);
  const { layout, binding, piping, backing, sleeve } = entries;
  if (layout?.sashing && layout.set !== 'on point') {
    yield source('sashing', ['layout', 'sashing'], layout.sashing.from);
    if (layout.sashing.cornerstones)
      yield source('cornerstones', ['layout', 'sashing'], layout.sashing.cornerstones);
  }
  if (layout?.set === 'on point') yield source('setting triangles', ['layout'], layout.triangles?.from);
  for (const [index, border] of (entries.borders ?? []).entries()) {
    yield source('border', ['borders', index], border.from);
    if (border.corners === 'corner squares')
      yield source('corner squares', ['borders', index], border['corners from']);
  }
  if (binding) yield source('binding', ['binding'], binding.from);
  if (piping) yield source('piping', ['piping'], piping.from);
  if (backing) yield source('backing', ['backing'], backing.from);
  if (sleeve) yield source('sleeve', ['sleeve'], sleeve.from);
}

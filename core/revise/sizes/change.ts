/** What shall happen to the sizes of a pattern, and what it does to anything that stands in their order. */
import type { Pattern } from '../../block/pattern.ts';
import { listed, suggestion } from '../../block/words.ts';
import type { Refusal } from '../revision.ts';

/** What the author asks for. */
export type SizeRequest =
  | {
      readonly kind: 'add';
      readonly name: string;
      /** The size that it follows; left out, the last one. `null` puts it first. */
      readonly after?: string | null | undefined;
      /** Values of the block for the new size, by the name of their entry: `layout.grid`, or `layout` where that is clear. */
      readonly values?: Readonly<Record<string, string>> | undefined;
    }
  | { readonly kind: 'drop'; readonly name: string }
  | { readonly kind: 'rename'; readonly name: string; readonly to: string }
  | { readonly kind: 'order'; readonly names: readonly string[] };

/** A request that the pattern allows, with everything filled in. */
export type SizeChange =
  | {
      readonly kind: 'add';
      readonly name: string;
      /** The size that it follows; `undefined` when it comes first. */
      readonly after: string | undefined;
      /** The size beside it, whose wording it takes over. */
      readonly model: string;
      readonly values: Readonly<Record<string, string>>;
    }
  | Extract<SizeRequest, { kind: 'drop' | 'rename' | 'order' }>;

/** Names that can stand in the block, in a tag and in a sentence without quotation marks. */
const NAME = /^[\p{L}\p{N}](?:[\p{L}\p{N} '’-]*[\p{L}\p{N}])?$/u;

export function planChange({ sizes, entries, broken }: Pattern, request: SizeRequest): SizeChange | Refusal {
  const names = sizes.map(({ name }) => name);
  if (broken.at(['sizes'])) return refuse('The sizes of the block cannot be read; mend them first.');
  if (!entries.sizes || entries.sizes.length === 0)
    return refuse(
      'The pattern has no “sizes” in its block yet; write there the name of the one that it has.',
    );
  switch (request.kind) {
    case 'add':
      return planAdding(names, request);
    case 'drop':
      if (!names.includes(request.name)) return unknown(request.name, names);
      return names.length > 1
        ? request
        : refuse(`“${request.name}” is the only size, so it cannot be dropped.`);
    case 'rename':
      if (!names.includes(request.name)) return unknown(request.name, names);
      return checkNew(request.to, names) ?? request;
    case 'order': {
      const stranger = request.names.find((name) => !names.includes(name));
      if (stranger !== undefined) return unknown(stranger, names);
      const isWhole = request.names.length === names.length && new Set(request.names).size === names.length;
      return isWhole ? request : refuse(`Name every size once; the sizes are ${listed(names, 'and')}.`);
    }
  }
}

function planAdding(
  names: readonly string[],
  { name, after = names.at(-1), values = {} }: Extract<SizeRequest, { kind: 'add' }>,
): SizeChange | Refusal {
  const problem = checkNew(name, names);
  if (problem) return problem;
  if (after !== null && after !== undefined && !names.includes(after)) return unknown(after, names);
  return { kind: 'add', name, after: after ?? undefined, model: after ?? names[0] ?? '', values };
}

function checkNew(name: string, names: readonly string[]): Refusal | undefined {
  if (!NAME.test(name))
    return refuse(`“${name}” cannot name a size: use letters, digits, spaces and hyphens only.`);
  const alike = names.find((known) => known.toLowerCase() === name.toLowerCase());
  return alike === undefined ? undefined : refuse(`The pattern has a size “${alike}” already.`);
}

function unknown(name: string, names: readonly string[]): Refusal {
  const hint = suggestion(name, names) || ` Its sizes are ${listed(names, 'and')}.`;
  return refuse(`The pattern has no size “${name}”.${hint}`);
}

function refuse(refusal: string): Refusal {
  return { refusal };
}

/** The new order of things that stand one for each of these sizes; the new size is among them where one is added. */
export function rearranged(names: readonly string[], change: SizeChange): string[] {
  switch (change.kind) {
    case 'add': {
      const at = change.after === undefined ? 0 : names.indexOf(change.after) + 1;
      return [...names.slice(0, at), change.name, ...names.slice(at)];
    }
    case 'drop':
      return names.filter((name) => name !== change.name);
    case 'rename':
      return names.map((name) => (name === change.name ? change.to : name));
    case 'order': {
      const order = change.names.filter((name) => names.includes(name));
      return order.length === names.length ? order : [...names];
    }
  }
}

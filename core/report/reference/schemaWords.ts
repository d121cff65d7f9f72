/** What the schemas of the block say about themselves, as the reference and other readers need it. */
import { z } from 'zod';
import { PART_SCHEMAS } from '../../block/entries/blocks.ts';
import { BORDER_SCHEMA } from '../../block/entries/borders.ts';
import { FABRIC_SCHEMA } from '../../block/entries/fabrics.ts';
import { listed } from '../../block/words.ts';

/** One word of an entry and what stands behind it. */
export interface Word extends ValueWords {
  readonly name: string;
  readonly meaning: string;
  readonly needed: boolean;
}

export interface ValueWords {
  /** With its article: `a length`; `undefined` for a mapping, which is told by its words. */
  readonly title: string | undefined;
  readonly examples: readonly string[];
  /** Whether the examples are all there is. */
  readonly isChoice: boolean;
  /** Whether it is a list of such values. */
  readonly isList: boolean;
  readonly perSize: boolean;
  readonly groups: readonly Group[];
}

/** The words of one mapping. Where a list takes several kinds of mappings, each is a group. */
export interface Group {
  readonly name: string;
  readonly words: readonly Word[];
}

/** Mappings behind a transformation, where no schema shows them. */
const BEHIND: Readonly<Record<string, Readonly<Record<string, z.ZodType>>>> = {
  'blocks.of': PART_SCHEMAS,
  fabrics: { fabric: FABRIC_SCHEMA },
  borders: { border: BORDER_SCHEMA },
};

/** @param path from the name of the entry: `['layout', 'sashing']` */
export function valueWords(schema: z.ZodType, path: readonly string[]): ValueWords {
  const { inner, isList } = unwrap(schema);
  const { title, examples = [], perSize } = (inner.meta() ?? {}) as Meta;
  const behind = BEHIND[path.join('.')];
  const groups = behind
    ? Object.entries(behind).flatMap(([name, mapping]) => groupsOf(name, mapping, path))
    : groupsOf(path.at(-1) ?? '', inner, path);
  const isChoice = examples.length > 1 && title === listed(examples, 'or');
  return { title, examples, isChoice, isList, perSize: perSize === true, groups };
}

function groupsOf(name: string, schema: z.ZodType, path: readonly string[]): Group[] {
  if (!(schema instanceof z.ZodObject)) return [];
  const words = Object.entries(schema.shape as Record<string, z.ZodType>).map(([key, part]): Word => {
    const needed = !(part instanceof z.ZodOptional);
    return { name: key, meaning: part.description ?? '', needed, ...valueWords(part, [...path, key]) };
  });
  return [{ name, words }];
}

interface Meta {
  readonly title?: string;
  readonly examples?: readonly string[];
  readonly perSize?: boolean;
}

function unwrap(schema: z.ZodType): { inner: z.ZodType; isList: boolean } {
  if (schema instanceof z.ZodOptional) return unwrap(schema.unwrap() as z.ZodType);
  if (schema instanceof z.ZodArray) return { inner: unwrap(schema.element as z.ZodType).inner, isList: true };
  return { inner: schema, isList: false };
}

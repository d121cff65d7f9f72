import { z } from 'zod';
import { one } from '../entry.ts';
import { forward, report, text } from '../values/schema.ts';

const name = text<string>({ title: 'the name of a size', examples: ['throw'] }, (raw) =>
  /[@<>]/.test(raw) ? { problem: 'The name of a size cannot hold @, < or >.' } : raw,
);

export const sizes = one(
  z
    .unknown()
    .transform((raw, context): readonly string[] => {
      if (!Array.isArray(raw)) {
        report(context, 'bad-value', 'Write a list of names here, for example [wall, throw, queen].');
        return z.NEVER;
      }
      const names = new Set<string>();
      raw.forEach((value, index) => {
        const read = name.safeParse(value);
        if (!read.success) forward(context, read.error, name, [index]);
        else if (names.has(read.data))
          report(context, 'duplicate-entry', `The size “${read.data}” stands here twice.`, [index]);
        else names.add(read.data);
      });
      if (raw.length === 0)
        report(context, 'bad-value', 'The list names no size; leave “sizes” out if there is only one.');
      return [...names];
    })
    .meta({ title: 'a list of names', examples: ['[wall, throw, queen]'] }),
  {
    summary:
      'The sizes that the pattern comes in, from the first to the last. Left out, the pattern has one size.',
    example: 'sizes: [wall, throw, queen]',
  },
);

import { one } from '../entry.ts';
import { text } from '../values/schema.ts';

export const pattern = one(
  text({ title: 'a name', examples: ['Kettle Pond'] }, (raw) => raw),
  { summary: 'The name of the pattern.', example: 'pattern: Kettle Pond' },
);

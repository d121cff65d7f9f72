import { one } from '../entry.ts';
import { text } from '../values/schema.ts';

export const use = one(
  text({ title: 'the path of another manuscript', examples: ['../house.md', 'house.md'] }, (raw) => raw),
  {
    summary:
      'Another manuscript, from whose measure blocks “house” and “fabrics” are taken. The path begins at the folder of this manuscript and stays inside the workspace. The other manuscript may itself use one. What stands nearer wins, rule by rule and fabric by fabric.',
    example: 'use: ../house.md',
  },
);

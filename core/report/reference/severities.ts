/** What the three severities are called, and what they ask of the author. */
import type { Severity } from '../../findings/finding.ts';

export interface SeverityWords {
  readonly name: string;
  readonly several: string;
  readonly meaning: string;
}

export const SEVERITIES: Readonly<Record<Severity, SeverityWords>> = {
  error: {
    name: 'Mistake',
    several: 'Mistakes',
    meaning: 'Whoever follows the pattern as it stands is misled, or a part of the block cannot be read.',
  },
  warning: {
    name: 'Warning',
    several: 'Warnings',
    meaning: 'Something does not fit together, so that a number may stay unchecked or a step may go wrong.',
  },
  hint: {
    name: 'Hint',
    several: 'Hints',
    meaning: 'Nothing is wrong. It is worth a look, and the pattern passes without it.',
  },
};

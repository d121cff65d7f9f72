/** Numbers that may state one of a few figures and are wrong as each of them: one finding that offers them all. */
import { listed, lowerFirst } from '../block/words.ts';
import { CODES } from '../findings/codes.ts';
import type { Finding } from '../findings/finding.ts';
import type { ReadNumber } from '../manuscript/manuscript.ts';
import { type Assessing, assess } from './assess.ts';
import type { Tie } from './proof.ts';

/** @param rivals what the number may state, the likeliest first */
export function unclearFinding(number: ReadNumber, rivals: readonly Tie[], assessing: Assessing): Finding {
  const { show } = assessing.ledger;
  const standing = { ...number, around: number.passage };
  const readings = rivals.map((tie) => {
    const { expected, finding } = assess(standing, { ...tie, show }, assessing);
    return { name: nameOf(tie), right: expected ?? show.figure(tie.value, tie.figure.kind), finding };
  });
  const [first, ...others] = readings.map(({ name, right }) => `${name} (${right})`);
  return {
    code: 'unclear-figure',
    severity: CODES['unclear-figure'].severity,
    message: `${number.text} is neither ${first} nor ${listed(others, 'or')}.`,
    start: number.ranges[0].start,
    end: number.ranges.at(-1)?.end ?? number.ranges[0].end,
    related: [],
    fixes: readings.flatMap(({ name, finding }) =>
      (finding?.fixes ?? []).map((fix) => ({ ...fix, title: `${fix.title}: ${name}`, preferred: false })),
    ),
  };
}

function nameOf({ figure, size }: Tie): string {
  return `${lowerFirst(figure.title)}${size ? ` in the size “${size}”` : ''}`;
}

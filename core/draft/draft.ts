/**
 * A measure block drafted from a manuscript that has none: each entry from the sentences that say it, with their lines in
 * a comment; what the text leaves open, or tells in two ways, stays a gap.
 */
import { CODES } from '../findings/codes.ts';
import type { Edit, Finding } from '../findings/finding.ts';
import { readManuscript } from '../manuscript/manuscript.ts';
import { citation } from './cite.ts';
import { compose } from './compose.ts';
import { findFacts } from './facts.ts';
import { placeOfBlock } from './place.ts';
import type { Gap } from './row.ts';
import { fenced, tryFacts } from './trial.ts';

export interface Draft {
  /** The block with its fences; its comments count the lines of the manuscript as it is. */
  readonly block: string;
  /** Puts the block behind the title; its comments count the lines of the manuscript as it then is. */
  readonly edit: Edit;
  /** A gap each, in the order of their places; the places are in the manuscript as it is. */
  readonly findings: readonly Finding[];
}

/** Whether a draft can be asked for: the text measures something, and no block says yet what it should be. */
export function canBeDrafted(source: string): boolean {
  const { fences, numbers } = readManuscript(source);
  return (
    fences.length === 0 && numbers.some(({ notMeasurement, unit }) => !notMeasurement && unit !== undefined)
  );
}

/** @returns why there is no draft, where there is none */
export function draftBlock(source: string): Draft | 'has a block' | 'says nothing' {
  const manuscript = readManuscript(source);
  if (manuscript.fences.length > 0) return 'has a block';
  const { facts, gaps } = findFacts(manuscript);
  const tried = tryFacts(source, facts);
  if (!tried.facts.some(({ path }) => path[0] !== 'pattern')) return 'says nothing';
  const open = [...gaps, ...tried.out];
  const at = placeOfBlock(source);
  const lineEnd = /\r?\n/.exec(source)?.[0] ?? '\n';
  const written = (shift: number) =>
    fenced(compose(tried.facts, open, citation(source, at, shift))).replaceAll('\n', lineEnd);
  const block = written(0);
  // The block, and the empty line behind it.
  const lines = block.split('\n').length;
  return {
    block,
    edit: { start: at, end: at, text: `${written(lines)}${lineEnd}` },
    findings: open.map(findingOf).sort((a, b) => a.start - b.start),
  };
}

function findingOf({ message, places }: Gap): Finding {
  const [first, ...others] = places;
  const { start, end } = first ?? { start: 0, end: 0 };
  return {
    code: 'gap',
    severity: CODES.gap.severity,
    message,
    start,
    end,
    related: others.map(({ start, end, says }) => ({ start, end, message: says })),
    fixes: [],
  };
}

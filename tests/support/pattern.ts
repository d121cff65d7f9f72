/** Patterns from the text of a block, for tests. */
import type { Pattern } from '../../core/block/pattern.ts';
import { readPattern } from '../../core/block/read.ts';
import type { Figure } from '../../core/figures/figure.ts';
import { type Ledger, openLedger } from '../../core/figures/ledger.ts';
import type { Finding } from '../../core/findings/finding.ts';

/** A pattern whose source is the text of its blocks, one after the other. */
export function patternOf(...blocks: string[]): { pattern: Pattern; ledger: Ledger; source: string } {
  let at = 0;
  const fences = blocks.map((value) => {
    const start = at;
    at += value.length;
    return { value, start, end: at, toSource: (offset: number) => start + offset };
  });
  const pattern = readPattern(fences);
  return { pattern, ledger: openLedger(pattern), source: blocks.join('') };
}

/** `[code, the text it stands at, message]` of every finding of a block. */
export function complaints(...blocks: string[]): [string, string, string][] {
  const { pattern, ledger, source } = patternOf(...blocks);
  return [...pattern.findings, ...ledger.findings].map((finding) => summary(finding, source));
}

export function summary({ code, start, end, message }: Finding, source: string): [string, string, string] {
  return [code, source.slice(start, end), message];
}

/** What a figure states in each size, as the working writes it. */
export function shown(ledger: Ledger, id: string): Record<string, string> {
  const figure = figureOf(ledger, id);
  return Object.fromEntries(
    [...figure.values].map(([size, value]) => [size, ledger.show.figure(value, figure.kind)]),
  );
}

export function figureOf(ledger: Ledger, id: string): Figure {
  const figure = ledger.figure(id);
  if (!figure) throw new Error(`the pattern has no figure ${id}; it has ${ledger.ids.join(', ')}`);
  return figure;
}

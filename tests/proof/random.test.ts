import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { fixAll } from '../../core/report/preferred.ts';
import { patternOf } from '../support/pattern.ts';
import { type Stated, type Stretch, stretches } from '../support/randomManuscript.ts';
import { blockOf, randomPattern } from '../support/randomPattern.ts';

const RUNS = { seed: 20_261_126, numRuns: 100 } as const;

interface Manuscript {
  readonly head: string;
  readonly parts: Stretch;
  readonly numbers: readonly Stated[];
  readonly lineEnd: string;
}

/** A measure block, and pieces of text of which each states one figure. */
const manuscripts = randomPattern
  .chain((random) => {
    const block = blockOf(random);
    const { pattern } = patternOf(block);
    return fc.record({
      block: fc.constant(block),
      text: stretches(pattern),
      lineEnd: fc.constantFrom('\n', '\r\n'),
      mark: fc.constantFrom('', '\ufeff'),
      quoted: fc.boolean(),
    });
  })
  .map(({ block, text, lineEnd, mark, quoted }): Manuscript => {
    const fence = `\`\`\`measure\n${block}\n\`\`\`\n`;
    const head = quoted ? fence.replace(/^/gm, '> ').replace(/> $/, '\n') : `${fence}\n`;
    const parts = text.flat();
    const numbers = parts.filter((part) => typeof part !== 'string');
    return { head: `${mark}# Title\n\n${head}`, parts, numbers, lineEnd };
  });

/** The manuscript with some of its numbers put wrong, and where each number stands. */
function write({ head, parts, lineEnd }: Manuscript, isWrong: (index: number) => boolean) {
  const ends = (text: string) => text.replaceAll('\n', lineEnd);
  let source = ends(head);
  const places: { start: number; end: number }[] = [];
  for (const part of parts) {
    const start = source.length;
    if (typeof part === 'string') source += ends(part);
    else {
      source += isWrong(places.length) ? part.wrong : part.right;
      places.push({ start, end: source.length });
    }
  }
  return { source, places };
}

const all = () => true;
const none = () => false;

describe('a random manuscript', () => {
  it('is verified throughout when every number is right', () => {
    fc.assert(
      fc.property(manuscripts, (manuscript) => {
        const { source, places } = write(manuscript, none);
        const { findings, accounts } = proofread({ source });
        expect(
          findings.map(({ message }) => message),
          source,
        ).toEqual([]);
        const kinds = new Map(accounts.map(({ number, kind }) => [number.ranges[0].start, kind]));
        expect(
          places.map(({ start }) => kinds.get(start)),
          source,
        ).toEqual(places.map(() => 'verified'));
      }),
      RUNS,
    );
  });

  it('has one finding at exactly the number that is put wrong, and its fix restores the text', () => {
    fc.assert(
      fc.property(manuscripts, fc.nat(), (manuscript, which) => {
        const { numbers } = manuscript;
        const at = which % Math.max(1, numbers.length);
        const { source, places } = write(manuscript, (index) => index === at);
        const { findings } = proofread({ source });
        expect(
          findings.map(({ code, start, end }) => ({ code, start, end })),
          source,
        ).toEqual(numbers.slice(at, at + 1).map(({ code }) => ({ code, ...places[at] })));
        const right = write(manuscript, none).source;
        expect(applyEdits(source, findings[0]?.fixes[0]?.edits ?? [])).toBe(right);
      }),
      RUNS,
    );
  });

  it('is right again when all numbers are put wrong and all fixes are applied', () => {
    fc.assert(
      fc.property(manuscripts, (manuscript) => {
        const { source, places } = write(manuscript, all);
        const { findings } = proofread({ source });
        expect(
          findings.map(({ start, end }) => ({ start, end })),
          source,
        ).toEqual(places);
        expect(applyEdits(source, fixAll(findings).edits)).toBe(write(manuscript, none).source);
      }),
      RUNS,
    );
  });
});

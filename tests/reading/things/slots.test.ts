import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../core/block/read.ts';
import { type Ledger, openLedger } from '../../../core/figures/ledger.ts';
import { readManuscript } from '../../../core/manuscript/manuscript.ts';
import { thingsOf } from '../../../core/reading/things/index.ts';
import { EXAMPLE_PATTERNS } from '../../../core/report/reference/examplePatterns.ts';
import { plainManuscriptsIn } from '../../manuscripts/annotated.ts';
import { CORPUS, OPEN, SAMPLES } from '../../support/manuscripts.ts';

const manuscripts = [CORPUS, OPEN, SAMPLES].flatMap(plainManuscriptsIn).map(({ source }) => source);

/** What no example has: fat eighths, precut strips, and piping. */
const MORE: readonly string[] = [
  'fabrics: { B: Foam }\nfinished: circle 14"\npiping: { from: B, cord: 1/4", grain: bias }',
  'fabrics: { A: { name: Foam, cut from: fat eighths } }\npieces: { p: { cut: 3" x 4", count: 40, from: A } }',
  'fabrics: { A: { name: Foam, cut from: strips 2 1/2" } }\npieces: { p: { cut: 2 1/2" x 4", count: 40, from: A } }',
];

const sources = [
  ...manuscripts,
  ...[...EXAMPLE_PATTERNS, ...MORE].map((block) => `\`\`\`measure\n${block}\n\`\`\`\n`),
];

/** The same figure of whichever block, unit, cut, piece, fabric or border. */
function shapeOf(id: string): string {
  return id
    .replace(/^unit\.[^.]+\.\d+\./, 'unit.*.')
    .replace(/^unit\.\*\.[^.]+\.(?=[^.]+$)/, 'unit.*.cut of it.')
    .replace(/^(block|fabric|border|piece)\.[^.]+\./, '$1.*.')
    .replace(/^piece\.\*\.[^.]+\.(count|each|cut|width|length|per-strip|strips)$/, 'piece.*.$1')
    .replace(/strips\.\d.*$/, 'strips.*');
}

describe('What manuscripts speak of', () => {
  it('asks only for figures that some pattern has', () => {
    const asked = new Set<string>();
    const had = new Set<string>();
    for (const source of sources) {
      const pattern = readPattern(readManuscript(source).fences);
      const ledger = openLedger(pattern);
      const spy: Ledger = {
        ids: ledger.ids,
        show: ledger.show,
        findings: ledger.findings,
        figure: (id) => {
          const figure = ledger.figure(id);
          asked.add(shapeOf(id));
          if (figure) had.add(shapeOf(id));
          return figure;
        },
      };
      thingsOf(pattern, spy);
    }

    expect(asked.size).toBeGreaterThan(100);
    expect([...asked].filter((shape) => !had.has(shape)).sort()).toEqual([]);
  });
});

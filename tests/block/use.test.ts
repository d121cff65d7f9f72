/** Rules and fabrics that a manuscript takes from another one. */
import { describe, expect, it } from 'vitest';
import type { Refusal } from '../../core/block/used.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { pathUsed } from '../../core/proof/uses.ts';
import { explain } from '../../core/report/explanation.ts';
import { filesBeside } from '../../core/report/reference/example.ts';
import { shown, summary } from '../support/pattern.ts';

const fence = (...lines: string[]) => ['```measure', ...lines, '```', ''].join('\n');
const HOUSE = fence(
  'house: { usable width: 42", joining allowance: 10", binding strip: 2 1/2" }',
  'fabrics: { A: Deep water, B: { name: Foam, usable width: 43" } }',
);
const QUILT = ['use: house.md', 'finished: 36" x 48"', 'binding: { from: A, grain: straight }'];

const read = (source: string, files: Readonly<Record<string, string>> = { 'house.md': HOUSE }) =>
  proofread({ source, use: filesBeside(files) });
const findings = (source: string, files?: Readonly<Record<string, string>>) =>
  read(source, files).findings.map((finding) => summary(finding, source));

describe('A manuscript that uses another one', () => {
  it('is computed by the rules of the other one', () => {
    const { ledger, pattern } = read(fence(...QUILT));

    expect(pattern.findings).toEqual([]);
    expect(shown(ledger, 'house.usable width')).toEqual({ '': '42"' });
    expect(shown(ledger, 'binding.length')).toEqual({ '': '178"' });
    expect(shown(ledger, 'binding.strip')).toEqual({ '': '2½"' });
    expect(Object.keys(pattern.entries.fabrics ?? {})).toEqual(['A', 'B']);
  });

  it('keeps each rule and each fabric that it says itself', () => {
    const { ledger, pattern } = read(
      fence(...QUILT, 'house: { joining allowance: 12" }', 'fabrics: { B: Slate, C: Rope }'),
    );

    expect(shown(ledger, 'binding.length')).toEqual({ '': '180"' });
    expect(shown(ledger, 'house.usable width')).toEqual({ '': '42"' });
    expect(pattern.entries.fabrics).toEqual({
      A: { name: 'Deep water' },
      B: { name: 'Slate' },
      C: { name: 'Rope' },
    });
  });

  it('takes nothing but house rules and fabrics', () => {
    const { ledger, pattern } = read(fence(...QUILT), {
      'house.md': `${HOUSE}\n${fence('sizes: [wall, throw]', 'batting: {}', 'pattern: House')}`,
    });

    expect(pattern.sizes).toEqual([{ name: '', index: 0 }]);
    expect(pattern.entries.pattern).toBeUndefined();
    expect(ledger.figure('batting.width')).toBeUndefined();
  });

  it('goes on to what the other one uses, and what is nearer wins', () => {
    const { ledger } = read(fence(...QUILT), {
      'house.md': fence('use: line.md', 'house: { usable width: 41" }', 'fabrics: { A: Reed }'),
      'line.md': fence('use: shop.md', 'house: { usable width: 44", binding strip: 2" }'),
      'shop.md': fence('house: { binding strip: 3", joining allowance: 8" }'),
    });

    expect(shown(ledger, 'house.usable width')).toEqual({ '': '41"' });
    expect(shown(ledger, 'binding.strip')).toEqual({ '': '2"' });
    expect(shown(ledger, 'binding.length')).toEqual({ '': '176"' });
  });

  it('works in centimetres when the rules together are metric', () => {
    const metric = { 'house.md': fence('house: { seam: 0.75 cm }') };
    const block = ['use: house.md', 'finished: 90 cm x 120 cm'];

    expect(read(fence(...block), metric).pattern.house.system).toBe('metric');
    expect(shown(read(fence(...block), metric).ledger, 'house.overhang')).toEqual({ '': '10 cm' });
    expect(read(fence(...block, 'house: { seam: 1/4" }'), metric).pattern.house.system).toBe('inch');
  });

  it('may have a strip of its own', () => {
    const { ledger } = read(fence('use: house.md', 'finished: 36" x 48"', 'binding: { strip: 2" }'));

    expect(shown(ledger, 'binding.strip')).toEqual({ '': '2"' });
  });

  it('may name its path in any of its blocks', () => {
    expect(pathUsed(`${fence('finished: 36" x 48"')}\n${fence('use: ../house.md')}`)).toBe('../house.md');
    expect(pathUsed('We use: house.md')).toBeUndefined();
    expect(pathUsed(fence('finished: 36" x 48"'))).toBeUndefined();
  });
});

describe('The house of one manuscript alone', () => {
  it('may say the strip of the binding', () => {
    const source = fence('house: { binding strip: 2 1/2" }', 'finished: 36" x 48"', 'binding: {}');
    const { ledger, pattern } = proofread({ source });

    expect(shown(ledger, 'binding.strip')).toEqual({ '': '2½"' });
    expect(pattern.statedPath(['binding', 'strip'])).toEqual(['house', 'binding strip']);
    expect(pattern.findings).toEqual([]);
  });

  it('is told where its strip is wider than the fabric', () => {
    const source = fence(
      'house: { binding strip: 50" }',
      'finished: 36" x 48"',
      'binding: { grain: straight }',
    );

    expect(proofread({ source }).findings.map((finding) => summary(finding, source))).toEqual([
      ['too-wide', '50"', 'The strip is as wide as the fabric or wider, so it cannot be cut across it.'],
    ]);
  });

  it('leaves the binding unknown while its strip cannot be read', () => {
    const source = `${fence('house: { binding strip: 2 }', 'finished: 36" x 48"', 'binding: {}')}\nCut the binding 3" <!-- = binding.strip --> wide.`;

    expect(proofread({ source }).findings.map((finding) => summary(finding, source))).toEqual([
      ['bad-value', '2', '2 has no unit; write 2" for inches, or 2 cm.'],
    ]);
  });
});

describe('What follows from a used rule', () => {
  const source = `${fence(...QUILT)}\nJoin 190" <!-- = binding.length -->. Cut strips 2¼" <!-- = binding.strip --> wide.`;

  it('says in its message which file says it', () => {
    expect(findings(source.replace('190', '170'))).toEqual([
      [
        'short-figure',
        '170"',
        'The length of binding must be at least 178", not 170": 168" around plus 10" to join is 178"; the house file house.md says 10" under “joining allowance”.',
      ],
      [
        'wrong-figure',
        '2¼"',
        'The width of the binding strip is 2½", not 2¼": the house file house.md says 2 1/2" under “binding strip”.',
      ],
    ]);
  });

  it('points at the rule in its file, and here at the path that leads to it', () => {
    const [finding] = read(source).findings;
    const [related] = finding?.related ?? [];
    const origin = related?.origin;

    expect(related?.message).toBe('It follows from “binding strip” of the house rules of house.md.');
    expect(source.slice(related?.start, related?.end)).toBe('house.md');
    expect(origin?.file).toMatchObject({ id: 'house.md', source: HOUSE });
    expect(HOUSE.slice(origin?.start, origin?.end)).toBe('2 1/2"');
  });

  it('says so in its working', () => {
    expect(explain(read(source), source.indexOf('190"'))?.working).toEqual([
      '2 × (36" + 48") = 168" around.',
      '168" around plus 10" to join is 178".',
      'The house file house.md says 10" under “joining allowance”.',
    ]);
  });

  it('names no rule where many stand elsewhere', () => {
    const many = `${fence(...QUILT)}\nCut 3 <!-- = binding.strips --> strips.`;

    expect(findings(many)).toEqual([
      [
        'short-figure',
        '3',
        'The number of binding strips must be at least 5, not 3: 168" around plus 10" to join is 178"; 3 strips joined give 121"; the house file house.md says 42" under “usable width”, 10" under “joining allowance” and 2 1/2" under “binding strip”.',
      ],
    ]);
  });
});

describe('A path that leads nowhere', () => {
  const refused = (refusal: Refusal, block = QUILT) => {
    const source = fence(...block);
    return proofread({ source, use: () => ({ refused: refusal }) }).findings.map((finding) =>
      summary(finding, source),
    );
  };

  it('is told at its value, and what it hides is nobody’s mistake', () => {
    const missing = 'There is no file “house.md”; the path begins at the folder of this manuscript.';
    const stated = `${fence(...QUILT)}\nCut 9 <!-- = binding.strips --> strips, 3" <!-- = binding.strip --> wide. Buy 9 yd <!-- = fabric.A.yardage -->.`;

    expect(refused('missing')).toEqual([['use-missing', 'house.md', missing]]);
    expect(findings(stated, {})).toEqual([['use-missing', 'house.md', missing]]);
  });

  it('leaves what the manuscript says itself as it is', () => {
    const source = `${fence('use: house.md', 'house: { seam: 1/4", joining allowance: 12" }', 'finished: 36" x 48"', 'binding: { strip: 2" }')}\nBinding: 170" <!-- = binding.length -->.`;

    expect(findings(source, {}).map(([code, text]) => [code, text])).toEqual([
      ['use-missing', 'house.md'],
      ['short-figure', '170"'],
    ]);
  });

  it('is told apart by what stands in the way', () => {
    expect(refused('outside')).toEqual([
      ['use-outside', 'house.md', '“house.md” leads out of the workspace, and nothing is read from there.'],
    ]);
    expect(refused('unreadable')).toEqual([
      ['use-unreadable', 'house.md', '“house.md” cannot be read: it is no text file in UTF-8.'],
    ]);
    expect(refused('unreachable')).toEqual([
      [
        'use-unreachable',
        'house.md',
        '“house.md” cannot be reached from here, so nothing that follows from its rules is checked; save this text in a folder first.',
      ],
    ]);
  });

  it.each([
    '/etc/house.md',
    'https://example.org/house.md',
    'file:///house.md',
    'C:/house.md',
    'c:\\house.md',
    '\\\\disk\\house.md',
  ])('is refused without a look: %s', (path) => {
    const source = fence(`use: '${path}'`);
    const use = () => {
      throw new Error('nobody may look there');
    };

    expect(proofread({ source, use }).findings.map(({ code }) => code)).toEqual(['use-outside']);
  });

  it('is written with forward slashes', () => {
    expect(findings(fence('use: ..\\house.md'))).toEqual([
      ['bad-value', '..\\house.md', 'Write the path with forward slashes, as in ../house.md.'],
    ]);
  });

  it('is one path and no list', () => {
    expect(findings(fence('use: [house.md]'))).toEqual([
      ['bad-value', '[house.md]', 'Write the path of another manuscript here, for example ../house.md.'],
    ]);
  });

  it('stands in a file that this one uses', () => {
    expect(findings(fence(...QUILT), { 'house.md': fence('use: line.md') })).toEqual([
      [
        'use-missing',
        'house.md',
        'In house.md: There is no file “line.md”; the path begins at the folder of this manuscript.',
      ],
    ]);
  });
});

describe('Manuscripts that use each other in a circle', () => {
  const circle = (names: string) => `These manuscripts use each other in a circle: ${names}.`;

  it('are all named, and their rules count', () => {
    const files = {
      'house.md': `${HOUSE}\n${fence('use: line.md')}`,
      'line.md': fence('use: shop.md'),
      'shop.md': fence('use: line.md', 'house: { overhang: 5" }'),
    };
    const source = `${fence(...QUILT, 'batting: {}')}\nBatting: 40" <!-- = batting.width --> wide.`;

    expect(
      findings(source, files).map(([code, text, message]) => [code, text, message.slice(0, 74)]),
    ).toEqual([
      ['use-circle', 'house.md', circle('line.md → shop.md → line.md').slice(0, 74)],
      ['short-figure', '40"', expect.stringContaining('must be at least 46"')],
    ]);
  });

  it('may be a single one', () => {
    expect(findings(fence('use: house.md'), { 'house.md': fence('use: house.md', 'house: {}') })).toEqual([
      ['use-circle', 'house.md', circle('house.md → house.md')],
    ]);
  });
});

describe('A used file with a mistake', () => {
  const says = (...lines: string[]) => ({ 'house.md': fence(...lines) });

  it('leaves unknown what follows from the mistake, and only that', () => {
    const files = says(
      'house: { joining allowance: 10, usable width: 42", binding strip: 2 1/2" }',
      'fabrics: { A: X }',
    );
    const source = `${fence(...QUILT)}\nJoin 3" <!-- = binding.length -->, 2¼" <!-- = binding.strip --> wide.`;

    expect(findings(source, files).map(([code, text]) => [code, text])).toEqual([
      ['use-unreadable', 'house.md'],
      ['wrong-figure', '2¼"'],
    ]);
  });

  it('does not matter where this manuscript says the same rule itself', () => {
    const files = says('house: { seam: 1/4, usable width: 42" }');
    const source = `${fence('use: house.md', 'house: { seam: 1/4" }', 'finished: 36" x 48"')}\n42" <!-- = house.usable width -->`;

    expect(findings(source, files)).toEqual([]);
    expect(read(source, files).coverage.verified).toBe(1);
  });

  it.each([
    [
      'a name of an entry that is misspelled',
      ['hause: { seam: 1/4" }'],
      '“house” of house.md cannot be read',
    ],
    [
      'a fabric',
      ['fabrics: { B: { usable width: 42 } }'],
      '“usable width” of fabric B of house.md cannot be read',
    ],
    ['a bracket that is not closed', ['house: { seam: 1/4"'], 'of house.md cannot be read'],
    ['a block that holds no entries', ['house'], 'The measure block of house.md cannot be read in full'],
  ])('is told where it is used: %s', (_, lines, message) => {
    const source = `${fence('use: house.md', 'finished: 36" x 48"', 'backing: { from: B }')}\n9" <!-- = backing.yardage -->`;

    expect(findings(source, says(...lines))).toEqual([
      ['use-unreadable', 'house.md', expect.stringContaining(message)],
    ]);
  });

  it('whose rules do not fit this manuscript is told where it is used', () => {
    const source = fence('use: house.md', 'house: { usable width: 3" }', 'finished: 36" x 48"');

    expect(findings(source, says('house: { seam: 2" }'))).toEqual([
      [
        'bad-value',
        'house.md',
        'Two seam allowances are as wide as the fabric or wider; check both lengths.',
      ],
    ]);
  });

  it('says nothing worth taking', () => {
    expect(findings(fence('use: house.md'), says('finished: 36" x 48"'))).toEqual([
      [
        'use-empty',
        'house.md',
        'The measure block of house.md says nothing under “house” or “fabrics”, so there is nothing to take from it.',
      ],
    ]);
  });
});

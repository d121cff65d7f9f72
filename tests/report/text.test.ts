import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { PLAIN } from '../../core/report/paint.ts';
import { toReport } from '../../core/report/proofread.ts';
import { textReport } from '../../core/report/text.ts';

const OPTIONS = { paint: PLAIN, width: 80, quiet: false, mended: 0 };

function report(source: string, options: Partial<typeof OPTIONS> & { strict?: boolean } = {}): string {
  const document = toReport('quilt.md', proofread({ source }), options.strict ?? false);
  return textReport([document], { ...OPTIONS, ...options });
}

const QUILT = [
  '```measure',
  'finished: 36" x 48"',
  'binding: { strip: 2 1/4", grain: straight }',
  '```',
  '',
].join('\n');

describe('The text report', () => {
  it('reads like a note from a careful friend', () => {
    expect(report(`${QUILT}\nCut 4 <!-- = binding.strips --> strips.\n`)).toBe(
      [
        'Mistake  quilt.md:6:5',
        '  The number of binding strips must be at least 5, not 4: 168" around plus 12"',
        '  to join is 180"; 4 strips joined give 153¼" (with 40" of usable width and 12"',
        '  to join, unless the block says otherwise).',
        '',
        '     6 │ Cut 4 <!-- = binding.strips --> strips.',
        '       │     ^',
        '  See lines 2 and 3.',
        '  To fix it: Change to 5',
        '',
        '1 mistake in 1 manuscript.',
        'The one measurement is too little.',
        'It can be corrected for you: run the same command with --fix.',
        '',
      ].join('\n'),
    );
  });

  it('tells a single related place in full', () => {
    const text = report(`${QUILT}\n\`\`\`measure\nfinished: 36" x 50"\n\`\`\`\n`);

    expect(text).toMatch(/\n {2}See line 2: .+\n/);
  });

  it('offers several fixes as a choice', () => {
    const sizes = '```measure\nsizes: [wall, throw]\nfinished: { wall: 36" x 48", throw: 54" x 72" }\n```\n';
    const text = report(`${sizes}\nThe edge is 168" <!-- = finished.edge -->.\n`);

    expect(text).toMatch(/\n {2}To fix it: .*wall.*\n {2}or: .*throw.*\n/);
  });

  it('keeps every line within a narrow terminal', () => {
    const long = `${'A long sentence before it, '.repeat(8)}cut 4 <!-- = binding.strips --> strips ½ 縫 wide.`;
    const lines = report(`${QUILT}\n${long}\n`, { width: 44 }).split('\n');

    expect(lines.filter((line) => stringWidth(line) > 44)).toEqual([]);
    expect(lines.some((line) => line.includes('cut 4 <!--'))).toBe(true);
  });

  it('marks the first line of what stands on several', () => {
    const text = report('```measure\nfinished: 36" x 48"\nbinding: {\n  grain: straight\n}\n```\n');

    expect(text).toMatch(/│ \^+\n|│ +\^+\n/);
    expect(text).not.toContain('^\n       │');
  });

  it('hides hints from the quiet, and shows what nobody has checked to the strict', () => {
    const generous = `${QUILT}\nBinding: 2 yd <!-- = binding.yardage -->, and 3 pins.\n`;

    expect(report(generous)).toMatch(/^Hint {2}quilt\.md:6:10\n/);
    expect(report(generous, { quiet: true })).toBe('');
    expect(report(`${QUILT}\nCut 9 strips.\n`, { strict: true, quiet: true })).toBe(
      [
        'Warning  quilt.md:6:5',
        '  Nobody has checked “9”: nothing in the measure block says what it should be.',
        '',
        '     6 │ Cut 9 strips.',
        '       │     ^',
        '',
      ].join('\n'),
    );
  });

  it('says what it cannot do without a measure block', () => {
    expect(report('Cut 9 strips.\n')).toBe(
      'No mistake found in 1 manuscript.\nWithout a measure block the numbers can only be compared with each other.\n',
    );
  });
});

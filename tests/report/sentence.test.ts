import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../core/manuscript/manuscript.ts';
import { sentencesAround } from '../../core/report/sentence.ts';

/** Sentences with « » around their marks, as a page shows them, for the texts to find in the source. */
function shown(source: string, ...texts: string[]): string[] {
  const places = texts.map((text) => {
    const start = source.indexOf(text);
    return { start, end: start + text.length };
  });
  return sentencesAround(readManuscript(source), places).map(({ line, lead, text, marks }) => {
    const marked = [...marks]
      .reverse()
      .reduce(
        (all, { start, end }) => `${all.slice(0, start)}«${all.slice(start, end)}»${all.slice(end)}`,
        text,
      );
    return `${line} ${lead === undefined ? '' : `[${lead}] `}${marked.replace(/ +/g, ' ')}`;
  });
}

describe('The sentence around a number', () => {
  it('is the one of a paragraph, without tags and emphasis, and across lines', () => {
    const source = 'Press it. Cut **5** <!-- = binding.strips -->\nstrips, 2½" wide. Sew them.\n';

    expect(shown(source, '5')).toEqual(['1 Cut «5» strips, 2½" wide.']);
  });

  it('is told once for neighbours that stand in it', () => {
    expect(shown('Cut 5 strips, 2½" wide. Cut 7 more.', '5', '2½"', '7')).toEqual([
      '1 Cut «5» strips, «2½"» wide.',
      '1 Cut «7» more.',
    ]);
  });

  it('tells the heads of row and column of a number in a table', () => {
    const source = '| | Lap | Twin |\n|---|---|---|\n| Strips | 5 | 7 |\n';

    expect(shown(source, '5', '7')).toEqual(['3 [Strips, Lap] «5»', '3 [Strips, Twin] «7»']);
  });

  it('is the line of the block where no reader sees it', () => {
    const source = '# A\n\n```measure\n  finished: 36 x 48\n```\n';

    expect(shown(source, '36 x 48')).toEqual(['4 finished: «36 x 48»']);
  });

  it('shows a place for pictures and code that stand in it', () => {
    expect(shown('See `a` and cut 5 strips.', '5')).toEqual(['1 See … and cut «5» strips.']);
  });
});

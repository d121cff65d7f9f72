import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { excerpt } from '../../core/report/excerpt.ts';

/** Marks the first `part` of `text`. */
function marked(text: string, part: string, width = 80) {
  const start = text.indexOf(part);
  if (start < 0) throw new Error(`“${part}” is not in the text`);
  return excerpt(text, start, start + part.length, width);
}

describe('An excerpt', () => {
  it('marks the number below the line', () => {
    expect(marked('Cut 7 strips 2½" wide.', '2½"')).toEqual({
      line: 'Cut 7 strips 2½" wide.',
      mark: '             ^^^',
    });
  });

  it('counts wide characters as two columns and joined ones as one character', () => {
    expect(marked('縫う 7 strips', '7')).toEqual({ line: '縫う 7 strips', mark: '     ^' });
    expect(marked('👩🏽‍🎨 7 strips', '7')).toEqual({ line: '👩🏽‍🎨 7 strips', mark: '   ^' });
    expect(marked('1⁄2 a\u0301 7', '7').mark).toBe('      ^');
  });

  it('shows tabs as spaces up to the next tab stop', () => {
    expect(marked('\t1\t7 strips', '7')).toEqual({ line: '    1   7 strips', mark: '        ^' });
  });

  it('marks one column where nothing stands', () => {
    expect(excerpt('ab', 2, 2, 80)).toEqual({ line: 'ab', mark: '  ^' });
    expect(excerpt('', 0, 0, 80)).toEqual({ line: '', mark: '^' });
  });

  it('cuts a long line around the mark', () => {
    const text = `${'to the left '.repeat(20)}7 strips${' to the right'.repeat(20)}`;
    const { line, mark } = marked(text, '7', 40);

    expect(line).toMatch(/^….*7 strips.*…$/);
    expect(stringWidth(line)).toBeLessThanOrEqual(40);
    expect(line[mark.indexOf('^')]).toBe('7');
  });

  it('does not let a manuscript steer the terminal', () => {
    expect(excerpt('a\u001b[31mb', 0, 1, 80).line).toBe('a\ufffd[31mb');
  });

  it('keeps every excerpt within the width, with the mark under the part', () => {
    const unit = fc.constantFrom('a', ' ', '½', '縫', '🧵', '\t', 'e\u0301');
    fc.assert(
      fc.property(
        fc.string({ unit, maxLength: 120 }),
        fc.string({ unit, maxLength: 120 }),
        fc.integer({ min: 12, max: 60 }),
        (before, after, width) => {
          const text = `${before}7${after}`;
          const { line, mark } = excerpt(text, before.length, before.length + 1, width);
          expect(stringWidth(line)).toBeLessThanOrEqual(width);
          const column = mark.indexOf('^');
          expect(mark).toBe(`${' '.repeat(column)}^`);
          const upTo = Array.from(new Intl.Segmenter().segment(line), ({ segment }) => segment);
          let width7 = 0;
          const at = upTo.find((segment) => {
            if (width7 === column) return true;
            width7 += stringWidth(segment);
            return false;
          });
          // A combining mark behind the 7 joins it; the 7 still stands there.
          expect(at?.[0]).toBe('7');
        },
      ),
    );
  });
});

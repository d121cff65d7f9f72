import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { placeBehind } from '../../core/manuscript/behind.ts';
import { readManuscript } from '../../core/manuscript/manuscript.ts';

/** The manuscript with a comment behind the number that stands between « and ». */
function commented(marked: string): string | undefined {
  const start = marked.indexOf('«');
  const source = marked.replace('«', '').replace('»', '');
  const manuscript = readManuscript(source);
  const number = manuscript.numbers.find(({ ranges }) => ranges[0].start === start);
  if (!number) throw new Error(`no number begins at the mark in ${marked}`);
  const place = placeBehind(manuscript, number);
  if (!place) return undefined;
  const { at, space } = place;
  return applyEdits(source, [{ start: at, end: at, text: `${space}<!-- measure skip -->` }]);
}

describe('A comment behind a number', () => {
  it.each([
    ['Cut «7» strips.', 'Cut 7 <!-- measure skip --> strips.'],
    ['- «7» strips\n- 8 strips', '- 7 <!-- measure skip --> strips\n- 8 strips'],
    ['«7» strips', '7 <!-- measure skip --> strips'],
    ['# Cut «7»', '# Cut 7 <!-- measure skip -->'],
    ['| A | B |\n|---|---|\n| «7» | 8 |', '| A | B |\n|---|---|\n| 7 <!-- measure skip --> | 8 |'],
    ['| A | B |\n|---|---|\n|«7»|8|', '| A | B |\n|---|---|\n|7 <!-- measure skip -->|8|'],
    ['Cut **«7»** strips.', 'Cut **7** <!-- measure skip --> strips.'],
    ['Cut *«7»*strips.', 'Cut *7* <!-- measure skip -->strips.'],
    ['Cut **«7» strips**.', 'Cut **7 <!-- measure skip --> strips**.'],
    ['Cut [«7»](#binding) strips.', 'Cut [7](#binding) <!-- measure skip --> strips.'],
    ['Cut [**«7»**](#binding).', 'Cut [**7**](#binding) <!-- measure skip -->.'],
    ['Cut [«7» strips](#binding).', 'Cut [7 <!-- measure skip --> strips](#binding).'],
    ['> Cut «7»\n> strips', '> Cut 7 <!-- measure skip -->\n> strips'],
    ['<p>Cut «7» strips.</p>', '<p>Cut 7 <!-- measure skip --> strips.</p>'],
    ['It is «36"» × 48".', 'It is 36" <!-- measure skip --> × 48".'],
    ['Cut «5» (7, 9) strips.', 'Cut 5 <!-- measure skip --> (7, 9) strips.'],
    ['Cut **«2**½"» strips.', 'Cut **2**½" <!-- measure skip --> strips.'],
    ['Cut «one\nhundred» strips.', 'Cut one\nhundred <!-- measure skip --> strips.'],
  ])('stands in %j', (source, expected) => {
    expect(commented(source)).toBe(expected);
  });

  it('stands before a comment that is there already, and inside of raw HTML', () => {
    expect(commented('Cut «7»<!-- = a --> strips.')).toBe('Cut 7 <!-- measure skip --><!-- = a --> strips.');
    expect(commented('<p title="x">«7</p>')).toBe('<p title="x">7 <!-- measure skip --></p>');
  });
});

import { describe, expect, it } from 'vitest';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';

const BLOCK = `\`\`\`measure
sizes: [small, large]
finished: { small: 17" x 68", large: 17 1/2" x 68 1/2" }
house: { usable width: 42" }
\`\`\`

`;

const found = (text: string) => {
  const source = BLOCK + text;
  const { accounts, findings } = proofread({ source });
  const edits = findings.flatMap(({ fixes }) => fixes[0]?.edits ?? []);
  return { kinds: accounts.map(({ kind }) => kind), fixed: applyEdits(source, edits).slice(BLOCK.length) };
};

describe('a list with one number for each size', () => {
  it.each([
    ['Bind 173" / 175" <!-- = finished.edge -->.', 'Bind 170" / 172" <!-- = finished.edge -->.'],
    ['Bind 173"/175" <!-- = finished.edge -->.', 'Bind 170"/172" <!-- = finished.edge -->.'],
    ['Bind 173" (175") <!-- = finished.edge -->.', 'Bind 170" (172") <!-- = finished.edge -->.'],
    [
      'Fabric is 6½ feet (6½ feet) <!-- = house.usable width --> wide.',
      'Fabric is 3½ feet (3½ feet) <!-- = house.usable width --> wide.',
    ],
  ])('is corrected although its numbers lie as near as those of a range: %s', (text, right) => {
    expect(found(text)).toEqual({ kinds: ['wrong', 'wrong'], fixed: right });
    expect(found(right)).toEqual({ kinds: ['verified', 'verified'], fixed: right });
  });

  it.each([
    'Fabric is 43"–44" <!-- = house.usable width --> wide.',
    'Fabric is 43/44" <!-- = house.usable width --> wide.',
  ])('is told from a range, which is never called wrong: %s', (text) => {
    expect(found(text)).toEqual({ kinds: ['unaccounted', 'unaccounted'], fixed: text });
  });

  it('is corrected in no place where the new number would run into another', () => {
    const text = 'It is 0.5¾" <!-- = finished.width @ small --> wide.';
    expect(found(text).fixed).toBe(text);
  });
});

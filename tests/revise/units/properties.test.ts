/** What holds of every manuscript: what adding writes, removing takes away again, and all else stays as it is. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../../core/proof/proofread.ts';
import { revisedUnits } from './revise.ts';

const length = fc
  .record({
    whole: fc.integer({ min: 1, max: 60 }),
    part: fc.constantFrom('', '½', '⅞', ' 1/4', '-1/2', '.75'),
    mark: fc.constantFrom('"', '”', ' in', ' inches', '&quot;'),
  })
  .map(({ whole, part, mark }) => `${whole}${part}${mark}`);

const sentence = fc.oneof(
  fc.tuple(length, length).map(([a, b]) => `Cut a scrap ${a} × ${b} of 🧵 felt.`),
  length.map((a) => `Fold **${a}** over, then _press_.`),
  length.map((a) => `| 🧵 | Cuff |\n|---|---|\n| long | ${a} |`),
  length.map((a) => `- the cuff (${a})\n- the rest`),
  fc.tuple(length, length).map(([a, b]) => `Ties are ${a} (${b}) long.`),
  length.map((a) => `## A ${a} cuff`),
  length.map((a) => `Leave \`${a}\` alone, and <b>${a}</b> too. <!-- ${a} -->`),
  fc.constant('Bind 168" <!-- = finished.edge --> with strips 2¼"\n<!-- = binding.strip --> wide.'),
  fc.constant('Batting: 44" × 56" <!-- = batting.width x batting.length -->, ½ yard of lining.'),
  fc.constant('Seven (7) “words” & 12 pins.  '),
);

const manuscript = fc
  .record({
    sentences: fc.array(sentence, { minLength: 1, maxLength: 6 }),
    house: fc.constantFrom('', 'house: { convert to: 0.5 cm }\n', 'house: { convert to: 1 mm }\n'),
    lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
    mark: fc.constantFrom('', '\ufeff'),
  })
  .map(({ sentences, house, lineEnd, mark }) => {
    const block = `\`\`\`measure\n${house}finished: 36" x 48"\nbinding: { strip: 2 1/4" }\nbatting: {}\n\`\`\``;
    return mark + [block, ...sentences, ''].join('\n\n').replaceAll('\n', lineEnd);
  });

describe('Every manuscript', () => {
  it('is the same again when equivalents are added and removed, and adding twice adds nothing', () => {
    fc.assert(
      fc.property(manuscript, (source) => {
        const { text } = revisedUnits(source, { kind: 'add', system: 'metric' });

        expect(revisedUnits(text, { kind: 'add', system: 'metric' }).text).toBe(text);
        expect(revisedUnits(text, { kind: 'remove' }).text).toBe(source);
      }),
      { numRuns: 40 },
    );
  });

  it('keeps its accounts and its findings when equivalents are added', () => {
    fc.assert(
      fc.property(manuscript, (source) => {
        const { text } = revisedUnits(source, { kind: 'add', system: 'metric' });
        const accounts = (of: string) =>
          proofread({ source: of })
            .accounts.filter(({ number }) => !/m$/.test(number.written.notation.mark))
            .map(({ number, kind }) => `${number.text}: ${kind}`);

        expect(accounts(text)).toEqual(accounts(source));
        expect(proofread({ source: text }).findings.map(({ code }) => code)).toEqual(
          proofread({ source }).findings.map(({ code }) => code),
        );
      }),
      { numRuns: 25 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readManuscript } from '../../core/manuscript/manuscript.ts';
import { seenLines } from '../../core/proof/earlier/keptLine.ts';
import { proofread } from '../../core/proof/proofread.ts';
import { sizeNames } from '../../core/reading/sizeNames.ts';
import { type Corrections, correctionsBetween, type Mention } from '../../core/record/corrections.ts';
import { CORPUS, manuscriptsIn, SAMPLES } from '../support/manuscripts.ts';
import { revisions } from './revisions.ts';

const MANUSCRIPTS = [SAMPLES, CORPUS].flatMap(manuscriptsIn).map(({ source }) => source);

/** The corrections by the words alone. */
function byWords(before: string, after: string): Corrections {
  const lines = (source: string) => seenLines(readManuscript(source));
  return correctionsBetween(lines(before), lines(after), () => undefined);
}

/** The corrections by the words and by what the numbers state. */
function corrections(before: string, after: string): Corrections {
  const [then, now] = [before, after].map((source) => proofread({ source })) as [
    ReturnType<typeof proofread>,
    ReturnType<typeof proofread>,
  ];
  const sizes = sizeNames(now.pattern);
  return correctionsBetween(
    seenLines(then.manuscript, then.accounts),
    seenLines(now.manuscript, now.accounts),
    (head) => sizes.in(head),
  );
}

const changes = ({ changed }: Corrections) =>
  changed.map(({ printed, right }) => `${printed.text} → ${right.text}`);
const texts = (mentions: readonly Mention[]) => mentions.map(({ text }) => text);

describe('the corrections of a revision', () => {
  it('name each changed number once, and no other, whatever was moved, added or deleted', () => {
    fc.assert(
      fc.property(revisions(MANUSCRIPTS), ({ before, after, changed, added, removed }) => {
        const found = byWords(before, after);
        expect(changes(found).sort()).toEqual(changed);
        expect([...texts(found.added)].sort()).toEqual(added);
        expect([...texts(found.removed)].sort()).toEqual(removed);
      }),
      { seed: 20_261_125, numRuns: 40 },
    );
  });
});

const QUILT = (sizes: string, finished: string, lines: string) =>
  `# Skerry Throw\n\n\`\`\`measure\nsizes: [${sizes}]\nfinished: { ${finished} }\nbinding: { strip: 2 1/2" }\n\`\`\`\n\n## Binding\n\n${lines}\n`;
const TWO = ['lap, twin', 'lap: 54" x 66", twin: 72" x 90"'] as const;

describe('a correction', () => {
  it('names heading, step, size, what was printed and what it should be', () => {
    const lines = (strips: string) =>
      `1. Press the edge.\n2. Cut 7 (${strips}) strips, 2½" × WOF, and join them end to end.`;
    const { changed, added, removed } = corrections(QUILT(...TWO, lines('8')), QUILT(...TWO, lines('9')));

    expect(changed).toMatchObject([
      {
        printed: { text: '8', size: 'twin', line: 'Cut 7 (8) strips, 2½" × WOF, and join them end to end.' },
        right: { text: '9', size: 'twin', step: '2', headings: ['Skerry Throw', 'Binding'] },
      },
    ]);
    expect([added, removed]).toEqual([[], []]);
  });

  it('takes the size from the head of the column, for a number that no figure fixes', () => {
    const table = (buttons: string) => `| | Lap | Twin |\n|---|---|---|\n| Buttons | 4 | ${buttons} |`;
    const { changed } = corrections(QUILT(...TWO, table('6')), QUILT(...TWO, table('8')));
    expect(changed).toMatchObject([{ printed: { text: '6', size: 'twin' }, right: { text: '8' } }]);
  });

  it('is none where only the way of writing changed', () => {
    const { changed } = byWords(
      'Cut 7 strips, 2¼" wide. Buy 1½ yd.',
      'Cut seven strips, 2.25 in wide. Buy 54".',
    );
    expect(changed).toEqual([]);
  });

  it('is none for a number that measures nothing', () => {
    const found = byWords('First printing 2025. See page 4.', 'First printing 2026. See page 5.');
    expect([found.changed, found.added, found.removed]).toEqual([[], [], []]);
  });

  it('is told from the numbers of a size that came or went', () => {
    const dropped = byWords(
      '| | Lap | Twin | Queen |\n|---|---|---|---|\n| Strips | 7 | 9 | 11 |',
      '| | Lap | Queen |\n|---|---|---|\n| Strips | 7 | 12 |',
    );
    expect(changes(dropped)).toEqual(['11 → 12']);
    expect(texts(dropped.removed)).toEqual(['9']);

    const three = ['lap, twin, queen', 'lap: 54" x 66", twin: 72" x 90", queen: 90" x 108"'] as const;
    const came = corrections(
      QUILT(...TWO, 'Cut 7 (9) strips for the binding.'),
      QUILT(...three, 'Cut 7 (9, 11) strips for the binding.'),
    );
    expect(changes(came)).toEqual([]);
    expect(texts(came.added)).toEqual(['11']);
  });

  it('follows the sizes when they change places', () => {
    const turned = ['twin, lap', 'lap: 54" x 66", twin: 72" x 90"'] as const;
    const { changed } = corrections(
      QUILT(...TWO, 'Cut 7 (9) strips for the binding.'),
      QUILT(...turned, 'Cut 9 (7) strips for the binding.'),
    );
    expect(changed).toEqual([]);
  });

  it('keeps its place among lines that differ in their numbers only', () => {
    const before = 'Cut 2 strips.\n\nCut 3 strips.\n\nCut 4 strips.';
    expect(changes(byWords(before, 'Cut 3 strips.\n\nCut 4 strips.\n\nCut 5 strips.'))).toEqual([
      '2 → 3',
      '3 → 4',
      '4 → 5',
    ]);
    const gone = byWords(before, 'Cut 3 strips.\n\nCut 5 strips.');
    expect([changes(gone), texts(gone.removed)]).toEqual([['4 → 5'], ['2']]);
    expect(changes(byWords(before, 'Cut 4 strips.\n\nCut 2 strips.\n\nCut 3 strips.'))).toEqual([]);
  });

  it('is found in a sentence that was rewritten around it', () => {
    const { changed, added } = byWords(
      'Sew the 12 blocks together in rows, and press the seams of each row.',
      'Sew the 14 blocks together in rows of 2, and press the seams of each row open.',
    );
    expect([changed.map(({ right }) => right.text), texts(added)]).toEqual([['14'], ['2']]);
  });
});

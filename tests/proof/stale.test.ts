import { describe, expect, it } from 'vitest';
import { earlierState } from '../../core/proof/earlier/earlier.ts';
import { proofread } from '../../core/proof/proofread.ts';

const fence = (...lines: string[]) => ['```measure', ...lines, '```', ''].join('\n');

/** The findings of a text that read otherwise before: code, severity, the number, the message, and the fix. */
function changed(before: string, after: string) {
  const { findings, coverage } = proofread({
    source: after,
    before: [earlierState(proofread({ source: before }))],
  });
  return {
    coverage,
    findings: findings.map(({ code, severity, start, end, message, fixes }) => ({
      code,
      severity,
      at: after.slice(start, end),
      message,
      fix: fixes.map(({ edits }) => edits.map(({ text }) => text).join()).join(' or '),
    })),
  };
}

const WALL = 'finished: 54" x 77"';

describe('a number that was right before the block changed', () => {
  it('is stale, and its message names the entry that changed', () => {
    const text = '\nCut 8 <!-- = binding.strips --> strips, 2¼" <!-- = binding.strip --> wide.';
    const { findings, coverage } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }') + text,
      fence(WALL, 'binding: { strip: 2 1/2" }') + text,
    );
    expect(findings).toEqual([
      {
        code: 'stale-figure',
        severity: 'warning',
        at: '2¼"',
        message:
          'The width of the binding strip is 2½", not 2¼": it was right until “strip” of the binding changed from 2 1/4" to 2 1/2".',
        fix: '2½"',
      },
    ]);
    expect(coverage).toMatchObject({ verified: 1, stale: 1, wrong: 0 });
  });

  it('says so of a requirement that has grown', () => {
    const text = '\nCut 8 <!-- = binding.strips --> strips.';
    const { findings } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }') + text,
      fence('finished: 54" x 97"', 'binding: { strip: 2 1/4" }') + text,
    );
    expect(findings.map(({ code, message }) => [code, message])).toEqual([
      [
        'stale-figure',
        'The number of binding strips must be at least 9, not 8: it was right until “finished” changed from 54" x 77" to 54" x 97".',
      ],
    ]);
  });

  it('names two of the entries that changed, and counts the others', () => {
    const text = '\nCut 7 <!-- = binding.strips --> strips.';
    const { findings } = changed(
      fence('finished: 50" x 70"', 'binding: { strip: 2 1/4" }', 'house: { usable width: 42" }') + text,
      fence(
        'finished: 60" x 90"',
        'binding: { strip: 2 1/4" }',
        'house: { usable width: 40", join: straight, joining allowance: 20" }',
      ) + text,
    );
    expect(findings.map(({ code, message }) => [code, message.replace(/^.*right until/, '')])).toEqual([
      [
        'stale-figure',
        ' “finished” changed from 50" x 70" to 60" x 90", “usable width” of the house rules changed from 42" to 40", and 2 more entries changed.',
      ],
    ]);
  });

  it('names an entry that was taken out', () => {
    const text = '\nCut 7 <!-- = binding.strips --> strips.';
    const { findings } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }', 'house: { usable width: 44" }') + text,
      fence(WALL, 'binding: { strip: 2 1/4" }') + text,
    );
    expect(findings.map(({ message }) => message)).toEqual([
      'The number of binding strips must be at least 8, not 7: it was right until “usable width” of the house rules was taken out.',
    ]);
  });

  it('follows a value that was one for all sizes and is now one for each', () => {
    const sizes = ['sizes: [lap, twin]', 'finished: { lap: 54" x 66", twin: 72" x 90" }'];
    const text = '\nThe strips for the twin are 2¼" <!-- = binding.strip @ twin --> wide.';
    const { findings } = changed(
      fence(...sizes, 'binding: { strip: 2 1/4" }') + text,
      fence(...sizes, 'binding: { strip: { lap: 2 1/4", twin: 2 1/2" } }') + text,
    );
    expect(findings.map(({ code, message }) => [code, message])).toEqual([
      [
        'stale-figure',
        'In the size “twin”, the width of the binding strip is 2½", not 2¼": it was right until “strip” of the binding for “twin” changed from 2 1/4" to 2 1/2".',
      ],
    ]);
  });

  it('is found in a sentence without tags, however much the number differs now', () => {
    const text = '\n# Ferry Flag\n\n## Binding\n\nCut 8 strips, 2¼" × WOF, and join them end to end.\n';
    const { findings } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }') + text,
      fence(WALL, 'binding: { strip: 3 5/8" }') + text,
    );
    expect(findings.map(({ code, at, fix }) => [code, at, fix])).toEqual([['stale-figure', '2¼"', '3⅝"']]);
  });

  it('is found where the sentence was moved, and another put in its place', () => {
    const text = '\n# Ferry Flag\n\n## Binding\n\nCut 8 strips, 2¼" × WOF, and join them end to end.\n';
    const { findings } = changed(
      `${fence(WALL, 'binding: { strip: 2 1/4" }') + text}\nPress it in half.`,
      `${fence(WALL, 'binding: { strip: 3 5/8" }')}\n# Ferry Flag\n\n## Sewing\n\nPress 1 corner.\n${text.replace('# Ferry Flag', '')}`,
    );
    expect(findings.map(({ code, at, fix }) => [code, at, fix])).toEqual([['stale-figure', '2¼"', '3⅝"']]);
  });

  it('is stale as a statement of the block too', () => {
    const states = ['states:', '  binding.strips: 8'];
    const { findings } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }', ...states),
      fence('finished: 54" x 97"', 'binding: { strip: 2 1/4" }', ...states),
    );
    expect(findings.map(({ code, at, fix }) => [code, at, fix])).toEqual([['stale-figure', '8', '9']]);
  });
});

describe('a number is not called stale', () => {
  it('when it was wrong before as well', () => {
    const text = '\nThe strip is 2" <!-- = binding.strip --> wide.';
    const { findings } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }') + text,
      fence(WALL, 'binding: { strip: 2 1/2" }') + text,
    );
    expect(findings.map(({ code }) => code)).toEqual(['wrong-figure']);
  });

  it('when nothing changed but the way in which the block is written', () => {
    const text = '\nThe strip is 2" <!-- = binding.strip --> wide.';
    const { findings } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }') + text,
      fence(WALL, 'binding:', '  strip: 2¼ in') + text,
    );
    expect(findings.map(({ code }) => code)).toEqual(['wrong-figure']);
  });

  it('when it is right today', () => {
    const text = '\nThe strip is 2½" <!-- = binding.strip --> wide.';
    const { findings } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }') + text,
      fence(WALL, 'binding: { strip: 2 1/2" }') + text,
    );
    expect(findings).toEqual([]);
  });

  it('when the author says that it is only about right', () => {
    const text = '\nCut about 8 strips for the binding.';
    const { findings } = changed(
      fence(WALL, 'binding: { strip: 2 1/4" }') + text,
      fence('finished: 54" x 97"', 'binding: { strip: 2 1/4" }') + text,
    );
    expect(findings).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { canBeDrafted, type Draft, draftBlock } from '../../core/draft/draft.ts';
import { applyEdits } from '../../core/findings/finding.ts';
import { proofread } from '../../core/proof/proofread.ts';

const RUNNER = [
  '# Pebble Row, a table runner',
  '',
  'Finished size: 16" × 48". The block finishes at 8". Sew the blocks into 6 rows of 2.',
  '',
  '## Fabric',
  '',
  '- Cream: 1 yard',
  '- Slate: ¾ yard',
  '',
  '## Cutting',
  '',
  '**Cream**',
  '',
  '- Cut 24 squares 4½".',
  '',
  '**Slate**',
  '',
  '- Cut 24 squares 4½".',
  '- Cut 4 strips 2½" wide for the binding.',
  '',
].join('\n');

function drafted(source: string): Draft {
  const draft = draftBlock(source);
  if (typeof draft === 'string') throw new Error(draft);
  return draft;
}

/** The entries without their comments. */
function entries({ block }: Draft): string {
  return block.replace(/ {2}# .*$/gm, '');
}

describe('A drafted block', () => {
  it('says in the order of the reference what the text says, each entry with its line', () => {
    const draft = drafted(RUNNER);
    expect(draft.block.split('\n')).toContain(
      '  strip: 2 1/2"  # line 19: “- Cut 4 strips 2½" wide for the binding.”',
    );
    expect(entries(draft)).toBe(
      [
        '```measure',
        'pattern: Pebble Row',
        'fabrics:',
        '  cream: Cream',
        '  slate: Slate',
        'finished: 16" x 48"',
        'blocks:',
        '  Pebble Row:',
        '    finished: 8"',
        '    of:',
        '      - { unit: squares, finished: 4", count: 2, from: cream }',
        '      - { unit: squares, finished: 4", count: 2, from: slate }',
        'layout:',
        '  grid: 2 x 6',
        'binding:',
        '  from: slate',
        '  strip: 2 1/2"',
        '```',
        '',
      ].join('\n'),
    );
    expect(draft.findings).toEqual([]);
  });

  it('goes behind the title, where its comments count the lines as they then are', () => {
    const { edit } = drafted(RUNNER);
    const text = applyEdits(RUNNER, [edit]);
    const lines = text.split('\n');
    const strip = lines.find((line) => line.startsWith('  strip:')) ?? '';
    const named = Number(/# line (\d+)/.exec(strip)?.[1]);

    expect(lines.slice(0, 3)).toEqual(['# Pebble Row, a table runner', '', '```measure']);
    expect(lines[named - 1]).toBe('- Cut 4 strips 2½" wide for the binding.');
    expect(proofread({ source: text }).findings).toEqual([]);
  });

  it('goes behind the front matter of a manuscript without a title', () => {
    const text = '---\ntitle: Row\n---\nThe quilt finishes at 16" × 48".\n';
    const { edit } = drafted(text);
    expect(edit.start).toBe(text.indexOf('The quilt'));
  });

  it('keeps the line ends of the manuscript', () => {
    const { edit } = drafted(RUNNER.replaceAll('\n', '\r\n'));
    expect(edit.text.replaceAll('\r\n', '')).not.toContain('\n');
  });

  it('takes neither of two sentences that differ, and tells both places', () => {
    const text = `${RUNNER}\nThe 4 binding strips are 2¼" wide.\n`;
    const draft = drafted(text);

    expect(draft.block).toContain(
      '# strip: …  # The manuscript tells the cut width of the binding strips twice',
    );
    expect(draft.findings).toMatchObject([
      {
        code: 'gap',
        severity: 'warning',
        message: 'The manuscript tells the cut width of the binding strips twice, as 2 1/2" and as 2 1/4".',
        start: text.indexOf('2½" wide'),
        related: [{ start: text.indexOf('2¼'), message: 'Here it is 2 1/4".' }],
      },
    ]);
    // In the manuscript it is a finding until somebody writes it.
    const { findings } = proofread({ source: applyEdits(text, [draft.edit]) });
    expect(findings.map(({ code, message }) => [code, message.split(',')[0]])).toEqual([
      ['gap', 'The manuscript tells the cut width of the binding strips twice'],
    ]);
  });

  it('leaves out what is cut from a fabric whose yardage contradicts it, and tells where', () => {
    const text = RUNNER.replace('Slate: ¾ yard', 'Slate: ½ yard');
    const draft = drafted(text);
    const { coverage } = proofread({ source: applyEdits(text, [draft.edit]) });

    expect([coverage.wrong, coverage.short, coverage.generous]).toEqual([0, 0, 0]);
    expect(draft.findings).toMatchObject([
      {
        code: 'gap',
        message:
          'What is cut from the fabric “slate” is not told in full, or one of its amounts is wrong: the yardage of fabric slate would be ¾ yard, not ½ yard.',
        start: text.indexOf('½ yard'),
      },
    ]);
  });

  it('takes a unit only where the cutting list holds the pieces that one of the methods cuts', () => {
    const stars = (squares: string) =>
      [
        '# Star Row',
        'The block finishes at 6". Sew the blocks into 4 rows of 3.',
        '## Fabric',
        '- Cream: 1 yard',
        '- Slate: 1 yard',
        '## Cutting',
        `From the cream, cut 24 squares ${squares}.`,
        '',
        `From the slate, cut 24 squares ${squares}.`,
        '## Triangles',
        'Make 48 half-square triangles. They finish at 3".',
      ].join('\n');

    expect(entries(drafted(stars('3⅞"')))).toContain(
      '- { unit: half-square triangles, finished: 3", count: 4, from: [cream, slate], method: two at a time }',
    );
    expect(entries(drafted(stars('4"')))).toContain('method: "two at a time, trimmed" }');
    expect(entries(drafted(stars('5"')))).not.toContain('half-square');
  });

  it('is for a manuscript without one', () => {
    const block = '# Row\n\n```measure\nfinished: 16" x 48"\n```\n\nThe quilt is 16" × 48".\n';
    expect(canBeDrafted(block)).toBe(false);
    expect(draftBlock(block)).toBe('has a block');
    expect(canBeDrafted(RUNNER)).toBe(true);
    expect(canBeDrafted('# Notes\n\nSee page 3.\n')).toBe(false);
    expect(draftBlock('# Notes\n\nSee page 3.\n')).toBe('says nothing');
  });
});

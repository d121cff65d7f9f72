import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { proofread } from '../../../core/proof/proofread.ts';
import { findings, newLines, revised } from './revise.ts';

const sample = readFileSync(
  new URL('../../../shared/samples/slack-water-bed-quilt.md', import.meta.url),
  'utf8',
);
const KING = { kind: 'add', name: 'king', values: { layout: '8 x 8' } } as const;

describe('The bed quilt in three sizes', () => {
  it('gets a fourth, proofreads clean, and has no number unchecked that was checked before', () => {
    const { text, open } = revised(sample, KING);
    const [before, after] = [sample, text].map((source) => proofread({ source }).coverage);

    expect(open).toEqual([]);
    expect(findings(text)).toEqual([]);
    expect(after?.unaccounted).toBe(before?.unaccounted);
    expect(after?.verified).toBeGreaterThan((before?.verified ?? 0) + 50);
  });

  it('reads with it as if written by hand', () => {
    const { text } = revised(sample, KING);
    const lines = newLines(sample, text);

    expect(lines).toEqual(
      expect.arrayContaining([
        'narrow sashing keeps the channels open between them. The pattern comes in a lap, a twin, a queen and a king size.',
        'sizes: [lap, twin, queen, king]',
        '  grid: { lap: 3 x 4, twin: 4 x 6, queen: 6 x 7, king: 8 x 8 }',
        '| | Lap | Twin | Queen | King |',
        '|---|---|---|---|---|',
        'Where numbers differ, the first is for the lap size; twin, queen and king follow in brackets.',
        '- 6 (8, 10, 12) <!-- = border.1.strips --> strips 2" <!-- = border.1.strip --> × WOF for the inner border.',
        '- 2 (2, 3, 4) <!-- = backing.panels --> panels, 60" (102", 102", 130") <!-- = backing.panel-length --> long, for the backing.',
      ]),
    );
    expect(text).toContain(
      [
        '66½" × 94½"',
        '<!-- = unfinished.width x unfinished.length @ twin --> for the twin, 94½" × 108½"',
        '<!-- = unfinished.width x unfinished.length @ queen --> for the queen and 122½" × 122½"',
        '<!-- = unfinished.width x unfinished.length @ king --> for the king.',
      ].join('\n'),
    );
  });

  // 8 blocks of 12" and 7 sashes of 2" are 110"; borders of 1½" and 4½" on two sides make 122": by hand.
  it('has the right finished size in the new column', () => {
    expect(revised(sample, KING).text).toContain(
      '| 122" × 122" <!-- = finished.width x finished.length --> |',
    );
  });

  it.each([[undefined], ['lap'], ['twin'], [null]])(
    'is again what it was when a size added behind %s is dropped',
    (after) => {
      const { text } = revised(sample, { ...KING, name: 'extra large', after });

      expect(findings(text)).toEqual([]);
      expect(revised(text, { kind: 'drop', name: 'extra large' }).text).toBe(sample);
    },
  );

  it('is again what it was when its queen is dropped and added', () => {
    const { text, open } = revised(sample, { kind: 'drop', name: 'queen' });

    expect(open).toEqual([]);
    expect(findings(text)).toEqual([]);
    expect(text).not.toMatch(/queen/i);
    expect(newLines(sample, text)).toEqual(
      expect.arrayContaining([
        'Where numbers differ, the first is for the lap size; twin follows in brackets.',
        '- 2 <!-- = backing.panels --> panels, 60" (102") <!-- = backing.panel-length --> long, for the backing.',
        '1. Join the backing panels with 1 <!-- = backing.seams --> seam and a ½"',
      ]),
    );
    const back = revised(text, { kind: 'add', name: 'queen', values: { 'layout.grid': '6 x 7' } });
    expect(back.text).toBe(sample);
  });

  it('is again what it was when its sizes are turned around twice, or renamed and named back', () => {
    const turned = revised(sample, { kind: 'order', names: ['queen', 'twin', 'lap'] });
    expect(findings(turned.text)).toEqual([]);
    expect(revised(turned.text, { kind: 'order', names: ['lap', 'twin', 'queen'] }).text).toBe(sample);

    const renamed = revised(sample, { kind: 'rename', name: 'twin', to: 'extra-long twin' });
    expect(findings(renamed.text)).toEqual([]);
    expect(newLines(sample, renamed.text)).toContain('| | Lap | Extra-long twin | Queen |');
    expect(renamed.text).toContain('a lap, an extra-long twin and a queen size.');
    expect(revised(renamed.text, { kind: 'rename', name: 'extra-long twin', to: 'twin' }).text).toBe(sample);
  });
});

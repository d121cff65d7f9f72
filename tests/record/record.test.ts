import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { covers } from '../../core/record/covers.ts';
import { readRecord } from '../../core/record/read.ts';
import { sign } from '../../core/record/sign.ts';
import { digestible } from '../../core/record/signature.ts';
import { signedState } from '../../core/record/signedState.ts';
import { appendSignature, RECORD_HEAD } from '../../core/record/write.ts';
import { manuscriptsIn, sample as read, SAMPLES } from '../support/manuscripts.ts';
import { useOfSamples as use } from '../support/samples.ts';

const names = manuscriptsIn(SAMPLES).map(({ name }) => name);

const WALL = (strip: string, text: string) =>
  `# Ferry Flag\n\n\`\`\`measure\nfinished: 54" x 77"\nbinding: { strip: ${strip} }\n\`\`\`\n\n## Binding\n\n${text}\n`;
const TEXT = 'Cut 8 strips, 2¼" × WOF, and join them end to end. Sew on two buttons.';
const by = (name: string, on = '2026-11-25') => ({ by: name, on, digest: 'sha256:0' });
const signed = (source: string) => sign(proofread({ source, use }), by('Ada Lund'));
const last = (record: string) => {
  const found = readRecord(record).signatures.at(-1);
  if (!found) throw new Error('nothing was signed');
  return found;
};

describe('the record of a signature', () => {
  it('tells on lines of their own what the block says, every figure, and every number', () => {
    expect(appendSignature(undefined, signed(WALL('2 1/4"', TEXT))).split('\n')).toEqual(
      expect.arrayContaining([
        RECORD_HEAD.trim(),
        '---',
        'signed by: Ada Lund',
        'on: 2026-11-25',
        'text: sha256:0',
        '  1: { at: [ finished ], is: 54" x 77" }',
        '  - under: [ Ferry Flag, Binding ]',
        `    text: ${TEXT}`,
        '      - { at: 4, is: 8, verified: binding.strips }',
        '      - { at: 14, is: 2¼", verified: binding.strip }',
        '      - { at: 58, is: two, accepted: unaccounted }',
      ]),
    );
    expect(appendSignature(undefined, signed(WALL('2 1/4"', TEXT)))).toMatch(
      /^ {2}binding\.strips: \{ at least: 8, from: \[ [\d, ]+ \] \}$/m,
    );
  });

  it.each(names)('is read back as it was written, for %s', (name) => {
    const signature = signed(read(name));
    const record = appendSignature(undefined, signature);
    expect(readRecord(record)).toMatchObject({ problems: [], signatures: [{ by: 'Ada Lund' }] });
    expect(appendSignature(undefined, last(record))).toBe(record);
  });

  it('keeps every earlier signature to the last character', () => {
    const first = appendSignature(undefined, signed(WALL('2 1/4"', TEXT)));
    const second = appendSignature(
      first,
      sign(proofread({ source: WALL('2 1/4"', TEXT) }), by('Bo Reed', '2027-01-02')),
    );
    expect(second.startsWith(first)).toBe(true);
    expect(readRecord(second).signatures.map((one) => [one.by, one.on])).toEqual([
      ['Ada Lund', '2026-11-25'],
      ['Bo Reed', '2027-01-02'],
    ]);
  });

  it.each(['No: 1, "they" said', '- # {', 'null', '7', 'Žofie 🧵'])('keeps the name %s', (name) => {
    expect(
      last(appendSignature(undefined, sign(proofread({ source: WALL('2 1/4"', TEXT) }), by(name)))).by,
    ).toBe(name);
  });

  it('takes no account of how lines end, nor of a byte order mark', () => {
    expect(digestible('\ufeffa\r\nb\rc')).toBe('a\nb\nc');
  });
});

describe('a record that cannot be read', () => {
  const good = appendSignature(undefined, signed(WALL('2 1/4"', TEXT)));
  const problems = (text: string) =>
    readRecord(text).problems.map(({ start, end, message }) => [
      text.slice(start, end).split('\n')[0],
      message,
    ]);

  it('says what is wrong at its place, and the other signatures count', () => {
    const bad = good.replace('on: 2026-11-25', 'on: last Tuesday');
    const both = bad + good.slice(RECORD_HEAD.length);
    expect(problems(both)).toEqual([['last Tuesday', 'This signature does not count: “on” cannot be read.']]);
    expect(readRecord(both).signatures).toHaveLength(1);
  });

  it.each([
    [
      'a number that is not in its line',
      ['at: 4, is: 8,', 'at: 5, is: 8,'],
      '{ at: 5, is: 8, verified: binding.strips }',
      'This signature does not count: “8” does not stand there.',
    ],
    [
      'a word that nobody knows',
      ['system: inch', 'system: ells'],
      'ells',
      'This signature does not count: “system” cannot be read.',
    ],
    [
      'a signature without a name',
      ['signed by: Ada Lund\n', ''],
      'record: 1',
      'This signature does not count: “signed by” cannot be read.',
    ],
    [
      'another kind of file',
      [good, 'patterns: 7\n'],
      'patterns: 7',
      'This signature does not count: “record” cannot be read.',
    ],
    [
      'YAML that ends in the middle',
      ['54" x 77" }', '"54 x 77'],
      expect.any(String),
      'This signature cannot be read from here on, so it does not count.',
    ],
    [
      'versions that were not merged',
      ['---\n', '<<<<<<< ours\n---\n'],
      '<<<<<<< ours',
      'Two versions of this file were put together here and not merged: keep the sections of both, and delete the lines of the marks.',
    ],
  ] as const)('tells of %s', (_, [from, to], at, message) => {
    expect(problems(good.replace(from, to))[0]).toEqual([at, message]);
  });

  it('is no danger, however deep or intertwined it is', () => {
    expect(problems('['.repeat(5000))).toHaveLength(1);
    expect(problems('a: &a [x]\nb: [*a, *a]')).toEqual([
      ['*a', 'This signature does not count: a reference with * cannot stand here.'],
    ]);
    expect(problems('')).toEqual([]);
  });
});

describe('what a signature covers', () => {
  const signature = signed(WALL('2 1/4"', TEXT));
  const covered = (source: string) => {
    const proof = proofread({ source, before: [signedState(signature)] });
    const { isSameText, covered, changed, rightNoMore, added, removed } = covers(
      signature,
      proof,
      'sha256:1',
    );
    const texts = (list: typeof removed) =>
      list.map(({ line, number }) => line.text.slice(number.start, number.end));
    return {
      isSameText,
      covered: texts(covered),
      changed: texts(changed),
      rightNoMore: texts(rightNoMore),
      added: texts(added),
      removed: texts(removed),
    };
  };
  const nothing = { isSameText: false, changed: [], rightNoMore: [], added: [], removed: [] };

  it('is every number that stands as it was signed, wherever it was moved', () => {
    expect(covered(WALL('2 1/4"', `Press well.\n\n${TEXT}`))).toEqual({
      ...nothing,
      covered: ['8', '2¼"', 'two'],
    });
  });

  it('is not a number that was changed, added or taken out', () => {
    const text = TEXT.replace('8 strips', '9 strips').replace(' Sew on two buttons.', '');
    expect(covered(WALL('2 1/4"', `${text}\n\nTrim 1" off.`))).toEqual({
      ...nothing,
      covered: ['2¼"'],
      changed: ['9'],
      added: ['1"'],
      removed: ['two'],
    });
  });

  it('is not a number that was verified and is right no more', () => {
    expect(covered(WALL('2 1/2"', TEXT))).toEqual({
      ...nothing,
      covered: ['8', 'two'],
      rightNoMore: ['2¼"'],
    });
  });
});

describe('a manuscript that was signed off', () => {
  const changed = (source: string, from: string, to: string) => {
    const record = appendSignature(undefined, signed(source));
    const after = source.replace(from, to);
    return proofread({ source: after, use, before: [signedState(last(record))] }).findings.map(
      ({ code, message, start, end }) => [
        code,
        after.slice(start, end),
        message.replace(/^.*: it was/, 'it was'),
      ],
    );
  };

  it('has stale numbers where something in the block changed since', () => {
    expect(changed(WALL('2 1/4"', TEXT), '2 1/4"', '3"')).toEqual([
      ['stale-figure', '2¼"', 'it was right until “strip” of the binding changed from 2 1/4" to 3".'],
    ]);
  });

  it('has them in centimetres, in yards and in lengths that no ruler measures', () => {
    expect(changed(read('tide-table-placemats.md'), 'strip: 5.5 cm', 'strip: 6 cm')).toEqual([
      ['stale-figure', '2⅛"', 'it was right until “strip” of the binding changed from 5.5 cm to 6 cm.'],
    ]);
    const found = changed(read('tideline-wall-hanging.md'), 'strip: 2"', 'strip: 2 1/2"');
    expect(found.map(([code]) => code)).toEqual(found.map(() => 'stale-figure'));
    expect(found.length).toBeGreaterThan(1);
  });
});

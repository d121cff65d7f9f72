import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { Lines } from '../../core/report/lines.ts';

describe('Lines', () => {
  it('counts lines and columns from 1 in UTF-16 code units', () => {
    const lines = new Lines('🧵 cut\n2½" strips');

    expect(lines.position(0)).toEqual({ line: 1, column: 1, offset: 0 });
    expect(lines.position(3)).toEqual({ line: 1, column: 4, offset: 3 });
    expect(lines.position(7)).toEqual({ line: 2, column: 1, offset: 7 });
  });

  it('takes CR LF, LF and CR for one line end each', () => {
    const lines = new Lines('a\r\nb\rc\nd');

    expect([0, 3, 5, 7].map((offset) => lines.position(offset).line)).toEqual([1, 2, 3, 4]);
    expect([1, 2, 3, 4].map((line) => lines.text(line))).toEqual(['a', 'b', 'c', 'd']);
  });

  it('knows the place behind the last character, also on an empty last line', () => {
    expect(new Lines('a\n').position(2)).toEqual({ line: 2, column: 1, offset: 2 });
    expect(new Lines('').position(0)).toEqual({ line: 1, column: 1, offset: 0 });
  });

  it('refuses a place outside the source', () => {
    expect(() => new Lines('ab').position(3)).toThrow(RangeError);
    expect(() => new Lines('ab').position(-1)).toThrow(RangeError);
  });

  it('agrees with the reference implementation of protocol positions', () => {
    // Source: the npm package vscode-languageserver-textdocument, which editors use.
    const text = fc.string({
      unit: fc.constantFrom('a', '½', '🧵', '\t', '\n', '\r\n', '\r'),
      maxLength: 40,
    });
    fc.assert(
      fc.property(text, fc.nat(), (source, place) => {
        const offset = place % (source.length + 1);
        // Inside a CR LF the reference steps back before the line end; no number ever starts there.
        fc.pre(!(source[offset - 1] === '\r' && source[offset] === '\n'));
        const { line, character } = TextDocument.create('file:///a.md', 'markdown', 1, source).positionAt(
          offset,
        );
        const position = new Lines(source).position(offset);
        expect(position).toEqual({ line: line + 1, column: character + 1, offset });
      }),
    );
  });
});

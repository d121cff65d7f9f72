/** What hovering shows where the tests of the server do not reach: odd names, house rules, own figures. */
import { describe, expect, it } from 'vitest';
import { proofread } from '../../core/proof/proofread.ts';
import { explain } from '../../core/report/explanation.ts';
import { toMarkdown } from '../../core/report/explanationText.ts';

/** The explanation at the `|` in the text. */
function at(text: string) {
  const offset = text.indexOf('|');
  if (offset < 0) throw new Error('the text has no cursor');
  const proof = proofread({ source: text.slice(0, offset) + text.slice(offset + 1) });
  return explain(proof, offset);
}

function markdownAt(text: string): string | undefined {
  const explanation = at(text);
  return explanation && toMarkdown(explanation);
}

const block = (...lines: string[]) => ['```measure', ...lines, '```', ''].join('\n');

describe('An explanation', () => {
  it('of a house rule lists the figures that were computed with it', () => {
    const text = markdownAt(
      block(
        'house:',
        '  joining| allowance: 10"',
        'finished: 36" x 48"',
        'binding: { strip: 2 1/4", grain: straight }',
      ),
    );

    expect(text).toMatch(/^\*\*What follows from “joining allowance”\*\*/);
    expect(text).toContain('| The length of binding, at least | 178" |');
    // What follows from a figure that follows from the rule belongs to it too.
    expect(text).toContain('| The number of binding strips, at least | 5 |');
    expect(text).not.toContain('The edge to bind');
  });

  it('of an own figure shows its value and its working', () => {
    const text = markdownAt(block('finished: 36" x 48"', 'figures:', '  rib|bon: finished.edge + 18"'));

    expect(text).toMatch(/: 186"\n\n1\. /);
  });

  it('does not let a name become markup', () => {
    const text = markdownAt(
      block(
        'sizes: [king_size, throw_size]',
        'finished: { king_size: 36" x 48", throw_size: 54" x 72" }',
        'bin|ding: { strip: 2 1/4", grain: straight }',
      ),
    );

    expect(text).toContain('|  | king\\_size | throw\\_size |');
  });

  it('says that a number is right, and nothing that a finding beside it says', () => {
    const quilt = block('finished: 36" x 48"', 'binding: { strip: 2 1/4", grain: straight }');

    expect(markdownAt(`${quilt}\nBind 16|8" <!-- = finished.edge --> of edge.`)).toContain('168" is right.');
    expect(markdownAt(`${quilt}\nBuy 2 |yd <!-- = binding.yardage --> of it.`)).toMatch(
      /^\*\*The fabric for the binding\*\*: at least ⅜ yd\n\n1\. 5 strips/,
    );
  });

  it('has nothing to say where nothing stands behind the text', () => {
    expect(at(`${block('finished: 36" x 48"')}\nCut |9 strips.`)).toBeUndefined();
    expect(at(block('pat|tern: Kettle Pond', 'finished: 36" x 48"'))).toBeUndefined();
    expect(at('| Nothing.')).toBeUndefined();
  });
});

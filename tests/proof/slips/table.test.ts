import { describe, expect, it } from 'vitest';
import { proofread } from '../../../core/proof/proofread.ts';
import type { Example } from '../../../core/proof/slips/slip.ts';
import { SLIPS } from '../../../core/proof/slips/table.ts';

/** The account of the number in « », its finding, and what stands between. */
function tried({ block, sentence }: Omit<Example, 'says'>) {
  const text = sentence.replace(/[«»]/g, '');
  const source = ['```measure', ...block, '```', '', text, ''].join('\n');
  const at = source.indexOf(text) + sentence.indexOf('«');
  const { accounts, findings } = proofread({ source });
  return {
    account: accounts.find(({ number }) => number.ranges[0].start === at),
    messages: findings.map(({ start, message }) => [start === at, message] as const),
  };
}

describe('A slip', () => {
  it.each(SLIPS.map((slip) => [slip.name, slip] as const))(
    'is told by its example: %s',
    (name, { example }) => {
      const { account, messages } = tried(example);
      expect(account?.kind).toMatch(/^(?:wrong|short|generous)$/);
      expect(account?.slip).toEqual({ name, clause: example.says });
      expect(messages).toEqual([
        [
          true,
          example.says === undefined
            ? expect.any(String)
            : expect.stringMatching(`; ${escaped(example.says)}\\.$`),
        ],
      ]);
    },
  );

  it.each(SLIPS.map((slip) => [slip.name, slip] as const))(
    'is not told in its counterexample: %s',
    (name, { counterexample }) => {
      const { account } = tried(counterexample);
      expect(account?.kind).toMatch(/^(?:wrong|short|generous)$/);
      expect(account?.slip?.name).not.toBe(name);
    },
  );

  it('has a name of its own', () => {
    expect(new Set(SLIPS.map(({ name }) => name)).size).toBe(SLIPS.length);
  });
});

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** What the program makes of the example of a finding. */
import type { CodePage } from '../../findings/codes.ts';
import { earlierState } from '../../proof/earlier/earlier.ts';
import type { Proof } from '../../proof/proof.ts';
import { proofread } from '../../proof/proofread.ts';
import type { Use } from '../../proof/uses.ts';

/** After it has seen the earlier text, where there is one, and with the files that stand beside it. */
export function proofreadExample({
  example,
  before,
  beside,
}: Pick<CodePage, 'example' | 'before' | 'beside'>): Proof {
  const use = beside && filesBeside(beside);
  const earlier = before === undefined ? [] : [earlierState(proofread({ source: before, use }))];
  return proofread({ source: example, use, before: earlier });
}

/** Finds files of one folder. */
export function filesBeside(files: Readonly<Record<string, string>>): Use {
  const use: Use = (name) => {
    const source = Object.hasOwn(files, name) ? files[name] : undefined;
    return source === undefined ? { refused: 'missing' } : { id: name, name, source, use };
  };
  return use;
}

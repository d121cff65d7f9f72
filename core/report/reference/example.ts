/** The proof of the example of a finding, with the files that stand beside it. */
import type { CodePage } from '../../findings/codes.ts';
import type { Proof } from '../../proof/proof.ts';
import { proofread } from '../../proof/proofread.ts';
import type { Use } from '../../proof/uses.ts';

export function proofreadExample({ example, beside }: Pick<CodePage, 'example' | 'beside'>): Proof {
  return proofread({ source: example, use: beside && filesBeside(beside) });
}

/** Finds files of one folder. */
export function filesBeside(files: Readonly<Record<string, string>>): Use {
  const use: Use = (name) => {
    const source = Object.hasOwn(files, name) ? files[name] : undefined;
    return source === undefined ? { refused: 'missing' } : { id: name, name, source, use };
  };
  return use;
}

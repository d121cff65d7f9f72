/** The words about each kind of finding, and the one way to its page in the reference. */
import { CODES, type CodePage } from '../findings/codes.ts';
import { UNACCOUNTED } from './unaccounted.ts';

/** A number that no figure accounts for is a finding only where someone asks for it, so its page stands here. */
const UNACCOUNTED_PAGE: CodePage = {
  severity: 'warning',
  title: 'A number that nobody has checked',
  meaning:
    'The number measures something, but nothing in the measure block says what it should be, or the words around it do ' +
    'not say clearly enough what it is. It is shown only ' +
    'where you ask for it: on the command line with `--strict`, and in the editor with the setting ' +
    '`measureTwice.unaccounted`, where it is a hint.',
  example: '```measure\nfinished: 36" x 48"\n```\n\nCut two sashes 14½" long.',
  remedy:
    'In an editor, the quick fixes of the number offer the figures that its sentence may speak of; or write the tag ' +
    'yourself, `<!-- = figure -->`, or add the entry that fixes the number. If you have checked it, leave it, or put ' +
    '`<!-- measure skip -->` behind it, which leaves this one number alone. Between `<!-- measure off -->` and ' +
    '`<!-- measure on -->` no number is looked at.',
};

/** By code, in the order of the reference. */
export const FINDING_WORDS: Readonly<Record<string, CodePage>> = {
  ...CODES,
  [UNACCOUNTED]: UNACCOUNTED_PAGE,
};

/** Where the page of a finding stands in the reference, by its code. */
export function findingPath(code: string): string {
  return `findings/${code}.md`;
}

/** @param reference address of the folder of the reference, with a slash at its end */
export function findingAddress(code: string, reference: string): string {
  return new URL(findingPath(code), reference).href;
}

/** Which Markdown files the server looks at: those with a measure block. The numbers of other notes are nobody's to check. */
import { URI } from 'vscode-uri';
import type { Earlier } from '../core/proof/earlier/earlier.ts';
import type { Proof } from '../core/proof/proof.ts';
import type { Document } from '../core/proof/proofread.ts';

export type Proofread = (document: Document) => Proof;

/**
 * @param before earlier states of the manuscript
 * @returns `undefined` for a Markdown file that is no manuscript
 */
export function proofreadManuscript(
  source: string,
  proofread: Proofread,
  before: readonly Earlier[] = [],
): Proof | undefined {
  // Most Markdown files are settled by this look; the reading decides what the fence really is.
  if (!/(?:`{3}|~{3})[ \t]*measure\b/i.test(source)) return undefined;
  const proof = proofread({ source, before });
  return proof.pattern.stated ? proof : undefined;
}

/** One spelling for the URI of a file, however a client encodes it. */
export function canonicalUri(uri: string): string {
  return URI.parse(uri).toString();
}

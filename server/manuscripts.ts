/** Which Markdown files the server looks at: those with a measure block. The numbers of other notes are nobody's to check. */
import { URI } from 'vscode-uri';
import type { Proof } from '../core/proof/proof.ts';

export type Proofread = (document: { readonly source: string }) => Proof;

/** @returns `undefined` for a Markdown file that is no manuscript */
export function proofreadManuscript(source: string, proofread: Proofread): Proof | undefined {
  // Most Markdown files are settled by this look; the reading decides what the fence really is.
  if (!/(?:`{3}|~{3})[ \t]*measure\b/i.test(source)) return undefined;
  const proof = proofread({ source });
  return proof.pattern.stated ? proof : undefined;
}

/** One spelling for the URI of a file, however a client encodes it. */
export function canonicalUri(uri: string): string {
  return URI.parse(uri).toString();
}

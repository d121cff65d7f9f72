/** Which Markdown files the server looks at: those with a measure block. The numbers of other notes are nobody's to check. */
import { URI } from 'vscode-uri';
import type { Proof } from '../core/proof/proof.ts';
import type { Document } from '../core/proof/proofread.ts';

export type Proofread = (document: Document) => Proof;

/**
 * @param surroundings earlier states of the manuscript, and what finds the files that it uses
 * @returns `undefined` for a Markdown file that is no manuscript
 */
export function proofreadManuscript(
  source: string,
  proofread: Proofread,
  surroundings: Omit<Document, 'source'> = {},
): Proof | undefined {
  if (!mayBeManuscript(source)) return undefined;
  const proof = proofread({ source, ...surroundings });
  return proof.pattern.stated ? proof : undefined;
}

/** Most Markdown files are settled by this look; the reading decides what the fence really is. */
export function mayBeManuscript(source: string): boolean {
  return /(?:`{3}|~{3})[ \t]*measure\b/i.test(source);
}

/** One spelling for the URI of a file, however a client encodes it. */
export function canonicalUri(uri: string): string {
  return URI.parse(uri).toString();
}

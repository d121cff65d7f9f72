import { proofread } from '../../core/proof/proofread.ts';
import { NAME, VERSION } from '../product.ts';
import type { Host } from '../server.ts';
import { nodeFiles } from './nodeFiles.ts';
import { nodeSignatures } from './nodeSignatures.ts';

/** What the server needs from a machine with Node.js. */
export function nodeHost(): Host {
  return { name: NAME, version: VERSION, proofread, files: nodeFiles, signatures: nodeSignatures };
}

/** Records of signatures beside the manuscripts on disk. */
import { URI } from 'vscode-uri';
import { addSignature, digestOf, readRecordFile, recordOf, today } from '../command-line/records.ts';
import type { SignatureStore } from '../signatures.ts';
import { readText } from './nodeFiles.ts';

export const nodeSignatures: SignatureStore = {
  async read(uri) {
    const { scheme, fsPath } = URI.parse(uri);
    return scheme === 'file' ? readRecordFile(recordOf(fsPath)) : { signatures: [], problems: [] };
  },
  add: (uri, signature) => addSignature(recordOf(URI.parse(uri).fsPath), signature),
  async saved(uri) {
    const { scheme, fsPath } = URI.parse(uri);
    if (scheme !== 'file') return undefined;
    return readText(fsPath).catch(() => undefined);
  },
  digest: digestOf,
  today,
};

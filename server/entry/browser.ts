/** The server as a web worker. It reaches no files, so it proofreads what the editor has open. */
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from 'vscode-languageserver/browser';
import { proofread } from '../../core/proof/proofread.ts';
import { NAME, VERSION } from '../product.ts';
import { serve } from '../server.ts';

/** The part of a worker's global scope that carries messages. */
declare const self: ConstructorParameters<typeof BrowserMessageReader>[0];

const connection = createConnection(
  ProposedFeatures.all,
  new BrowserMessageReader(self),
  new BrowserMessageWriter(self),
);
serve(connection, { name: NAME, version: VERSION, proofread });

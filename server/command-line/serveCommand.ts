/** `measure-twice serve`: the language server on standard input and output. */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { nodeHost } from '../entry/nodeHost.ts';
import { serve } from '../server.ts';

export function serveCommand(): void {
  serve(createConnection(ProposedFeatures.all, process.stdin, process.stdout), nodeHost());
}

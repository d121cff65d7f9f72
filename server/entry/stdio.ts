/** The server as a process of its own that an editor starts: standard streams, or the channel of Node.js. */
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { serve } from '../server.ts';
import { nodeHost } from './nodeHost.ts';

serve(createConnection(ProposedFeatures.all), nodeHost());

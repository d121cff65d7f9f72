/** All features of the server. A new one is one file in this folder and one name in this list. */
import type { Feature } from '../context.ts';
import { codeActions } from './codeActions.ts';
import { commands } from './commands.ts';
import { coverage } from './coverage.ts';
import { diagnostics } from './diagnostics.ts';
import { hover } from './hover.ts';
import { renameSize } from './renameSize.ts';
import { status } from './status.ts';
import { workspaceDiagnostics } from './workspaceDiagnostics.ts';

export const FEATURES: readonly Feature[] = [
  diagnostics,
  codeActions,
  hover,
  renameSize,
  coverage,
  commands,
  workspaceDiagnostics,
  status,
];

/** What every feature works with. */
import type { Connection, Event, ServerCapabilities } from 'vscode-languageserver';
import type { ClientAbilities } from './abilities.ts';
import type { Documents } from './documents.ts';
import type { Proofread } from './manuscripts.ts';
import type { SettingsStore } from './settings.ts';
import type { WorkspaceFiles } from './workspace.ts';

export interface Context {
  readonly connection: Connection;
  readonly documents: Documents;
  readonly settings: SettingsStore;
  readonly client: ClientAbilities;
  readonly proofread: Proofread;
  /** `undefined` where the server cannot reach files, as in a browser. */
  readonly files: WorkspaceFiles | undefined;
  /** Fires when the client says goodbye: nothing may be sent from then on. */
  readonly onShutdown: Event<void>;
}

/** One feature of the protocol: what it announces, and the handlers it sets up. */
export interface Feature {
  capabilities(context: Context): ServerCapabilities;
  register(context: Context): void;
}

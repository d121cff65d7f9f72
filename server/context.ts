/** What every feature works with. */
import type { Connection, Event, ServerCapabilities } from 'vscode-languageserver';
import type { ClientAbilities } from './abilities.ts';
import type { Documents } from './documents.ts';
import type { SettingsStore } from './settings.ts';
import type { Signatures } from './signatures.ts';
import type { WorkspaceRoom } from './workspace/room.ts';

export interface BaseContext {
  readonly connection: Connection;
  readonly documents: Documents;
  readonly settings: SettingsStore;
  readonly client: ClientAbilities;
  /** Fires when the client is ready to be asked. */
  readonly onInitialized: Event<void>;
  /** Fires when the client says goodbye: nothing may be sent from then on. */
  readonly onShutdown: Event<void>;
}

export interface Context extends BaseContext {
  /** `undefined` where the server cannot reach files, as in a browser. */
  readonly room: WorkspaceRoom | undefined;
  /** `undefined` where nothing can be written. */
  readonly signatures: Signatures | undefined;
}

/** One feature of the protocol: what it announces, and the handlers it sets up. */
export interface Feature {
  capabilities(context: Context): ServerCapabilities;
  register(context: Context): void;
}

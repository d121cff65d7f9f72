/** The settings as the client has them now. */
import {
  type Connection,
  DidChangeConfigurationNotification,
  Emitter,
  type Event,
} from 'vscode-languageserver';
import { DEFAULT_SETTINGS, readSettings, SECTION, type Settings } from '../shared/settings.ts';
import type { ClientAbilities } from './abilities.ts';
import { logFailure, sent } from './guard.ts';

export class SettingsStore {
  readonly #connection: Connection;
  readonly #client: ClientAbilities;
  readonly #didChange = new Emitter<Settings>();
  #now: Settings = DEFAULT_SETTINGS;

  constructor(connection: Connection, client: ClientAbilities) {
    this.#connection = connection;
    this.#client = client;
    connection.onDidChangeConfiguration(({ settings }) =>
      // A client that answers questions about its settings sends nothing of worth here.
      client.configuration ? this.#ask() : this.#take(settings?.[SECTION]),
    );
  }

  get now(): Settings {
    return this.#now;
  }

  get onDidChange(): Event<Settings> {
    return this.#didChange.event;
  }

  /** For when the client is ready to be asked. */
  async start(): Promise<void> {
    if (this.#client.configurationRegistration) {
      const connection = this.#connection;
      const registration = connection.client.register(DidChangeConfigurationNotification.type, {
        section: SECTION,
      });
      sent(connection, 'Registering for changed settings', registration);
    }
    if (this.#client.configuration) await this.#ask();
  }

  async #ask(): Promise<void> {
    try {
      this.#take(await this.#connection.workspace.getConfiguration(SECTION));
    } catch (error) {
      logFailure(this.#connection, 'Reading the settings', error);
    }
  }

  #take(section: unknown): void {
    const next = readSettings(section);
    const changed = next.unaccounted !== this.#now.unaccounted;
    this.#now = next;
    if (changed) this.#didChange.fire(next);
  }
}

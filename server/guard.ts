import { type Connection, ResponseError } from 'vscode-languageserver';

/**
 * Runs one handler. A failure is logged and gives `otherwise`, so that one bad manuscript never takes the server
 * down; cancellations and other answers meant for the client pass.
 */
export async function guarded<T>(
  connection: Connection,
  what: string,
  otherwise: T,
  work: () => Promise<T>,
): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof ResponseError) throw error;
    logFailure(connection, what, error);
    return otherwise;
  }
}

export function logFailure(connection: Connection, what: string, error: unknown): void {
  const details = error instanceof Error ? (error.stack ?? error.message) : String(error);
  try {
    connection.console.error(`${what} failed: ${details}`);
  } catch {
    // The client is gone; nobody is left to tell.
  }
}

/** For messages whose fate changes nothing here: a client that refuses one, or is gone, must not end the server. */
export function sent(connection: Connection, what: string, message: Promise<unknown>): void {
  message.catch((error) => logFailure(connection, what, error));
}

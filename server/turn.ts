import { type CancellationToken, LSPErrorCodes, ResponseError } from 'vscode-languageserver';

/**
 * Lets messages that are already waiting come first: a cancellation, or a newer change that makes the work at
 * hand worthless.
 *
 * @throws ResponseError RequestCancelled when the client has lost interest
 */
export async function turn(token: CancellationToken): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, 0));
  throwIfCancelled(token);
}

export function throwIfCancelled(token: CancellationToken): void {
  if (token.isCancellationRequested)
    throw new ResponseError(LSPErrorCodes.RequestCancelled, 'The request was cancelled.');
}

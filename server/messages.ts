import { type Connection, MessageType, ShowMessageNotification } from 'vscode-languageserver';
import { sent } from './guard.ts';

/** Tells the author something. Nobody waits for her to close the message. */
export function tell(connection: Connection, message: string): void {
  show(connection, MessageType.Info, message);
}

/** Tells the author that something she asked for could not be done. */
export function tellFailure(connection: Connection, message: string): void {
  show(connection, MessageType.Error, message);
}

function show(connection: Connection, type: MessageType, message: string): void {
  sent(
    connection,
    'Showing a message',
    connection.sendNotification(ShowMessageNotification.type, { type, message }),
  );
}

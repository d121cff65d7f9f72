/** A long piece of work as the author sees it: how far it is, and a way to stop it. */
import type { CancellationToken } from 'vscode-languageserver';
import type { Context } from '../context.ts';

export interface ShownProgress {
  /** Cancelled when the author stops the work, or the client its request. */
  readonly token: CancellationToken;
  report(place: number, total: number): void;
  done(): void;
}

export async function showProgress(
  { connection, client }: Context,
  title: string,
  request: CancellationToken,
): Promise<ShownProgress> {
  if (!client.progress) return { token: request, report: () => {}, done: () => {} };
  const reporter = await connection.window.createWorkDoneProgress();
  reporter.begin(title, 0, undefined, true);
  return {
    token: either(request, reporter.token),
    report: (place, total) =>
      reporter.report(Math.floor((100 * (place - 1)) / total), `${place} of ${total}`),
    done: () => reporter.done(),
  };
}

/** Cancelled as soon as one of the two is. */
function either(a: CancellationToken, b: CancellationToken): CancellationToken {
  return {
    get isCancellationRequested() {
      return a.isCancellationRequested || b.isCancellationRequested;
    },
    onCancellationRequested: (...args) => {
      const [first, second] = [a.onCancellationRequested(...args), b.onCancellationRequested(...args)];
      return {
        dispose: () => {
          first.dispose();
          second.dispose();
        },
      };
    },
  };
}

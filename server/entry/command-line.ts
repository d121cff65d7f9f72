/** The program `measure-twice`. */
import { CommanderError } from 'commander';
import { CannotRun } from '../command-line/cannotRun.ts';
import { createProgram } from '../command-line/program.ts';

// Whoever reads our output may stop early, like `head`; that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

try {
  await createProgram((status) => {
    process.exitCode = status;
  }).parseAsync();
} catch (error) {
  process.exitCode = statusOf(error);
}

/** Help and the version are answers, not failures. */
function statusOf(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
  if (error instanceof CannotRun) {
    for (const line of error.lines) console.error(`measure-twice: ${line}`);
  } else {
    console.error(
      `measure-twice: This should not have happened. ${error instanceof Error ? error.stack : error}`,
    );
  }
  return 2;
}

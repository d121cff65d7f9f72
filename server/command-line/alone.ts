import { lock } from 'proper-lockfile';
import { CannotRun, reasonOf } from './cannotRun.ts';

/** Who dies at work leaves the lock behind; after this time, in milliseconds, it counts no more. */
const DEAD_AFTER = 5_000;
/** Long enough to outlive the lock of someone who died. */
const TRIES = { retries: 100, factor: 1, minTimeout: 60, maxTimeout: 120, randomize: true };

/**
 * Works on a file while nobody else does who asks in this way: several programs can add to one file, and none loses
 * what another has added.
 *
 * @throws CannotRun when the folder cannot be written, or another program holds the file for long
 */
export async function alone<T>(file: string, work: () => Promise<T>): Promise<T> {
  let release: () => Promise<void>;
  try {
    release = await lock(file, {
      realpath: false,
      stale: DEAD_AFTER,
      retries: TRIES,
      // The work takes a moment, and must not be torn down by a clock that jumps.
      onCompromised: () => {},
    });
  } catch (error) {
    const isHeld = error instanceof Error && 'code' in error && error.code === 'ELOCKED';
    throw new CannotRun(
      `Cannot write ${file}: ${isHeld ? 'another program is writing it at the moment' : reasonOf(error)}.`,
    );
  }
  try {
    return await work();
  } finally {
    await release().catch(() => {});
  }
}

/** What the program can do with the terminal it runs in. */
import picocolors from 'picocolors';
import { type Layout, PLAIN } from '../../core/report/paint.ts';

/** Columns of a report that goes into a file or another program. */
const DEFAULT_WIDTH = 100;
/** Below this a line of text cannot be shown with a mark. */
const LEAST_WIDTH = 40;
/** Longer lines tire the eye. */
const MOST_WIDTH = 120;

/** Colours where standard output shows them and nobody forbids them. */
export function terminalLayout(): Layout {
  const columns = process.stdout.columns ?? DEFAULT_WIDTH;
  const width = Math.min(Math.max(columns, LEAST_WIDTH), MOST_WIDTH);
  return { paint: showsColours(process.env) ? colours() : PLAIN, width };
}

export const FILE_LAYOUT: Layout = { paint: PLAIN, width: DEFAULT_WIDTH };

/**
 * NO_COLOR (no-color.org) forbids colours and FORCE_COLOR asks for them; without either a terminal gets them. Our
 * own decision, because picocolors also colours whatever runs in continuous integration, and a report that goes into
 * a file there must stay plain.
 */
function showsColours({ NO_COLOR, FORCE_COLOR, TERM }: NodeJS.ProcessEnv): boolean {
  if (NO_COLOR) return false;
  return Boolean(FORCE_COLOR) || (process.stdout.isTTY === true && TERM !== 'dumb');
}

function colours(): Layout['paint'] {
  const pc = picocolors.createColors(true);
  return {
    mistake: pc.red,
    warning: pc.yellow,
    hint: pc.cyan,
    good: pc.green,
    strong: pc.bold,
    faint: pc.dim,
  };
}

/** Shows on a terminal which of several files is at work; elsewhere it says nothing. */
export class Progress {
  readonly #shown: boolean;
  readonly #total: number;
  #done = 0;

  constructor(total: number, quiet: boolean) {
    this.#total = total;
    this.#shown = total > 1 && !quiet && process.stderr.isTTY;
  }

  next(path: string): void {
    this.#done++;
    if (!this.#shown) return;
    const text = `Proofreading ${this.#done} of ${this.#total}: ${path}`;
    process.stderr.write(`\r\u001b[K${text.slice(0, process.stderr.columns - 1)}`);
  }

  end(): void {
    if (this.#shown) process.stderr.write('\r\u001b[K');
  }
}

/**
 * What client and server say to each other beyond the Language Server Protocol.
 *
 * Any client may leave all of this out: diagnostics, fixes, hover and the commands work without it.
 */

/** What a client may say when it starts the server, as `initializationOptions`. */
export interface InitializationOptions {
  /** The client shows the coverage: send it `measureTwice/coverage`. */
  readonly coverage?: boolean;
}

/** Server to client, whenever an open manuscript was proofread: how much of it is checked. */
export const COVERAGE_NOTIFICATION = 'measureTwice/coverage';

export interface CoverageParams {
  readonly uri: string;
  /** `null` for a Markdown file without a measure block: there is nothing to show. */
  readonly coverage: CoverageInWords | null;
}

export interface CoverageInWords {
  /** Numbers that measure something and are right. */
  readonly verified: number;
  /** All numbers that measure something. */
  readonly measured: number;
  /** Numbers that contradict the pattern. */
  readonly mistakes: number;
  /** For the status bar: `41 of 47 checked`. */
  readonly label: string;
  /** The same in full sentences. */
  readonly sentence: string;
  /** Who signed the manuscript off, and what of it the signature does not cover; left out where nobody has. */
  readonly signature?: string;
}

/** Client to server, without parameters: how the whole line stands. Answered with `WorkspaceStatus`. */
export const WORKSPACE_STATUS_REQUEST = 'measureTwice/workspaceStatus';

export interface WorkspaceStatus {
  /** Files of the workspace that have a measure block. */
  readonly manuscripts: number;
  /** How many of them have a finding of severity error or warning. */
  readonly needWork: number;
  /** Of all manuscripts together. */
  readonly coverage: CoverageInWords;
  /** Everything in full sentences. */
  readonly sentence: string;
}

/**
 * Commands that the server carries out (`workspace/executeCommand`).
 * Those of a file, and `restateShared`, take the URI of an open manuscript, `signOff` also the name of who signs; those of the workspace take
 * nothing.
 */
export const COMMANDS = {
  proofreadFile: 'measureTwice.proofreadFile',
  proofreadWorkspace: 'measureTwice.proofreadWorkspace',
  restateFile: 'measureTwice.restateFile',
  restateShared: 'measureTwice.restateShared',
  restateWorkspace: 'measureTwice.restateWorkspace',
  signOff: 'measureTwice.signOff',
} as const;

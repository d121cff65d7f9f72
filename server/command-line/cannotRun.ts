/** The program cannot do what it was asked: exit status 2, with these lines for the person who asked. */
export class CannotRun extends Error {
  readonly lines: readonly string[];

  constructor(...lines: readonly string[]) {
    super(lines.join('\n'));
    this.lines = lines;
  }
}

/** What the operating system said about a file, in plain words. */
export function reasonOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const known = REASONS[code];
  if (known) return known;
  return error instanceof Error ? error.message : String(error);
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EACCES: 'the permission is missing',
  EPERM: 'the permission is missing',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is not a folder',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
};

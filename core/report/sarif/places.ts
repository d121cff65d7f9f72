/** Files and places as SARIF names them: lines, columns and offsets in UTF-16 code units. */
import type { ArtifactLocation, PhysicalLocation, Region } from 'sarif';
import type { Range } from '../../findings/finding.ts';
import { Lines } from '../lines.ts';

/** What relative addresses are relative to; code hosts expect this name for the top of the repository. */
export const ROOT = '%SRCROOT%';

/** @param path relative to the folder in which the program runs, or absolute where there is no such way */
export function artifactLocation(path: string, index: number): ArtifactLocation {
  const uri = path.split('/').map(encodeURIComponent).join('/');
  if (path.startsWith('/')) return { uri: `file://${uri}`, index };
  // Another drive of Windows.
  if (/^[a-z]:/i.test(path)) return { uri: `file:///${uri.replace('%3A', ':')}`, index };
  return { uri, uriBaseId: ROOT, index };
}

/** The places of one file. A byte order mark is no part of its text in SARIF, so neither columns nor offsets count it. */
export class Places {
  readonly #artifact: ArtifactLocation;
  readonly #lines: Lines;
  readonly #mark: number;

  constructor(path: string, index: number, source: string) {
    this.#artifact = artifactLocation(path, index);
    this.#mark = source.startsWith('\ufeff') ? 1 : 0;
    this.#lines = new Lines(source.slice(this.#mark));
  }

  get artifact(): ArtifactLocation {
    return this.#artifact;
  }

  region({ start, end }: Range): Region {
    const from = this.#lines.position(Math.max(start - this.#mark, 0));
    const to = this.#lines.position(Math.max(end - this.#mark, 0));
    return {
      startLine: from.line,
      startColumn: from.column,
      endLine: to.line,
      endColumn: to.column,
      charOffset: from.offset,
      charLength: to.offset - from.offset,
    };
  }

  location(range: Range): PhysicalLocation {
    return { artifactLocation: this.#artifact, region: this.region(range) };
  }

  /** The line on which a place begins, as the author wrote it. */
  lineOf({ start }: Range): string {
    return this.#lines.text(this.#lines.position(Math.max(start - this.#mark, 0)).line);
  }
}

/** The pages of the reference: as they are generated, and as they stand in the repository. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '../../core/report/reference/markdown.ts';
import { referencePages } from '../../core/report/reference/pages.ts';
import { SECTION, SETTINGS } from '../../shared/settings.ts';

export const REFERENCE = join(import.meta.dirname, '../../shared/reference');

export function generatedPages(): Page[] {
  return referencePages({ section: SECTION, settings: SETTINGS });
}

export function committedPages(): Page[] {
  return readdirSync(REFERENCE, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({
      path: file.slice(REFERENCE.length + 1).replaceAll('\\', '/'),
      text: readFileSync(file, 'utf8'),
    }));
}

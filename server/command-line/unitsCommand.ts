/** `measure-twice units`: adds every length in the other system of units, or takes these away again. */

import { reviseUnits, type UnitsRequest } from '../../core/revise/units/reviseUnits.ts';
import type { System } from '../../core/revise/units/system.ts';
import { CannotRun } from './cannotRun.ts';
import { readManuscripts } from './manuscriptFiles.ts';
import { reviseFiles } from './reviseFiles.ts';

export interface UnitsOptions {
  readonly add?: System;
  readonly remove: boolean;
  readonly dryRun: boolean;
}

/**
 * @returns the exit status: 1 when something is left to write
 * @throws CannotRun before anything is written
 */
export async function unitsCommand(path: string, { add, remove, dryRun }: UnitsOptions): Promise<0 | 1> {
  if ((add === undefined) !== remove)
    throw new CannotRun('Say one of --add metric, --add inch and --remove.');
  const request: UnitsRequest = add ? { kind: 'add', system: add } : { kind: 'remove' };
  const files = await readManuscripts([path]);
  return reviseFiles(files, (source, read) => reviseUnits(source, request, read), dryRun);
}

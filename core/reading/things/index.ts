/** Everything in a pattern that a manuscript can speak of: one file per corner of the quilt, one line here. */
import type { Pattern } from '../../block/pattern.ts';
import type { Ledger } from '../../figures/ledger.ts';
import type { Concept } from '../concept.ts';
import { aroundThings } from './around.ts';
import { fabricThings } from './fabrics.ts';
import { fabricUses } from './fabricUses.ts';
import { finishingThings } from './finishing.ts';
import { ownThings } from './own.ts';
import { partThings } from './parts.ts';
import { quiltThings } from './quilt.ts';
import type { Quilt, Thing } from './thing.ts';

export type { Slot, Thing, Want } from './thing.ts';

export function thingsOf(pattern: Pattern, ledger: Ledger): Thing[] {
  const uses = fabricUses(pattern);
  const quilt: Quilt = {
    pattern,
    ledger,
    has: (id) => ledger.figure(id) !== undefined,
    only: (topic) =>
      [...uses].flatMap(([label, topics]): Concept[] =>
        topics.size === 1 && topics.has(topic) ? [`fabric:${label}`] : [],
      ),
  };
  return [quiltThings, partThings, aroundThings, finishingThings, fabricThings, ownThings].flatMap((things) =>
    things(quilt),
  );
}

/** Claims that something is cut from the fabric that the words around name. */
import type { Claim } from '../row.ts';
import type { Clause, Text } from '../text.ts';
import { writeName } from '../write.ts';

export function fabricOf(isAbout: (clause: Clause, text: Text) => boolean): (text: Text) => Claim[] {
  return (text) =>
    text.clauses.flatMap((clause) => {
      const label = clause.nearest('fabric');
      const told = clause.count ?? clause.sides[0];
      if (!label || !told || !isAbout(clause, text)) return [];
      // A materials list tells what a fabric is for, and so does a cutting list; the latter is surer.
      const plainness = clause.says('state:cut') > 0 && clause.sides.length > 0 ? 2 : 1;
      return [{ at: { start: told.start, end: told.end }, text: writeName(label), plainness }];
    });
}

/** Strips across the fabric: a width, with or without the width of the fabric behind it. */
import type { Clause, Text, Told } from '../text.ts';

/** As long as fabric is wide (common practice: not under 36"). */
export function isWide({ values, unit }: Told, { pattern }: Text): boolean {
  const width = pattern.house['usable width'];
  return unit !== undefined && values.every((value) => value.equals(width) || value.compare(36) >= 0);
}

/** The cut width of strips; nothing where the clause is about no strips, or about how long they are. */
export function stripWidth(clause: Clause, text: Text): Told | undefined {
  const [a, b] = clause.sides;
  if (!a?.unit || clause.says('form:strip') < 0.6 || clause.sides.length > 2) return undefined;
  if (b) return isWide(b, text) ? a : undefined;
  if (
    /^["”″)]*[- ]?(?:long|in length)\b/i.test(clause.behind) ||
    /\b(?:total|measure|reach|to)\s*$/i.test(clause.before)
  )
    return undefined;
  if (clause.says('state:finished') >= 0.85 || clause.says('axis:length') >= 0.95) return undefined;
  // Wider than any strip of a border (common practice: 12").
  return a.values.every((value) => value.compare(14) < 0) ? a : undefined;
}

import type { Rational } from '../../quantity/rational.ts';
import { readDimensions, readLength } from '../../quantity/read.ts';
import { isProblem, text } from './schema.ts';

/** How a fabric is bought. Sizes are in inches: usable width across, length along the selvage. */
export type FabricForm =
  | { readonly kind: 'yardage' }
  | { readonly kind: 'fat quarters' | 'fat eighths' }
  | { readonly kind: 'strips' | 'wide'; readonly width: Rational }
  | { readonly kind: 'squares'; readonly side: Rational };

const EXAMPLES = ['yardage', 'fat quarters', 'fat eighths', 'strips 2 1/2"', 'squares 5"', 'wide 108"'];

export const fabricForm = text<FabricForm>(
  { title: 'the form in which a fabric is bought', examples: EXAMPLES },
  (raw) => {
    const lower = raw.toLowerCase();
    if (lower === 'yardage' || lower === 'fat quarters' || lower === 'fat eighths') return { kind: lower };
    const match = /^(strips|squares|wide)\s+(.+)$/i.exec(raw);
    const kind = match?.[1]?.toLowerCase() as 'strips' | 'squares' | 'wide' | undefined;
    if (!kind)
      return { problem: `A fabric is cut from ${EXAMPLES.slice(0, -1).join(', ')} or ${EXAMPLES.at(-1)}.` };
    const size = match?.[2] ?? '';
    const square = readDimensions(size);
    if (kind === 'squares' && !isProblem(square)) return { kind, side: square.width.inches };
    const read = readLength(size);
    if (isProblem(read)) return read;
    return kind === 'squares' ? { kind, side: read.inches } : { kind, width: read.inches };
  },
);

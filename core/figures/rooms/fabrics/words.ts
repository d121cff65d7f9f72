/** The sentences about what a fabric is cut into. */
import { listed } from '../../../block/words.ts';
import type { Rational } from '../../../quantity/rational.ts';
import { type CutPiece, extent } from '../../../trade/plan/fabric.ts';
import type { SheetPlan } from '../../../trade/plan/sheetPlan.ts';
import { counted } from '../../sentence.ts';
import type { Show } from '../../show.ts';
import type { PlainStrips } from './cutLine.ts';
import type { PlainLine } from './cuttingList.ts';
import type { SheetLine } from './sheets.ts';

/** `6 strips 2½" wide for 84 squares of Gull, 16 from each: 15".` */
export function lineStep({ what, strips, pieces }: PlainLine, show: Show): string {
  const each = pieces && pieces.count > 1 ? `, ${pieces.perStrip} from each` : '';
  return `${capital(stripsText(strips, show))} for ${listed(what, 'and')}${each}: ${show.length(strips.length)}.`;
}

/** `13 strips 2⅞" wide and 11 strips 2½" wide`: the same sizes together. */
export function allStrips(lines: readonly PlainLine[], show: Show): string {
  const groups = new Map<string, PlainStrips>();
  for (const { strips } of lines) {
    const key = `${strips.kind} ${strips.size.toFraction()}`;
    const known = groups.get(key);
    groups.set(key, known ? { ...known, count: known.count + strips.count } : strips);
  }
  return listed(
    [...groups.values()].map((strips) => stripsText(strips, show)),
    'and',
  );
}

function stripsText({ kind, count, size }: PlainStrips, show: Show): string {
  const length = show.length(size);
  switch (kind) {
    case 'strips':
      return `${counted(count, 'strip')} ${length} wide`;
    case 'strips along the length':
      return `${counted(count, 'strip')} ${length} wide along the length`;
    case 'panels':
      return `${counted(count, 'panel')} ${length} long`;
    case 'square':
      return `${count} square of ${length}`;
    case 'bias cloth':
      return `${length} of the whole width for bias strips`;
  }
}

/** `12 squares of Gull: 5 from a strip, 3 strips 3½" wide.` */
export function sheetStep({ piece, width, perStrip, strips }: SheetLine, show: Show): string {
  return `${capital(piece.id)}: ${perStrip} from a strip, ${counted(strips, 'strip')} ${show.length(width)} wide.`;
}

/** How far the longest piece runs that must lie along the selvage; `undefined` when none must. */
export function longestAlong(pieces: readonly CutPiece[]): { id: string; length: Rational } | undefined {
  return pieces
    .filter(({ lengthwise }) => lengthwise)
    .map((piece) => ({ id: piece.id, length: extent(piece, 'lengthwise').along }))
    .sort((a, b) => b.length.compare(a.length))[0];
}

/** One of the sheets, in the trade's words, and several. */
export function sheetName({ name }: Pick<SheetPlan, 'name'>, count: number): string {
  return counted(count, name);
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The one door to drawings: which figures can be drawn, and how they look. */
import type { Pattern } from '../block/pattern.ts';
import type { Drawing } from '../geometry/drawing.ts';
import { cuttingLayouts } from '../trade/plan/layout.ts';
import { Derivation } from './derivation.ts';
import { drawBacking } from './drawings/backing.ts';
import { drawBiasSquare } from './drawings/biasSquare.ts';
import { drawLayout } from './drawings/cuttingLayout.ts';
import type { Ledger } from './ledger.ts';
import { tubeOf } from './rooms/biasSquare.ts';
import { cuttingList, fits } from './rooms/fabrics/cuttingList.ts';
import { keptPlan, MOST_PIECES } from './rooms/fabrics/plans.ts';
import { sourcesOf } from './rooms/fabrics/sources.ts';
import { backingOf, chosenPlan, overhangOf } from './rooms/layers.ts';

/** Draws one subject; the fabric is the one that the figure's name holds. */
type Draw = (at: Derivation, pattern: Pattern, fabric: string) => readonly Drawing[];

/** Ids of figures, and what they are figures of. */
const SUBJECTS: readonly { readonly figures: RegExp; readonly draw: Draw }[] = [
  { figures: /^binding\.(?:square|passes|yield)$/, draw: biasSquare },
  { figures: /^backing\.(?:width|length|panels|seams|panel-length|yardage)$/, draw: panels },
  { figures: /^fabric\.(.+?)\.(?:strips\..+|[a-z]+(?:-[a-z]+)*)$/, draw: layouts },
];

/** The figures of a pattern that can be drawn, in the order of the ledger. */
export function drawnFigures(ledger: Ledger): readonly string[] {
  return ledger.ids.filter((id) => subjectOf(id) && ledger.figure(id));
}

/** One figure for each subject that can be drawn, in the order of the ledger: its other figures look the same. */
export function drawnSubjects(ledger: Ledger): readonly string[] {
  const firsts = new Map<string, string>();
  for (const id of drawnFigures(ledger)) {
    const subject = subjectOf(id);
    const name = subject && `${SUBJECTS.findIndex(({ draw }) => draw === subject.draw)} ${subject.fabric}`;
    if (name !== undefined && !firsts.has(name)) firsts.set(name, id);
  }
  return [...firsts.values()];
}

/**
 * What a figure looks like in a size of the pattern: the bias square with its lines, the backing with its panels, the
 * cutting layouts of a fabric (one for each way in which its sheets are cut).
 *
 * @param id of a figure of this ledger
 * @param size name of the size; empty for a pattern of one size
 * @returns nothing for what cannot be drawn or computed. A layout may take long to find; it is found once.
 */
export function drawingsOf(pattern: Pattern, ledger: Ledger, id: string, size: string): readonly Drawing[] {
  const named = pattern.sizes.find(({ name }) => name === size);
  const subject = subjectOf(id);
  if (!named || !subject || !ledger.figure(id)?.values.has(size)) return [];
  const at = Derivation.reading(pattern, named, ledger);
  return subject.draw(at, pattern, subject.fabric);
}

function subjectOf(id: string): { readonly draw: Draw; readonly fabric: string } | undefined {
  for (const { figures, draw } of SUBJECTS) {
    const match = figures.exec(id);
    if (match) return { draw, fabric: match[1] ?? '' };
  }
  return undefined;
}

function biasSquare(at: Derivation): Drawing[] {
  const tube = tubeOf(at);
  return tube && tube.passes > 0 ? [drawBiasSquare(tube, at.show)] : [];
}

function panels(at: Derivation): Drawing[] {
  const backing = backingOf(at);
  const plan = chosenPlan(at);
  return backing && plan ? [drawBacking(backing, plan, overhangOf(at, 'backing').valueOf(), at.show)] : [];
}

function layouts(at: Derivation, pattern: Pattern, label: string): Drawing[] {
  const list = cuttingList(at, sourcesOf(pattern), label);
  if (!list || !fits(list)) return [];
  const pieces = list.lines.flatMap((line) => line.pieces);
  if (pieces.reduce((sum, { count }) => sum + count, 0) > MOST_PIECES) return [];
  const { stock } = list.fabric;
  const sheet = stock.kind === 'sheets' ? stock.name : undefined;
  const plan = keptPlan(list.fabric, pieces);
  return cuttingLayouts(plan).map((layout) => drawLayout(layout, `fabric ${label}`, sheet, at.show));
}

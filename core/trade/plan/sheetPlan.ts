/** Cutting equal sheets (fat quarters, fat eighths, precut strips and squares): how many are needed. */
import type { Rational } from '../../quantity/rational.ts';
import type { CutPiece, Fabric } from './fabric.ts';
import type { Strip } from './greedy.ts';
import { stripHeight } from './greedy.ts';
import { sheetsByArea } from './plain.ts';
import {
  commonScale,
  kindsOf,
  type Misfit,
  misfit,
  type Scale,
  type StripProblem,
  type StripRun,
  stripProblem,
} from './problem.ts';
import { shortestStrips } from './search.ts';
import { type SheetColumn, sheetRelaxation } from './sheetRelaxation.ts';
import { type TriedSheet, trySheets } from './sheetSearch.ts';
import { gathered, namedStrips, PieceStore, type PlannedStrip, stripKey } from './strips.ts';

export interface PlannedSheet {
  /** Sheets that are cut alike. */
  readonly count: number;
  /** Which way its strips run. */
  readonly strips: StripRun;
  readonly cut: readonly PlannedStrip[];
}

export interface SheetPlan {
  readonly kind: 'sheets';
  readonly name: string;
  readonly width: Rational;
  readonly length: Rational;
  readonly misfits: readonly { readonly piece: CutPiece; readonly why: Misfit }[];
  /** Every piece from sheets of its own. */
  readonly plain: number;
  readonly best: { readonly sheets: readonly PlannedSheet[]; readonly count: number };
  /** No plan of strips and pieces from strips takes fewer. */
  readonly bound: number;
  readonly gap: number;
  /** No way of cutting at all takes fewer: by area. */
  readonly anyWayBound: number;
}

/** Elementary steps for the strips of each direction, which are only where the plan of the sheets begins. */
const STRIP_WORK = 3_000_000;
/** Places tried to close the gap: some ten milliseconds. */
const MOST_TRIES = 20_000;

/** One way to cut a sheet into strips. */
interface Direction {
  readonly run: StripRun;
  readonly problem: StripProblem;
  /** What the strips of one sheet may be high together. */
  readonly room: number;
}

/** The strips of one sheet. */
interface Sheet {
  readonly direction: Direction;
  readonly strips: Strip[];
}

/**
 * Plans sheets. Strips may run either way, on each sheet the better one.
 *
 * The plan is the best of three: the shortest strips (see `search.ts`) in either direction, packed into sheets
 * first fit, highest first; and the rounded plan of the linear relaxation over whole sheets, whose value also is
 * a bound. Where that leaves a gap all ways are tried (see `sheetSearch.ts`), which settles short lists: a few
 * pieces always, three kinds nearly always, eight kinds in two of three lists; else the gap is one sheet or two.
 * Squaring is not taken off: the sizes of sheets are usable sizes.
 *
 * @throws RangeError for fabric by the yard.
 */
export function sheetPlan(fabric: Fabric, pieces: readonly CutPiece[], work?: number): SheetPlan {
  const { stock } = fabric;
  if (stock.kind !== 'sheets') throw new RangeError('not fabric in sheets');
  const wanted = pieces.filter(({ count }) => count > 0);
  const misfits = wanted.flatMap((piece) => {
    const why = misfit(piece, fabric);
    return why ? [{ piece, why }] : [];
  });
  const fitting = wanted.filter((piece) => !misfit(piece, fabric));
  const lengths = fitting.flatMap(({ width, length }) => [width, length]);
  const scale = commonScale([stock.width, stock.length, ...lengths]);
  const directions = directionsOf(fitting, fabric, scale, stock);
  const area = sheetsByArea(fitting, stock.width, stock.length);
  const { sheets, bound } = bestSheets(directions, area, work);
  return {
    kind: 'sheets',
    name: stock.name,
    width: stock.width,
    length: stock.length,
    misfits,
    plain: fitting.reduce((sum, piece) => sum + alone(directionsOf([piece], fabric, scale, stock)), 0),
    best: { sheets: named(sheets, directions, scale), count: sheets.length },
    bound,
    gap: sheets.length - bound,
    anyWayBound: area,
  };
}

function directionsOf(
  pieces: readonly CutPiece[],
  fabric: Fabric,
  scale: Scale,
  { width, length }: { width: Rational; length: Rational },
): Direction[] {
  const kinds = kindsOf(pieces, fabric, scale);
  const [across, along] = [scale.toUnits(width), scale.toUnits(length)];
  return [
    { run: 'across' as const, problem: stripProblem(kinds, 'across', across, along), room: along },
    { run: 'along' as const, problem: stripProblem(kinds, 'along', along, across), room: across },
  ];
}

/** Sheets for one kind of piece by itself: all strips of one sheet alike. */
function alone(directions: readonly Direction[]): number {
  const counts = directions.flatMap(({ problem, room }) =>
    problem.placements.map(({ fit, height }) => {
      return Math.ceil((problem.kinds[0]?.demand ?? 0) / (fit * Math.floor(room / height)));
    }),
  );
  return Math.min(...counts);
}

function bestSheets(
  directions: readonly Direction[],
  area: number,
  work?: number,
): { sheets: readonly Sheet[]; bound: number } {
  const plans: Sheet[][] = [];
  const fewest = () => plans.reduce((best, plan) => (plan.length < best.length ? plan : best));
  for (const direction of directions) {
    plans.push(firstFit(direction, shortestStrips(direction.problem, { work: work ?? STRIP_WORK }).strips));
    if (fewest().length <= area) return { sheets: fewest(), bound: area };
  }
  const relaxed = sheetRelaxation(directions, fewest().length);
  if (relaxed.rounded)
    plans.push(trimmedSheets(relaxed.rounded.map((column) => sheetOf(column, directions))));
  let bound = Math.max(area, relaxed.bound);
  const tries = Math.min(MOST_TRIES, work ?? MOST_TRIES);
  while (bound < fewest().length) {
    const trial = trySheets(directions, bound, tries);
    if (trial === 'undecided') break;
    if (trial === 'none') bound++;
    else plans.push(trial.map((sheet) => triedSheet(sheet, directions)));
  }
  return { sheets: fewest(), bound: Math.min(bound, fewest().length) };
}

function triedSheet({ direction, strips }: TriedSheet, directions: readonly Direction[]): Sheet {
  const counted = strips.map(({ placements }) => {
    const strip = new Map<number, number>();
    for (const index of placements) strip.set(index, (strip.get(index) ?? 0) + 1);
    return strip;
  });
  return { direction: directions[direction] as Direction, strips: counted };
}

function firstFit(direction: Direction, strips: readonly Strip[]): Sheet[] {
  const { problem, room } = direction;
  const byHeight = strips
    .map((strip) => ({ strip, height: stripHeight(strip, problem) }))
    .sort((a, b) => b.height - a.height);
  const sheets: (Sheet & { left: number })[] = [];
  for (const { strip, height } of byHeight) {
    const open = sheets.find(({ left }) => left >= height);
    const sheet = open ?? { direction, strips: [], left: room };
    if (!open) sheets.push(sheet);
    sheet.strips.push(strip);
    sheet.left -= height;
  }
  return sheets;
}

function sheetOf({ direction, strips }: SheetColumn, directions: readonly Direction[]): Sheet {
  return { direction: directions[direction] as Direction, strips: strips.map((filling) => new Map(filling)) };
}

/** Takes away what sheets hold beyond the demand, and sheets that become empty. */
function trimmedSheets(sheets: readonly Sheet[]): Sheet[] {
  const left = sheets[0]?.direction.problem.kinds.map(({ demand }) => demand) ?? [];
  return sheets
    .map(({ direction, strips }) => ({
      direction,
      strips: strips
        .map((strip) => {
          const kept = new Map<number, number>();
          for (const [index, copies] of strip) {
            const kind = direction.problem.placements[index]?.kind ?? -1;
            const count = Math.min(copies, left[kind] ?? 0);
            left[kind] = (left[kind] ?? 0) - count;
            if (count > 0) kept.set(index, count);
          }
          return kept;
        })
        .filter(({ size }) => size > 0),
    }))
    .filter(({ strips }) => strips.length > 0);
}

function named(sheets: readonly Sheet[], directions: readonly Direction[], scale: Scale): PlannedSheet[] {
  const [first] = directions;
  if (!first) return [];
  const store = new PieceStore(first.problem);
  const groups = new Map<string, PlannedSheet>();
  for (const { direction, strips } of sheets) {
    const cut = gathered(namedStrips(strips, direction.problem, scale, store));
    const key = `${direction.run} ${cut.map((strip) => `${strip.count}:${stripKey(strip)}`).join('/')}`;
    const known = groups.get(key);
    groups.set(key, { count: (known?.count ?? 0) + 1, strips: direction.run, cut });
  }
  return [...groups.values()];
}

/**
 * The shortest plan by trying everything: each piece goes into each strip that was begun, or begins a new one, in
 * each way it may lie. Written without the code under test; whole numbers only.
 */
export interface SmallPiece {
  readonly width: number;
  readonly length: number;
  /** Length across the fabric; length along the selvage. */
  readonly crosswise: boolean;
  readonly lengthwise: boolean;
}

/** The least sum of strip widths on fabric of a width; infinite when a piece does not fit. */
export function leastLength(pieces: readonly SmallPiece[], fabricWidth: number): number {
  const strips: { height: number; left: number }[] = [];
  let least = Number.POSITIVE_INFINITY;
  const place = (at: number, height: number): void => {
    if (height >= least) return;
    const piece = pieces[at];
    if (!piece) {
      least = height;
      return;
    }
    const ways: [span: number, tall: number][] = [];
    if (piece.crosswise) ways.push([piece.length, piece.width]);
    if (piece.lengthwise) ways.push([piece.width, piece.length]);
    for (const [span, tall] of ways) {
      for (const strip of strips) {
        if (strip.left < span) continue;
        const before = strip.height;
        strip.left -= span;
        strip.height = Math.max(before, tall);
        place(at + 1, height + strip.height - before);
        strip.left += span;
        strip.height = before;
      }
      if (span > fabricWidth) continue;
      strips.push({ height: tall, left: fabricWidth - span });
      place(at + 1, height + tall);
      strips.pop();
    }
  };
  place(0, 0);
  return least;
}

/** The fewest sheets: all ways to divide the pieces into groups that each fit on one sheet, strips either way. */
export function fewestSheets(pieces: readonly SmallPiece[], width: number, length: number): number {
  const fits = (group: readonly SmallPiece[]) => {
    const turned = group.map((p) => ({ ...p, crosswise: p.lengthwise, lengthwise: p.crosswise }));
    return leastLength(group, width) <= length || leastLength(turned, length) <= width;
  };
  const groups: SmallPiece[][] = [];
  let fewest = Number.POSITIVE_INFINITY;
  const place = (at: number): void => {
    if (groups.length >= fewest) return;
    const piece = pieces[at];
    if (!piece) {
      if (groups.every(fits)) fewest = groups.length;
      return;
    }
    for (const group of groups) {
      group.push(piece);
      place(at + 1);
      group.pop();
    }
    groups.push([piece]);
    place(at + 1);
    groups.pop();
  };
  place(0);
  return fewest;
}

/**
 * A drawing as plain data, for any room that can draw: boxes, lines and labels on a sheet.
 *
 * Coordinates are inches as floating-point numbers, x to the right and y down from the upper left corner; a drawing
 * is looked at, never measured, so nothing is decided by them.
 */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface DrawnBox extends Point {
  readonly width: number;
  readonly height: number;
  /** What it stands for: cloth, a piece to be cut, what is left over, the outline of something that lies on top. */
  readonly role: 'cloth' | 'piece' | 'leftover' | 'outline';
  readonly label?: string;
}

export interface DrawnLine {
  readonly from: Point;
  readonly to: Point;
  /** `mark`: drawn on the cloth. `cut`: cut along it. `seam`: sewn along it. `edge`: the edge of the cloth. */
  readonly role: 'mark' | 'cut' | 'seam' | 'edge';
}

export interface DrawnLabel extends Point {
  readonly text: string;
}

export interface Drawing {
  /** The size of the sheet. */
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly DrawnBox[];
  readonly lines: readonly DrawnLine[];
  readonly labels: readonly DrawnLabel[];
  /** Whether it may be shown lying on its side: neither its words nor its use know an upright direction. */
  readonly mayTurn?: boolean;
  /** What it is, in a few words. */
  readonly title: string;
  /** What one sees, in sentences, for those who cannot look at it. */
  readonly description: string;
}

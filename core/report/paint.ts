/** The colours of a report: each function wraps a text in whatever the host shows colours with. */
export interface Paint {
  readonly mistake: (text: string) => string;
  readonly warning: (text: string) => string;
  readonly hint: (text: string) => string;
  readonly good: (text: string) => string;
  readonly strong: (text: string) => string;
  readonly faint: (text: string) => string;
}

const asItIs = (text: string) => text;

export const PLAIN: Paint = {
  mistake: asItIs,
  warning: asItIs,
  hint: asItIs,
  good: asItIs,
  strong: asItIs,
  faint: asItIs,
};

/** How a report is laid out. */
export interface Layout {
  readonly paint: Paint;
  /** Columns of the terminal. */
  readonly width: number;
}

import { text } from './schema.ts';

/** A label of `fabrics`. A class of its own, so that one check finds every use of a fabric that no one defined. */
export class FabricLabel {
  readonly label: string;

  constructor(label: string) {
    this.label = label;
  }
}

export const fabricLabel = text<FabricLabel>(
  { title: 'the label of a fabric', examples: ['A'] },
  (raw) => new FabricLabel(raw),
);

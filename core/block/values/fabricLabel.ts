import { z } from 'zod';
import { forward, text } from './schema.ts';

/** A label of `fabrics`. A class of its own, so that one check finds every use of a fabric that no one defined. */
export class FabricLabel {
  readonly label: string;

  constructor(label: string) {
    this.label = label;
  }
}

const WORDS = { title: 'the label of a fabric', examples: ['A'] };

export const fabricLabel = text<FabricLabel>(WORDS, (raw) => new FabricLabel(raw));

/** One label, or a list of them. */
export const fabricLabels = z
  .unknown()
  .transform((raw, context): readonly FabricLabel[] => {
    const items = Array.isArray(raw) ? raw : [raw];
    const labels: FabricLabel[] = [];
    for (const [index, item] of items.entries()) {
      const read = fabricLabel.safeParse(item);
      if (read.success) labels.push(read.data);
      else forward(context, read.error, fabricLabel, Array.isArray(raw) ? [index] : []);
    }
    return labels;
  })
  .meta({ title: 'the label of a fabric, or a list of them', examples: ['A', '[A, B]'] });

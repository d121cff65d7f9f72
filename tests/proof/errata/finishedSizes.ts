import { type Kind, manuscript } from './erratum.ts';

const tidelands = (...paragraphs: string[]) =>
  manuscript(
    'Tidelands',
    [
      'fabrics: { A: Sand, B: Kelp, C: Spray }',
      'blocks: { Tide: { finished: 10" } }',
      'layout: { grid: 5 x 6, sashing: { finished: 3", from: C } }',
      'borders: [{ finished: 1 1/2", from: B }, { finished: 4", from: A }]',
      'backing: {}',
      'batting: {}',
    ],
    ...paragraphs,
  );

const hillside = (...paragraphs: string[]) =>
  manuscript(
    'Hillside',
    [
      'sizes: [crib, throw, queen]',
      'blocks: { Hill: { finished: 12" } }',
      'layout: { grid: { crib: 3 x 4, throw: 5 x 6, queen: 7 x 8 } }',
      'borders: [{ finished: 3" }]',
      'binding: { strip: 2 1/4" }',
    ],
    ...paragraphs,
  );

/** A size that leaves a part out, belongs to another size, or comes from a slip of the keyboard. */
export const FINISHED_SIZES: Kind = {
  kind: 'a wrong finished size',
  wrong: [
    {
      mistake: 'without the borders',
      text: tidelands('Finished size: «62"» × 86".'),
      slip: 'the borders left out',
    },
    {
      mistake: 'without the inner border',
      text: tidelands('Finished size: 73" × «83"».'),
      slip: 'one border left out',
    },
    {
      mistake: 'without the sashing',
      text: tidelands('The finished quilt measures «61"» × 86".'),
      slip: 'the sashing left out',
    },
    {
      mistake: 'with the seam allowances of the top',
      text: tidelands('Finished size: «73½"» × 86".'),
    },
    {
      mistake: 'a neighbouring size',
      text: hillside('## Throw', 'Finished size: 66" × «102"».'),
      slip: 'the number of another size',
    },
    {
      mistake: 'two digits swapped',
      text: tidelands('Finished size: «37"» × 86".'),
      slip: 'two digits swapped',
    },
    {
      mistake: 'a digit lost at the front',
      text: tidelands('Finished size: 73" × «6"».'),
      slip: 'a digit lost',
    },
    {
      mistake: 'inches printed as centimetres',
      text: tidelands('The finished quilt is 73" wide and «86 cm» long.'),
      slip: 'another unit',
    },
  ],
  right: [
    ['the top with its seam allowances', tidelands('Before binding, the quilt top measures 73½" × 86½".')],
    [
      'the centre before the borders',
      tidelands('The centre measures 62½" × 75½" before the borders are added.'),
    ],
    ['the length first', tidelands('The finished quilt is 86" long and 73" wide.')],
    ['sizes rounded in the text', tidelands('The quilt finishes at about 75" × 85", a good lap size.')],
    ['both systems', tidelands('Finished size: 73" × 86" (185 cm × 218.5 cm).')],
    ['a list of sizes', hillside('Finished size: 42" × 54" (66" × 78", 90" × 102").')],
    ['the size of one size only', hillside('## Throw', 'Finished size: 66" × 78".')],
  ],
};

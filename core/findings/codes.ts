/**
 * The one table of findings: every code with its severity and its page in the reference.
 *
 * Hosts branch on the code, never on the message. The reference page `shared/reference/findings.md` is written
 * from this table, and a test holds that each code has an example that the program itself reports.
 */
import type { Severity } from './finding.ts';

export interface CodePage {
  readonly severity: Severity;
  readonly title: string;
  /** What it means, and why it matters at the cutting table. */
  readonly meaning: string;
  /** A manuscript in which the program reports this finding. */
  readonly example: string;
  /** The files that stand in its folder, by their names, where it uses one. */
  readonly beside?: Readonly<Record<string, string>>;
  /** The same manuscript earlier, for a finding that tells what changed. */
  readonly before?: string;
  /** What to do about it. */
  readonly remedy: string;
}

const fence = (...lines: string[]) => ['```measure', ...lines, '```'].join('\n');

export const CODES = {
  'wrong-figure': {
    severity: 'error',
    title: 'A number contradicts the figure that it states',
    meaning:
      'The number is tied to a figure, and the figure has another value. Whoever cuts by this number cuts the wrong size.',
    example: `${fence('finished: 36" x 48"')}\n\nBind 160" <!-- = finished.edge --> of edge.`,
    remedy: 'Take the fix, or correct the measure block if the number is right and the block is not.',
  },
  'short-figure': {
    severity: 'error',
    title: 'A stated requirement is less than what is needed',
    meaning:
      'A length, a count or a yardage that must be at least so much is too small: the customer runs out of fabric.',
    example: `${fence('finished: 36" x 48"', 'binding: { strip: 2 1/4", grain: straight }')}\n\nCut 4 <!-- = binding.strips --> strips.`,
    remedy: 'Take the fix: it states the least amount that is enough.',
  },
  'stale-figure': {
    severity: 'warning',
    title: 'A number that was right before something changed',
    meaning:
      'The number agreed with its figure when the manuscript was opened, or when it was last signed off; then something ' +
      'in the measure block changed that the figure follows from. The message names what changed.',
    before: `${fence('finished: 36" x 48"', 'binding: { strip: 2 1/4" }')}\n\nCut 5 strips for the binding, each 2¼" wide.`,
    example: `${fence('finished: 36" x 48"', 'binding: { strip: 2 1/2" }')}\n\nCut 5 strips for the binding, each 2¼" wide.`,
    remedy: 'Take the fix, or take back the change if the number is right as it stands.',
  },
  'generous-figure': {
    severity: 'hint',
    title: 'A stated requirement is well above what is needed',
    meaning:
      'Not a mistake: the customer buys more than she needs. The limit is `generous over` in the house rules.',
    example: `${fence('finished: 36" x 48"', 'binding: { strip: 2 1/4", grain: straight }')}\n\nBinding: 2 yd <!-- = binding.yardage -->.`,
    remedy: 'Leave it if it is meant, or state less.',
  },
  'wrong-unit': {
    severity: 'error',
    title: 'A number and its figure measure different things',
    meaning: 'A count is tied to a length, or a length to a count, so they cannot be compared.',
    example: `${fence('finished: 36" x 48"', 'binding: { strip: 2 1/4", grain: straight }')}\n\nCut 5" <!-- = binding.strips --> strips.`,
    remedy: 'Tie the number to the figure that it states, or give it its unit.',
  },
  'unknown-figure': {
    severity: 'warning',
    title: 'There is no figure of this name',
    meaning: 'A tag, a statement or an own figure names a figure that the measure block does not fix.',
    example: `${fence('finished: 36" x 48"')}\n\nBind 168" <!-- = finished.egde --> of edge.`,
    remedy: 'Correct the name, or add the entry to the block that fixes the figure.',
  },
  'unknown-size': {
    severity: 'warning',
    title: 'The pattern has no size of this name',
    meaning: 'A tag names a size that stands not in `sizes`.',
    example: `${fence('sizes: [wall, throw]', 'finished: { wall: 36" x 48", throw: 54" x 72" }')}\n\nThe edge is 168" <!-- = finished.edge @ wal -->.`,
    remedy: 'Correct the name of the size.',
  },
  'size-needed': {
    severity: 'warning',
    title: 'The tag does not say which size is meant',
    meaning:
      'The figure differs between the sizes, and neither the tag nor the table says which of them the number states.',
    example: `${fence('sizes: [wall, throw]', 'finished: { wall: 36" x 48", throw: 54" x 72" }')}\n\nThe edge is 168" <!-- = finished.edge -->.`,
    remedy: 'Add the size to the tag, for example `@ wall`.',
  },
  'stray-tag': {
    severity: 'warning',
    title: 'A tag without a number before it',
    meaning: 'A tag ties the number before it to a figure; here no number is left for it.',
    example: `${fence('finished: 36" x 48"')}\n\nBind the edge <!-- = finished.edge -->.`,
    remedy: 'Move the tag behind its number, or delete it.',
  },
  'unclear-figure': {
    severity: 'warning',
    title: 'A number that is none of the figures it may be',
    meaning:
      'The words around the number speak of two or three figures equally well, and the number is none of them. It is one ' +
      'of them with a mistake, but nothing tells which.',
    example: `${fence('blocks: { Wave: { finished: 6" } }', 'layout: { grid: 8 x 10 }', 'borders: [{ finished: 2" }, { finished: 4" }]')}\n\nCut 5 strips for the border.`,
    remedy: 'Take the fix for the figure that you mean, or put its tag behind the number.',
  },
  'bad-tag': {
    severity: 'warning',
    title: 'A tag that cannot be read',
    meaning:
      'A comment that starts like a tag does not name a figure in the form `<!-- = figure @ size -->`.',
    example: `${fence('finished: 36" x 48"')}\n\nThe edge is 168" <!-- = @ wall -->.`,
    remedy: 'Write `<!-- = figure -->`, or `<!-- = figure @ size -->`.',
  },
  'block-syntax': {
    severity: 'error',
    title: 'A measure block that is not YAML',
    meaning: 'This part of the block cannot be read; the entries around it still count.',
    example: fence('finished: 36" x 48"', 'binding: { strip: 2 1/4"'),
    remedy: 'Close the brackets and quotation marks, and indent with spaces.',
  },
  'unknown-entry': {
    severity: 'error',
    title: 'An entry that the measure block does not know',
    meaning: 'The word is not an entry, so what it says does not count.',
    example: fence('finnished: 36" x 48"'),
    remedy: 'Correct the word; the message names the nearest known one.',
  },
  'missing-entry': {
    severity: 'error',
    title: 'An entry lacks something it needs',
    meaning: 'Without it the figures of this entry cannot be computed.',
    example: fence('finished: 36" x 48"', 'binding: { grain: straight }'),
    remedy: 'Add what is missing.',
  },
  'duplicate-entry': {
    severity: 'error',
    title: 'The same entry twice',
    meaning: 'Two entries of one name would contradict each other; the first one counts.',
    example: `${fence('finished: 36" x 48"')}\n\n${fence('finished: 36" x 50"')}`,
    remedy: 'Delete one of them.',
  },
  'bad-value': {
    severity: 'error',
    title: 'A value that cannot be read',
    meaning:
      'The value is not what this entry takes: a length without its unit, a choice that does not exist.',
    example: fence('finished: 36 x 48'),
    remedy: 'Write the value as the message shows.',
  },
  'missing-size': {
    severity: 'error',
    title: 'A value per size leaves a size out',
    meaning: 'The figures of that size cannot be computed.',
    example: fence('sizes: [wall, throw]', 'finished: { wall: 36" x 48" }'),
    remedy: 'Give the value for the size that is named.',
  },
  'extra-size': {
    severity: 'error',
    title: 'A value for a size that the pattern does not have',
    meaning: 'Either the name is misspelled, or `sizes` lacks it.',
    example: fence('sizes: [wall, throw]', 'finished: { wall: 36" x 48", throw: 54" x 72", trow: 1" x 1" }'),
    remedy: 'Correct the name, or add the size to `sizes`.',
  },
  'unknown-fabric': {
    severity: 'error',
    title: 'A fabric that no one defined',
    meaning: 'The entry is cut from a fabric that stands not under `fabrics`.',
    example: fence(
      'fabrics: { A: Deep water }',
      'finished: 36" x 48"',
      'binding: { from: B, strip: 2 1/4", grain: straight }',
    ),
    remedy: 'Correct the label, or add the fabric.',
  },
  'use-missing': {
    severity: 'error',
    title: 'The manuscript under `use` is not there',
    meaning:
      'No file stands where the path leads. What follows from house rules and fabrics that this manuscript does not say itself is not checked.',
    example: fence('use: house.md', 'finished: 36" x 48"'),
    beside: {},
    remedy: 'Correct the path, which begins at the folder of this manuscript, or put the file there.',
  },
  'use-outside': {
    severity: 'error',
    title: 'The path under `use` leads out of the workspace',
    meaning:
      'Only files inside the workspace are read: the folders that are open in the editor, or in the terminal the folder around the manuscript that holds `.git`. Addresses, paths from the top folder of the disk and links that lead elsewhere are refused.',
    example: fence('use: /house.md', 'finished: 36" x 48"'),
    beside: {},
    remedy: 'Put the file into the workspace and write the path to it from the folder of this manuscript.',
  },
  'use-circle': {
    severity: 'error',
    title: 'Manuscripts use each other in a circle',
    meaning:
      'A manuscript uses itself, directly or by way of others, so nobody can tell whose rules come first.',
    example: fence('use: house.md', 'finished: 36" x 48"'),
    beside: { 'house.md': fence('use: line.md', 'house: { seam: 1/4" }'), 'line.md': fence('use: house.md') },
    remedy: 'Take `use` out of one of the files that the message names.',
  },
  'use-unreadable': {
    severity: 'error',
    title: 'The manuscript under `use` cannot be read in full',
    meaning:
      'It is no text, or its house rules or fabrics hold a mistake. What follows from the part that cannot be read is not checked.',
    example: fence('use: house.md', 'finished: 36" x 48"'),
    beside: { 'house.md': fence('house: { seam: 1/4 }') },
    remedy: 'Open the file that is named, and mend what is reported there.',
  },
  'use-unreachable': {
    severity: 'warning',
    title: 'The manuscript under `use` cannot be reached',
    meaning:
      'The text is not saved in a folder yet, or the program runs where it cannot read files, as in a browser. What follows from the rules of the other manuscript is not checked.',
    example: fence('use: house.md', 'finished: 36" x 48"'),
    remedy: 'Save the text in a folder of the workspace.',
  },
  'use-empty': {
    severity: 'warning',
    title: 'The manuscript under `use` has nothing to give',
    meaning: 'It has no measure block, or neither house rules nor fabrics in it.',
    example: fence('use: house.md', 'finished: 36" x 48"'),
    beside: { 'house.md': 'Our house sews with ¼" seams.' },
    remedy: 'Give that file a measure block with `house` or `fabrics`, or take `use` out of this one.',
  },
  'too-wide': {
    severity: 'error',
    title: 'A piece wider than the fabric',
    meaning: 'The fabric cannot give a piece of this width.',
    example: fence('finished: 36" x 48"', 'binding: { strip: 50", grain: straight }'),
    remedy: 'Correct the size, or the usable width of the fabric.',
  },
  'longer-than-width': {
    severity: 'warning',
    title: 'A piece longer than the fabric is wide',
    meaning:
      'Strips are cut across the fabric, so nothing longer than its usable width comes from one of them. Such a piece is cut along the length of the fabric, which takes at least that length, or it is joined from several strips.',
    example: fence(
      'fabrics: { A: Deep water }',
      'pieces: { sash: { cut: 2 1/2" x 50", count: 3, from: A } }',
    ),
    remedy:
      'Say `along: length` if it is cut along the length, or describe the strips that it is joined from.',
  },
  'precut-too-small': {
    severity: 'error',
    title: 'A piece that is larger than the precut it is cut from',
    meaning: 'Fat quarters, precut strips and squares come in one size, and the piece does not fit on it.',
    example: fence(
      'fabrics: { A: { name: Foam, cut from: squares 5" } }',
      'pieces: { patch: { cut: 6 1/2" x 6 1/2", count: 4, from: A } }',
    ),
    remedy: 'Correct the size, or what the fabric is cut from.',
  },
  'curve-needs-bias': {
    severity: 'warning',
    title: 'Straight-grain binding on a curved edge',
    meaning:
      'Cloth stretches along the bias only: straight-grain binding puckers on a curve, and inner points of scallops too.',
    example: fence('finished: circle 24"', 'binding: { strip: 2 1/4", grain: straight }'),
    remedy: 'Cut the binding on the bias: `grain: bias`.',
  },
  'area-rule-short': {
    severity: 'warning',
    title: 'The rule of thumb gives too small a bias square',
    meaning:
      'The square-root rule spreads the whole area of the square over the strip. It forgets both seams and what is left beside the last line, so the square can give less binding than the edge takes.',
    example: fence(
      'house: { bias square by: area }',
      'finished: circle 24"',
      'binding: { strip: 2 1/4", grain: bias }',
    ),
    remedy:
      'Take `bias square by: yield`, or state the larger square that the pattern cuts: `states: { binding.square: 17" }`.',
  },
  'block-not-square': {
    severity: 'warning',
    title: 'A block on point that is not square',
    meaning:
      'A block on point stands on its corner, and its neighbours meet it along its sides: all sides must be equal. For other blocks no figure of the setting can be computed.',
    example: fence('blocks: { Ripple: { finished: 6" x 9" } }', 'layout: { set: on point, grid: 3 x 4 }'),
    remedy: 'Correct the finished size of the block, or set it straight.',
  },
  'block-not-filled': {
    severity: 'error',
    title: 'The parts of a block do not fill it',
    meaning:
      'The finished areas of units and pieces do not add up to the block, or they do but cannot be laid side by side in it, so it cannot be sewn as it is described.',
    example: fence(
      'blocks:',
      '  Ripple:',
      '    finished: 6"',
      '    make: 4',
      '    of:',
      '      - { unit: half-square triangles, finished: 3", count: 3 }',
    ),
    remedy: 'Correct a count or a size; the message says how much is missing or too much.',
  },
  'too-few-made': {
    severity: 'error',
    title: 'Fewer blocks or pieces are made than the layout takes',
    meaning: 'The quilt cannot be put together from what is made.',
    example: fence('blocks: { Ripple: { finished: 6", make: 11 } }', 'layout: { grid: 3 x 4 }'),
    remedy: 'Correct the number of blocks or pieces, or the layout.',
  },
  'too-many-made': {
    severity: 'warning',
    title: 'More blocks or pieces are made than the layout takes',
    meaning: 'Blocks or pieces are left over, and so is the fabric in them.',
    example: fence('blocks: { Ripple: { finished: 6", make: 13 } }', 'layout: { grid: 3 x 4 }'),
    remedy: 'Correct the number of blocks or pieces, or the layout.',
  },
  'bad-expression': {
    severity: 'error',
    title: 'A figure of your own that cannot be computed',
    meaning: 'The expression is not complete, adds a length to a count, or divides by nothing.',
    example: fence('finished: 36" x 48"', 'figures: { ribbon: finished.edge + 18 }'),
    remedy: 'Correct the expression at the place shown.',
  },
  'negative-figure': {
    severity: 'warning',
    title: 'A figure of your own that is less than nothing',
    meaning:
      'No length and no count is negative: perhaps the two sides of a minus are exchanged. A figure that only another figure uses may be negative.',
    example: fence('finished: 36" x 48"', 'figures: { longer: finished.width - finished.length }'),
    remedy: 'Correct the expression.',
  },
  'broken-count': {
    severity: 'hint',
    title: 'A count of your own that is not whole',
    meaning:
      'Strips, blocks and bows are counted whole. A figure that only another figure uses may be broken.',
    example: fence('finished: 36" x 50"', 'figures: { bows: finished.length / 12" }'),
    remedy: 'Round it: `ceil(…)` up to the next whole number, `floor(…)` down to the last.',
  },
  'figure-circle': {
    severity: 'error',
    title: 'Figures that depend on each other in a circle',
    meaning: 'Each of them waits for the other, so none has a value.',
    example: fence('figures:', '  cord: ribbon + 2"', '  ribbon: cord + 2"'),
    remedy: 'State one of them as a length.',
  },
  'strips-disagree': {
    severity: 'error',
    title: 'Strips that cannot give the pieces cut from them',
    meaning:
      'A strip gives whole pieces only. So many strips, at their length or at 44" of usable width where none is said, give fewer pieces than the sentence says.',
    example: 'Cut 5 strips 2½" × WOF; subcut 90 squares 2½".',
    remedy:
      'Correct the number of strips, of pieces, or their size; the tool cannot know which one is wrong.',
  },
  'counts-disagree': {
    severity: 'error',
    title: 'Two counts of the manuscript contradict each other',
    meaning:
      'One follows from the other: triangles from the squares that they are cut from, blocks from rows, what is used from what is made.',
    example: 'Lay out the 20 blocks in 5 rows of 5 blocks.',
    remedy: 'Correct the wrong one of the two numbers; both places are shown.',
  },
  'units-disagree': {
    severity: 'error',
    title: 'One length in two units, and they differ',
    meaning:
      'The second is no conversion of the first, not even as shops round it: whoever works with one of them cuts or buys another length.',
    example: 'Sand: 1.2m (2yd)',
    remedy: 'Correct the wrong one of the two, or exchange their units.',
  },
  'sizes-disagree': {
    severity: 'error',
    title: 'Two sizes of the manuscript contradict each other',
    meaning:
      'One follows from the other: a cut size from the finished size and two seam allowances, a border from the top that it is sewn to, the quilt from its blocks.',
    example: 'The block should measure 12" square unfinished, and finishes at 12" square.',
    remedy: 'Correct the wrong one of the two sizes; both places are shown.',
  },
  'not-enough': {
    severity: 'error',
    title: 'Something is smaller than what it must reach',
    meaning:
      'Binding, backing, batting or yardage does not suffice for what the manuscript itself says of the quilt or cuts from the fabric.',
    example: 'Finished quilt: 60" × 72"\n\nBacking: 58" × 80"',
    remedy: 'State enough, or correct the size that it must reach; both places are shown.',
  },
  gap: {
    severity: 'warning',
    title: 'Something is still to be written',
    meaning:
      'A size was added, and what stands here could not be computed: a value that the author decides, or a sentence that speaks of each size. The mark would go into print. Or a block was drafted from the manuscript, and the text tells this entry in two ways, or a number contradicts it.',
    example: `${fence('sizes: [wall, throw]', 'finished: { wall: 36" x 48", throw: … }')}`,
    remedy: 'Write what belongs there, and take the mark away.',
  },
} as const satisfies Record<string, CodePage>;

export type Code = keyof typeof CODES;

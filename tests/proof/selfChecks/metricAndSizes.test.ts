import { describe } from 'vitest';
import { findsNothing, findsTheOneMistake, type Right, type Wrong } from './cases.ts';

const WRONG_METRIC: readonly Wrong[] = [
  {
    situation: 'a block without its seam allowance',
    lines: ['Finished block: 30 cm', '', 'Each block should measure 30 cm square.'],
    code: 'sizes-disagree',
    at: '30 cm',
    message: 'What finishes at 30 cm is larger unfinished with seam allowances on both sides, not 30 cm.',
    against: ['30 cm'],
  },
  {
    situation: 'a block with another seam than the stated one',
    lines: ['All seams are 7.5 mm. Finished block: 30 cm', '', 'Each block should measure 32 cm square.'],
    code: 'sizes-disagree',
    at: '32 cm',
    message: 'What finishes at 30 cm is 31.5 cm unfinished with two seam allowances of 7.5 mm, not 32 cm.',
    against: ['30 cm'],
  },
  {
    situation: 'a quilt shorter than its rows',
    lines: [
      'Blocks finish at 25 cm.',
      '',
      'Lay out 6 rows of 5 blocks.',
      '',
      'Finished size: 125 cm × 145 cm',
    ],
    code: 'sizes-disagree',
    at: '145 cm',
    message: '6 rows of 5 blocks of 25 cm make 125 cm × 150 cm, not 125 cm × 145 cm.',
    against: ['6', '5', '25 cm'],
  },
  {
    situation: 'wadding smaller than the quilt',
    lines: ['**Finished quilt** 120cm x 150cm', '', '- Wadding 130cm x 140cm'],
    code: 'not-enough',
    at: '140cm',
    message: 'The wadding of 130cm × 140cm is smaller than the quilt, which is 120cm × 150cm.',
    against: ['120cm', '150cm'],
  },
  {
    situation: 'binding strips in centimetres',
    lines: ['Finished quilt: 120 cm × 150 cm.', '', '## Binding', '', 'Cut 4 strips 6 cm × 110 cm.'],
    code: 'not-enough',
    at: '4',
    message:
      '4 strips of binding give at most 436.19 cm when joined, and the quilt of 120 cm × 150 cm is 540 cm around.',
    against: ['120 cm', '150 cm'],
  },
];

const RIGHT_METRIC: readonly Right[] = [
  [
    'a seam of 7.5 mm',
    'All seams are 7.5 mm. Finished block: 30 cm',
    '',
    'Each block should measure 31.5 cm square.',
  ],
  ['a seam that nobody states', 'Finished block: 20 cm', '', 'Each block should measure 21.3 cm square.'],
  [
    'a centre and a quilt from their rows',
    'Seams are 7.5 mm. Blocks finish at 25 cm.',
    '',
    'Lay out 6 rows of 5 blocks. The quilt centre should measure 126.5 cm × 151.5 cm.',
    '',
    'Finished size: 125 cm × 150 cm',
  ],
  [
    'a quilt that is rounded, and one with its outer seams',
    'Blocks finish at 12.7 cm. Lay out 6 rows of 5 blocks.',
    '',
    'Finished size: 64 cm × 77 cm',
  ],
  [
    'squares that are cut larger and trimmed, and a spare strip',
    'Seams are 1 cm. Cut the squares 14 cm and trim; they finish at 10 cm.',
    '',
    'Finished quilt: 120 cm × 150 cm.',
    '',
    '## Binding',
    '',
    'Cut 6 strips 6.5 cm × 110 cm.',
  ],
  [
    'a size told with reserve',
    'Blocks finish at 25 cm. Lay out 6 rows of 5 blocks.',
    '',
    'Finished size: about 130 cm × 155 cm',
  ],
];

const BRACKETS = ['Numbers are for the lap quilt, with those for the twin in brackets.', ''];

const WRONG_SIZES: readonly Wrong[] = [
  {
    situation: 'strips in brackets',
    lines: [...BRACKETS, 'Cut 5 (8) strips 2½" × WOF; subcut 72 (160) squares 2½".'],
    code: 'strips-disagree',
    at: '8',
    message:
      'In the size “twin”, 8 strips give at most 136 pieces of 2½", 17 from each length of 44", but 160 are cut from them; that takes 10 strips.',
    against: ['160'],
  },
  {
    situation: 'blocks of the first size in its rows',
    lines: [...BRACKETS, 'Make 24 (30) blocks. Sew them into 5 (6) rows of 4 (5) blocks.'],
    code: 'counts-disagree',
    at: '24',
    message: 'In the size “lap”, 5 rows of 4 make 20 blocks, not 24.',
    against: ['5', '4'],
  },
  {
    situation: 'a column of a table',
    lines: [
      '| | Lap | Queen |',
      '|---|---|---|',
      '| Finished size | 48" × 60" | 88" × 96" |',
      '| Backing | 56" × 68" | 86" × 104" |',
      '| Binding strips, 2¼" × WOF | 6 | 10 |',
    ],
    code: 'not-enough',
    at: '86"',
    message: 'In the size “queen”, the backing of 86" × 104" is smaller than the quilt, which is 88" × 96".',
    against: ['88"', '96"'],
  },
  {
    situation: 'binding for the largest of three',
    lines: [
      'Sizes: lap (twin, queen)',
      '',
      'Finished size: 48" × 60" (64" × 80", 88" × 96")',
      '',
      '## Binding',
      '',
      'Cut 6 (7, 8) strips 2¼" × WOF.',
    ],
    code: 'not-enough',
    at: '8',
    message:
      'In the size “queen”, 8 strips of binding give at most 348½" when joined, and the quilt of 88" × 96" is 368" around.',
    against: ['88"', '96"'],
  },
  {
    situation: 'a number of its own under the heading of a size',
    lines: [
      '# Lap and queen',
      '',
      '## Lap size',
      '',
      'Lay out the 20 blocks in 5 rows of 4 blocks.',
      '',
      '## Queen size',
      '',
      'Lay out the 40 blocks in 6 rows of 7 blocks.',
      '',
      '## All sizes: lap (queen)',
      '',
      'Press.',
    ],
    code: 'counts-disagree',
    at: '40',
    message: 'In the size “queen”, 6 rows of 7 make 42 blocks, not 40.',
    against: ['6', '7'],
  },
];

const RIGHT_SIZES: readonly Right[] = [
  [
    'lists that agree, element by element',
    ...BRACKETS,
    'Finished size: 48" × 60" (64" × 80")',
    '',
    'Cut 5 (8) strips 2½" × WOF; subcut 72 (120) squares 2½".',
    '',
    'Make 20 (30) blocks and sew them into 5 (6) rows of 4 (5) blocks.',
  ],
  [
    'a table with a spare strip and generous backing',
    '| | Lap | Twin | Queen |',
    '|---|---|---|---|',
    '| Finished size | 48" × 60" | 64" × 80" | 88" × 96" |',
    '| Backing | 60" × 72" | 76" × 92" | 100" × 108" |',
    '| Binding strips, 2¼" × WOF | 7 | 8 | 10 |',
  ],
  [
    'a line for one size only',
    ...BRACKETS,
    'Make 20 (30) blocks. Sew them into 5 (6) rows of 4 (5) blocks.',
    '',
    'For the twin only, make 2 blocks more for the pillows.',
  ],
  [
    'numbers that are the same in all sizes',
    ...BRACKETS,
    'Each block uses 4 flying geese. Make 80 (120) flying geese. Make 20 (30) blocks.',
    '',
    'Cut 6 strips 2½" × WOF; subcut 72 (90) squares 2½".',
  ],
  [
    'brackets that stand for another unit, and for what is left over',
    'Sizes: lap (twin)',
    '',
    'Cut 5 (8) strips 2½" × WOF; subcut 85 (136) squares 2½". 5 (12) will be left over.',
    '',
    'Trim to 12½in (32cm).',
  ],
  [
    'sizes that nobody names',
    'The pattern comes in three sizes.',
    '',
    'Cut 5 (8, 11) strips 2½" × WOF; subcut 72 (160, 200) squares 2½".',
  ],
];

describe('a metric manuscript', () => {
  findsTheOneMistake(WRONG_METRIC);
  findsNothing(RIGHT_METRIC);
});

describe('a manuscript for several sizes', () => {
  findsTheOneMistake(WRONG_SIZES);
  findsNothing(RIGHT_SIZES);
});

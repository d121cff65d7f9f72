import { describe } from 'vitest';
import { findsNothing, findsTheOneMistake, type Right, type Wrong } from './cases.ts';

const TOP = 'The quilt top should measure 42½" × 54½".';

const WRONG_BORDERS: readonly Wrong[] = [
  {
    situation: 'the outer sides as long as the inner ones',
    lines: [
      TOP,
      '',
      'Inner border: cut two strips 1½" × 54½" for the sides and two strips 1½" × 44½" for the top and bottom.',
      '',
      'Outer border: cut two strips 4½" × 54½" for the sides and two strips 4½" × 52½" for the top and bottom.',
    ],
    code: 'sizes-disagree',
    at: '54½"',
    message:
      'The border is cut 54½" long, but the sides of the top that it is sewn to are 56½": the top measures 42½" × 54½", and borders cut 1½" wide are sewn on before.',
    against: ['54½"', '1½"'],
  },
  {
    situation: 'top and bottom without the side borders',
    lines: [
      '## Borders',
      '',
      TOP,
      '',
      '1. Cut two strips 3½" × 54½" for the side borders.',
      '2. Cut two strips 3½" × 42½" for the top and bottom borders.',
    ],
    code: 'sizes-disagree',
    at: '42½"',
    message:
      'The border is cut 42½" long, but the ends of the top that it is sewn to are 48½": the top measures 42½" × 54½", and borders cut 3½" wide are sewn on before.',
    against: ['42½"', '3½"'],
  },
  {
    situation: 'the third ring, half an inch short',
    lines: [
      'Your quilt center should measure 30½" square.',
      '',
      '- First border: cut two 2½" x 30½" strips for the sides and two 2½" x 34½" strips for the top and bottom',
      '- Second border: cut two 1½" x 34½" strips for the sides and two 1½" x 36½" strips for the top and bottom',
      '- Third border: cut two 5½" x 36½" strips for the sides and two 5½" x 47" strips for the top and bottom',
    ],
    code: 'sizes-disagree',
    at: '47"',
    message:
      'The border is cut 47" long, but the ends of the top that it is sewn to are 46½": the top measures 30½" square, and borders cut 2½" and 1½" and 5½" wide are sewn on before.',
    against: ['30½"', '2½"', '1½"', '5½"'],
  },
  {
    situation: 'the top as it is measured behind the border',
    lines: [
      TOP,
      '',
      'Cut two strips 3½" × 54½" for the side borders and two strips 3½" × 48½" for the top and bottom borders.',
      '',
      'The quilt top should now measure 48½" × 61½".',
    ],
    code: 'sizes-disagree',
    at: '61½"',
    message: 'With borders cut 3½" wide the top of 42½" × 54½" becomes 48½" × 60½", not 48½" × 61½".',
    against: ['42½"', '54½"', '3½"'],
  },
];

const RIGHT_BORDERS: readonly Right[] = [
  [
    'two rings of borders, sides first',
    TOP,
    '',
    'Inner border: cut two strips 1½" × 54½" for the sides and two strips 1½" × 44½" for the top and bottom.',
    '',
    'Outer border: cut two strips 4½" × 56½" for the sides and two strips 4½" × 52½" for the top and bottom.',
    '',
    'The quilt top should now measure 52½" × 64½".',
  ],
  [
    'borders of which top and bottom go on first',
    TOP,
    '',
    'Cut two strips 3½" × 60½" for the side borders and two strips 3½" × 42½" for the top and bottom borders.',
  ],
  [
    'borders that are cut generously and trimmed to fit',
    TOP,
    '',
    'Cut two strips 3½" × 56" for the side borders and two strips 3½" × 50" for the top and bottom borders. Trim to fit.',
    '',
    'Outer border: cut two strips 5½" × 62" for the sides, trim the excess.',
  ],
  [
    'cornerstones between borders as long as the top',
    TOP,
    '',
    'Cut four corner squares 3½". Cut two strips 3½" × 54½" for the side borders and two strips 3½" × 42½" for the top and bottom borders.',
  ],
  [
    'an outer border that is told of before the inner one',
    TOP,
    '',
    'Outer border: cut two strips 4½" × 56½" for the sides and two strips 4½" × 52½" for the top and bottom.',
    '',
    'Inner border: cut two strips 1½" × 54½" for the sides and two strips 1½" × 44½" for the top and bottom.',
  ],
  [
    'a measure that is repeated before the borders go on',
    TOP,
    '',
    'Cut two strips 3½" × 54½" for the side borders and two strips 3½" × 48½" for the top and bottom borders.',
    '',
    'Before you begin, the quilt top should measure 42½" × 54½".',
  ],
  [
    'optional borders from scraps',
    TOP,
    '',
    'Cut two strips 3½" × 54½" for the side borders and two strips 3½" × 48½" for the top and bottom borders.',
    '',
    'For a scrappy outer border piece leftover strips and cut two about 62" long for the sides.',
  ],
];

const CUTTING = [
  '## Cutting',
  '',
  '- A: 16 squares 2½"',
  '- B: 32 rectangles 2½" × 4½"',
  '',
  '## Piecing',
  '',
];

const WRONG_LABELS: readonly Wrong[] = [
  {
    situation: 'a labelled piece at another size',
    lines: [...CUTTING, 'Sew two 2¾" A squares together, then a B rectangle.'],
    code: 'sizes-disagree',
    at: '2¾"',
    message: 'Piece A is cut 2½", but here it is 2¾".',
    against: ['2½"'],
  },
  {
    situation: 'fewer of a labelled piece than all that are cut',
    lines: [
      'Cut from the blue:',
      '',
      '* 16 squares 2½" (A)',
      '* 32 rectangles 2½" × 4½" (B)',
      '',
      '## Sewing',
      '',
      'Sew all 12 A squares to the B rectangles.',
    ],
    code: 'counts-disagree',
    at: '12',
    message: '16 of piece A are cut, but 12 are sewn here.',
    against: ['16'],
  },
  {
    situation: 'more of a labelled piece than a table cuts',
    lines: [
      '## Cutting',
      '',
      '| Piece | Cut | Size |',
      '|---|---|---|',
      '| A | 16 | 2½" |',
      '| B | 32 | 2½" × 4½" |',
      '',
      '## Piecing',
      '',
      'Sew the 36 B rectangles into pairs.',
    ],
    code: 'counts-disagree',
    at: '36',
    message: '32 of piece B are cut, but 36 are sewn here.',
    against: ['32'],
  },
];

const RIGHT_LABELS: readonly Right[] = [
  ['a step that takes a part of the pieces', ...CUTTING, 'Sew 4 A squares to 8 B rectangles. Make four.'],
  ['pieces that are trimmed', ...CUTTING, 'Trim the A squares to 2¼". The 2" A squares finish small.'],
  [
    'pieces that are cut for each block',
    '## Cutting',
    '',
    'For each block, cut:',
    '',
    '- A: 4 squares 2½"',
    '',
    '## Piecing',
    '',
    'Sew all 48 A squares into pairs.',
  ],
  [
    'letters that are those of fabrics',
    '## Cutting',
    '',
    '- Fabric A: 16 squares 2½"',
    '- Fabric B: 20 squares 3"',
    '',
    '## Piecing',
    '',
    'Sew the 20 B squares around the 2" A squares that are left.',
  ],
  ['spare pieces', ...CUTTING, 'Sew all 14 A squares in a row; two are left over.'],
  [
    'blocks with letters, each with pieces of its own',
    '## Block A: cutting',
    '',
    '- A: 16 squares 2½"',
    '',
    '## Block B',
    '',
    'Sew 20 A squares 3½" in a row.',
  ],
  ['a unit that is named like its piece', ...CUTTING, 'Each A unit should measure 4½". Sew the 4½" squares.'],
];

describe('borders behind one another', () => {
  findsTheOneMistake(WRONG_BORDERS);
  findsNothing(RIGHT_BORDERS);
});

describe('pieces with labels', () => {
  findsTheOneMistake(WRONG_LABELS);
  findsNothing(RIGHT_LABELS);
});

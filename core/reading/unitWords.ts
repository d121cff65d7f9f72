/**
 * How manuscripts call the kinds of units: by the trade's name, or short. Plain squares and rectangles have no name but
 * their shape.
 */

/** By the name of the kind: the source of a regular expression, and an example. */
export const UNIT_WORDS: Readonly<Record<string, { readonly words: string; readonly example: string }>> = {
  'half-square triangles': {
    words: 'half[- ]square[- ]triangles?(?: units?| squares?)?|HSTs?|triangle[- ]squares?|square triangles?',
    example: 'Make 24 «HSTs».',
  },
  'half-square triangle patches': {
    words: 'half[- ]square[- ]triangles?|triangles?',
    example: 'Cut once diagonally for 24 «triangles».',
  },
  'quarter-square triangles': {
    words: 'quarter[- ]square[- ]triangles?|QSTs?|triangles?',
    example: 'Cut twice diagonally for 24 «quarter-square triangles».',
  },
  hourglasses: {
    words: 'hour-?glass(?:es)?(?: units?| blocks?)?|quarter[- ]square[- ]triangle units?|QSTs?',
    example: 'Make 24 «hourglass units».',
  },
  'split quarter-square triangles': {
    words: 'split quarter[- ]square[- ]triangles?|three[- ]patch units?|split QSTs?',
    example: 'Make 24 «split QSTs».',
  },
  'flying geese': {
    words: '(?:flying[- ])?(?:geese|goose)(?: units?)?',
    example: 'Make 24 «flying geese».',
  },
  'square in a square': {
    words: 'squares?[- ]in[- ]a[- ]squares?(?: units?)?|economy units?',
    example: 'Make 24 «square-in-a-square units».',
  },
  'snowball corners': {
    words: 'snowball(?:s| corners?| units?| blocks?)?',
    example: 'Make 24 «snowballs».',
  },
  'strip sets': { words: 'strip[- ]sets?|segments?', example: 'Cut 24 «segments».' },
  '60° triangles': {
    words: '60[°º]?[- ]?(?:degree )?triangles?|equilateral triangles?|triangles?',
    example: 'Cut 24 «triangles».',
  },
  hexagons: { words: 'hexagons?|hexies', example: 'Cut 24 «hexagons».' },
  'half-rectangle triangles': {
    words: 'half[- ]rectangle[- ]triangles?|HRTs?',
    example: 'Make 24 «HRTs».',
  },
  'quarter-circle units': {
    words: 'quarter[- ]circles?(?: units?)?|curved units?|drunkard.s path units?',
    example: 'Make 24 «quarter-circle units».',
  },
  'appliqué shapes': { words: 'appliqu[ée](?: shapes?)?|shapes?', example: 'Cut 24 «shapes».' },
};

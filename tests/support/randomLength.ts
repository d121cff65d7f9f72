import fc from 'fast-check';

/** Lengths from so many inches on, in the unit of the model: 16 to the inch, or 10 to the centimetre. */
export const length = (metric: boolean, from: number, to: number, step = 4): fc.Arbitrary<number> =>
  fc
    .integer({ min: Math.ceil((from * 16) / step), max: Math.floor((to * 16) / step) })
    .map((steps) => (metric ? Math.round((steps * step * 25.4) / 16 / 5) * 5 : steps * step));

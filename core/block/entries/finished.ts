import { one } from '../entry.ts';
import { perSize } from '../values/perSize.ts';
import { shape } from '../values/shape.ts';

export const finished = one(perSize(shape), {
  summary: 'The finished size, or the shape of the edge, of an item that is not built from blocks.',
  example: 'finished: { wall: 36" x 48", throw: 54" x 72" }',
});

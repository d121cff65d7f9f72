/** The rooms of a pattern, in the order of the block: one file per room, one line here. */
import type { Room } from './definition.ts';
import { bindingRoom } from './rooms/binding.ts';
import { blocksRoom } from './rooms/blocks.ts';
import { bordersRoom } from './rooms/borders.ts';
import { fabricsRoom } from './rooms/fabrics.ts';
import { finishedRoom } from './rooms/finished.ts';
import { houseRoom } from './rooms/house.ts';
import { layersRoom } from './rooms/layers.ts';
import { layoutRoom } from './rooms/layout.ts';
import { ownRoom } from './rooms/own.ts';
import { piecesRoom } from './rooms/pieces.ts';
import { pipingRoom } from './rooms/piping.ts';
import { sleeveRoom } from './rooms/sleeve.ts';

export const ROOMS: readonly Room[] = [
  houseRoom,
  blocksRoom,
  piecesRoom,
  layoutRoom,
  bordersRoom,
  finishedRoom,
  bindingRoom,
  pipingRoom,
  layersRoom,
  sleeveRoom,
  fabricsRoom,
  ownRoom,
];

/** The rooms of a pattern, in the order of the block: one file per room, one line here. */
import type { Room } from './definition.ts';
import { bindingRoom } from './rooms/binding.ts';
import { finishedRoom } from './rooms/finished.ts';
import { layersRoom } from './rooms/layers.ts';
import { ownRoom } from './rooms/own.ts';
import { pipingRoom } from './rooms/piping.ts';
import { sleeveRoom } from './rooms/sleeve.ts';

export const ROOMS: readonly Room[] = [
  finishedRoom,
  bindingRoom,
  pipingRoom,
  layersRoom,
  sleeveRoom,
  ownRoom,
];

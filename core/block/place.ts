/** Names of places in the block: `['binding', 'strip']`, `['borders', 0, 'finished']`. */
export type BlockPath = readonly (string | number)[];

/** `binding.strip`: a path as one reads it aloud. */
export function pathText(path: BlockPath): string {
  return path.map((step) => (typeof step === 'number' ? step + 1 : step)).join('.');
}

/** Names of places in the block: `['binding', 'strip']`, `['borders', 0, 'finished']`. */
export type BlockPath = readonly (string | number)[];

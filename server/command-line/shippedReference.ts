/** Address of the reference that is shipped with the program, which is bundled into the folder beside `shared`. */
export const SHIPPED_REFERENCE = new URL('../shared/reference/', import.meta.url).href;

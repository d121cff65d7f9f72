/** The members of each group, in the order in which groups and members come. */
export function groupBy<T, Key>(all: readonly T[], keyOf: (one: T) => Key): Map<Key, [T, ...T[]]> {
  const groups = new Map<Key, [T, ...T[]]>();
  for (const one of all) {
    const key = keyOf(one);
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  return groups;
}

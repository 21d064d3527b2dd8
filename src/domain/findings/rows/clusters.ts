/**
 * Joints that share any tag (a day, a set-up run), directly or through others, form one cluster. Gives each joint the
 * number of its cluster, counted in order of first appearance.
 */
export const clustersOf = (tags: readonly (readonly string[])[]): readonly number[] => {
  const parent = tags.map((_, i) => i);
  const rootOf = (i: number): number => {
    let at = i;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at] as number] as number;
      at = parent[at] as number;
    }
    return at;
  };
  const firstWith = new Map<string, number>();
  tags.forEach((own, i) => {
    for (const tag of own) {
      const first = firstWith.get(tag);
      if (first === undefined) firstWith.set(tag, i);
      else parent[rootOf(i)] = rootOf(first);
    }
  });
  const numbers = new Map<number, number>();
  return tags.map((_, i) => {
    const root = rootOf(i);
    if (!numbers.has(root)) numbers.set(root, numbers.size);
    return numbers.get(root) as number;
  });
};

/** Every number anywhere inside a value. */
export const numbersOf = (value: unknown): number[] => {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
};

/** A value and its limit, each in the coarsest of the writings that tells the two apart; the finest where none does. */
export const toldApart = (
  value: number,
  limit: number,
  writings: readonly ((value: number) => string)[],
): readonly [value: string, limit: string] => {
  const write = writings.find((each) => each(value) !== each(limit)) ?? writings.at(-1) ?? String;
  return [write(value), write(limit)];
};

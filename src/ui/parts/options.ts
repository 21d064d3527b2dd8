/** The keys of a table of words, in its order. */
export const keysOf = <T extends string>(word: Readonly<Record<T, string>>): readonly T[] =>
  Object.keys(word) as T[];

/** A table of words as the options of a choice. */
export const optionsOf = <T extends string>(word: Readonly<Record<T, string>>) =>
  keysOf(word).map((value) => ({ value, word: word[value] }));

/** The option that a form's text names, or undefined: what was chosen lies in a draft as text, perhaps of another version. */
export const oneOf = <T extends string>(options: readonly T[], text: string): T | undefined =>
  options.find((option) => option === text);

/** Every option that a form's text names, with spaces between. */
export const someOf = <T extends string>(options: readonly T[], text: string): readonly T[] => {
  const named = text.split(' ');
  return options.filter((option) => named.includes(option));
};

import { ok, type Result, refuse } from '../result.ts';

/** A text as it was typed, blanks around it left out; it may be empty. Refuses too-long: more than `most` UTF-16 code units. */
export const readText = (field: string, typed: string, most: number): Result<string> => {
  const text = typed.trim();
  return text.length > most ? refuse({ problem: 'too-long', field, length: text.length, most }) : ok(text);
};

/** The same for what needs a name. Refuses empty and too-long. */
export const readName = (field: string, typed: string, most: number): Result<string> =>
  typed.trim() === '' ? refuse({ problem: 'empty', field }) : readText(field, typed, most);

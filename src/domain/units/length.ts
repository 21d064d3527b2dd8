import type { Millimetres } from './brands.ts';

/** A length as someone gave it: exact millimetres to calculate with, and the text it was typed as ("2.474 in", "1 1/2 in"), so that no precision is invented or lost. */
export interface Length {
  readonly mm: Millimetres;
  readonly text: string;
}

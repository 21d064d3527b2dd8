import type { Millimetres } from './brands.ts';

/** A length as someone gave it: exact millimetres to reckon with, and the words it was typed in ("2.474 in", "1 1/2 in"), so that no precision is invented or lost. */
export interface Length {
  readonly mm: Millimetres;
  readonly text: string;
}

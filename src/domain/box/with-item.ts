import type { Box } from './records.ts';
import { nextSeq } from './sequence.ts';

/** A list with this in it: in place of the one of the same id, or at the end. A retry of what was saved unheard adds nothing. */
export const withItem = <T extends { readonly id: string }>(list: readonly T[], item: T): readonly T[] =>
  list.some(({ id }) => id === item.id)
    ? list.map((each) => (each.id === item.id ? item : each))
    : [...list, item];

/** A list without what has this id. */
export const withoutItem = <T extends { readonly id: string }>(
  list: readonly T[],
  gone: string,
): readonly T[] => list.filter(({ id }) => id !== gone);

/** The place of the entry with this id: its own if it is there, so that saving it again moves nothing; else the next one. */
export const seqOf = (box: Box, id: string): number =>
  [box.bore, box.tenon, box.cuts, box.trials, box.seats].flat().find((entry) => entry.id === id)?.seq ??
  nextSeq(box);

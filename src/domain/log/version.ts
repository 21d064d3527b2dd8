import type { Kind, Stored } from '../box/records.ts';
import { canonical } from './canonical.ts';

/**
 * Total order of the versions of one record: rev, then writer, then content. No clock takes part, so two devices that
 * meet in either order agree on the winner. Negative when `a` is older.
 */
export const compareVersions = <K extends Kind>(a: Stored<K>, b: Stored<K>): number =>
  a.rev - b.rev || order(a.writer, b.writer) || order(canonical(a.body), canonical(b.body));

/** Merges two versions: the later one wins, the other is superseded (`loser`, null when both are equal). */
export const mergeVersions = <K extends Kind>(
  a: Stored<K>,
  b: Stored<K>,
): { readonly winner: Stored<K>; readonly loser: Stored<K> | null } => {
  const way = compareVersions(a, b);
  if (way === 0) return { winner: a, loser: null };
  return way > 0 ? { winner: a, loser: b } : { winner: b, loser: a };
};

const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

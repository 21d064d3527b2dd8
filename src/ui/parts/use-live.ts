import { useEffect, useMemo } from 'preact/hooks';
import type { Topic } from '../../app/changes.ts';
import { type Live, live } from '../../app/live.ts';

/** A live query for the life of a component; `key` names it, and a new key asks anew. */
export const useLive = <T>(query: () => Promise<T>, topics: readonly Topic[], key = ''): Live<T> => {
  const [result, stop] = useMemo(() => live(query, topics), [key]);
  useEffect(() => stop, [stop]);
  return result;
};

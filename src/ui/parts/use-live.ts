import { useEffect, useMemo } from 'preact/hooks';
import type { Topic } from '../../app/changes.ts';
import { type Live, live } from '../../app/live.ts';

/**
 * A live query for the life of a component. It is given all it depends on: another `load` or another argument is another query.
 * So `load` stands outside the component; one made while rendering would never come to an answer.
 */
export const useLive = <A extends readonly unknown[], T>(
  load: (...given: A) => Promise<T>,
  topics: readonly Topic[],
  ...given: A
): Live<T> => {
  const [result, stop] = useMemo(() => live(() => load(...given), topics), [load, ...given]);
  useEffect(() => stop, [stop]);
  return result;
};

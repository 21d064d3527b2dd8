import { effect, type ReadonlySignal, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';

/** So long after its last change a signal is taken to rest, ms. */
const REST = 250;

/** Follows a signal at once while the element is in sight; out of sight, when the signal rests or the element comes into sight. */
export const useWhenSeen = <T>(
  of: ReadonlySignal<T>,
  element: RefObject<Element | null>,
): ReadonlySignal<T> => {
  const followed = useSignal(of.peek());
  useEffect(() => {
    let isInSight = false;
    let rest: ReturnType<typeof setTimeout> | undefined;
    const follow = () => {
      followed.value = of.peek();
    };
    const watcher = new IntersectionObserver((entries) => {
      isInSight = entries.at(-1)?.isIntersecting ?? false;
      if (isInSight) follow();
    });
    if (element.current) watcher.observe(element.current);
    const stop = effect(() => {
      clearTimeout(rest);
      if (of.value === followed.peek()) return;
      if (isInSight) follow();
      else rest = setTimeout(follow, REST);
    });
    return () => {
      stop();
      clearTimeout(rest);
      watcher.disconnect();
    };
  }, [of]);
  return followed;
};

// @vitest-environment happy-dom
import { signal } from '@preact/signals';
import { act, cleanup, render, screen } from '@testing-library/preact';
import { useRef } from 'preact/hooks';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { useWhenSeen } from '../../src/ui/parts/use-when-seen.ts';

let comesIntoSight: (isIt: boolean) => void;
beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      constructor(tell: (entries: { isIntersecting: boolean }[]) => void) {
        comesIntoSight = (isIntersecting) => tell([{ isIntersecting }]);
      }
      observe() {}
      disconnect() {}
    },
  );
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const show = () => {
  const of = signal('one');
  const Follows = () => {
    const element = useRef<HTMLParagraphElement>(null);
    return <p ref={element}>{useWhenSeen(of, element).value}</p>;
  };
  render(<Follows />);
  return of;
};
const change = (of: { value: string }, to: string) =>
  act(() => {
    of.value = to;
  });
const pass = (time: number) => act(() => void vi.advanceTimersByTime(time));
const says = (text: string) => expect(screen.queryByText(text)).not.toBeNull();

describe('what follows a signal when it is seen', () => {
  it('follows at once in sight', () => {
    const of = show();
    comesIntoSight(true);
    change(of, 'two');
    says('two');
  });

  it('out of sight waits until the signal rests, and counts from the last change', () => {
    const of = show();
    change(of, 'two');
    pass(200);
    change(of, 'three');
    pass(200);
    says('one');
    pass(100);
    says('three');
  });

  it('is up to date as it comes into sight', () => {
    const of = show();
    change(of, 'two');
    says('one');
    act(() => comesIntoSight(true));
    says('two');
  });
});

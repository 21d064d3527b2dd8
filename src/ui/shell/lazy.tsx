import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { shellWords } from './words.ts';

interface Props<P> {
  readonly load: () => Promise<{ readonly default: ComponentType<P> }>;
  readonly props: P;
  /** Said when the part does not come. */
  readonly missing?: string;
}

/**
 * A part of the app that is loaded when it is first shown. When its file cannot be loaded, it says so and offers to try again.
 * Give it a key: with another key it loads another part.
 */
export const Lazy = <P extends object>({ load, props, missing = shellWords.partMissing }: Props<P>) => {
  const part = useSignal<{ readonly View: ComponentType<P> } | null>(null);
  const failed = useSignal(false);
  const ask = () => {
    failed.value = false;
    load().then(
      (module) => {
        part.value = { View: module.default };
      },
      () => {
        failed.value = true;
      },
    );
  };
  useEffect(ask, []);

  if (failed.value)
    return (
      <main class="page">
        <h1>{missing}</h1>
        <button type="button" onClick={ask}>
          {shellWords.tryAgain}
        </button>
      </main>
    );
  if (!part.value) return <div aria-busy="true" />;
  const { View } = part.value;
  return <View {...props} />;
};

import { type Signal, signal, useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { settings } from '../../app/session.ts';
import { lookForUpdate } from '../../app/updates.ts';
import { holdBusy } from '../../platform/busy.ts';
import type { Voice } from '../../platform/speech.ts';
import { keepAwake, type Waking } from '../../platform/wake-lock.ts';

/** While a set-up is on screen: no update may reload the page, and the screen stays awake if it can. Says whether it does. */
export const useAtTheLathe = (): Signal<Waking> => {
  const waking = useSignal<Waking>('off');
  useEffect(() => {
    const release = holdBusy();
    const sleep = keepAwake((state) => {
      waking.value = state;
    });
    return () => {
      sleep();
      release();
      lookForUpdate();
    };
  }, []);
  return waking;
};

/** How the last step that should have been spoken fared; null while nothing is to be spoken. */
export const spoken = signal<Voice | null>(null);

/** Speaks a step as it comes up, when that is switched on. The voice is no part of the first load. */
export const useSpoken = (sentence: string | null): void => {
  const on = settings.value.speech;
  useEffect(() => {
    if (!on) spoken.value = null;
    if (!on || !sentence) return;
    const loading = import('../../platform/speech.ts');
    loading.then(async ({ speak }) => {
      spoken.value = await speak(sentence);
    });
    return () => {
      loading.then(({ hush }) => hush());
    };
  }, [on, sentence]);
};

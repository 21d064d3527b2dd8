import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { newId } from '../../platform/ids.ts';

/**
 * What a button does, one tap at a time: `busy` while it runs, however it ends. `id` names what the work adds and stays the same
 * until the work has succeeded (resolved to anything but false, undefined or null), so that a retry adds nothing twice.
 */
export const useAct = <A extends readonly unknown[]>(work: (id: string, ...given: A) => Promise<unknown>) => {
  const busy = useSignal(false);
  const id = useRef('');
  const act = async (...given: A): Promise<void> => {
    if (busy.peek()) return;
    busy.value = true;
    id.current ||= newId();
    try {
      if (await work(id.current, ...given)) id.current = '';
    } finally {
      busy.value = false;
    }
  };
  return { busy: busy.value, act };
};

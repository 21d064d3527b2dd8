import { useEffect } from 'preact/hooks';
import { settings } from '../../../app/session.ts';
import { undo } from '../../../app/set-up-run.ts';
import type { Verdict } from '../../../domain/setup/events.ts';

/** f, s, m and backspace beside the native space and enter on Pass. Dead in fields, on repeat, with modifiers, or when switched off. */
export const useLetterKeys = (onVerdict: (verdict: Verdict) => void, onMoved: () => void): void => {
  useEffect(() => {
    const listen = (event: KeyboardEvent) => {
      const isField = (event.target as HTMLElement | null)?.closest?.('input, textarea, select') !== null;
      if (!settings.value.letters || event.repeat || isField) return;
      if (event.ctrlKey || event.altKey || event.metaKey) return;
      if (event.key === 'f') onVerdict('fail');
      else if (event.key === 's') onVerdict('skip');
      else if (event.key === 'm') onMoved();
      else if (event.key === 'Backspace') undo();
      else return;
      event.preventDefault();
    };
    document.addEventListener('keydown', listen);
    return () => document.removeEventListener('keydown', listen);
  });
};

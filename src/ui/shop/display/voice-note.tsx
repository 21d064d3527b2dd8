import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { speak, type Voice } from '../../../platform/speech.ts';
import { voiceWords } from '../../words/voice.ts';

/** Speaks a sample when the spoken steps are switched on, and says so when this phone cannot. */
export const VoiceNote = () => {
  const state = useSignal<Voice | null>(null);
  useEffect(() => {
    speak(voiceWords.sample).then((found) => {
      state.value = found;
    });
  }, []);
  return state.value && <p role="status">{voiceWords[state.value]}</p>;
};

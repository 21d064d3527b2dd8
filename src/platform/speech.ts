/** Whether this phone can read aloud, and if not, why. */
export type Voice = 'ready' | 'no-voice' | 'absent';

/** Voices may load a moment after the page; browsers without any send no event. */
const VOICES_WITHIN_MS = 2_000;

const englishVoice = (): SpeechSynthesisVoice | undefined =>
  speechSynthesis.getVoices().find((voice) => voice.lang.toLowerCase().startsWith('en'));

const waitForVoice = async (): Promise<SpeechSynthesisVoice | undefined> => {
  const there = englishVoice();
  if (there) return there;
  await new Promise<void>((resolve) => {
    const timer = setTimeout(resolve, VOICES_WITHIN_MS);
    speechSynthesis.addEventListener(
      'voiceschanged',
      () => {
        clearTimeout(timer);
        resolve();
      },
      { once: true },
    );
  });
  return englishVoice();
};

export const voice = async (): Promise<Voice> => {
  if (!('speechSynthesis' in globalThis)) return 'absent';
  return (await waitForVoice()) ? 'ready' : 'no-voice';
};

/** Reads a text aloud and stops any reading before it. Resolves when the browser has the text, not when it has been spoken. */
export const speak = async (words: string): Promise<Voice> => {
  if (!('speechSynthesis' in globalThis)) return 'absent';
  const chosen = await waitForVoice();
  if (!chosen) return 'no-voice';
  const utterance = new SpeechSynthesisUtterance(words);
  utterance.voice = chosen;
  utterance.lang = chosen.lang;
  speechSynthesis.cancel();
  speechSynthesis.speak(utterance);
  return 'ready';
};

export const hush = (): void => {
  if ('speechSynthesis' in globalThis) speechSynthesis.cancel();
};

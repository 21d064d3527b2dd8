export type Cue = 'tick' | 'fail' | 'reopened';

/** Notes of a cue: Hz and start in seconds. Low, so that a lathe does not drown them and nobody jumps. */
const NOTES: Readonly<Record<Cue, readonly (readonly [hz: number, at: number])[]>> = {
  tick: [[180, 0]],
  fail: [
    [180, 0],
    [180, 0.14],
  ],
  reopened: [
    [260, 0],
    [160, 0.14],
  ],
};
const LENGTH_S = 0.05;
const LOUDNESS = 0.5;

let context: AudioContext | undefined;

/** Plays a cue. The first call must come from a tap, or the browser stays silent. False when there is no sound here. */
export const click = (cue: Cue): boolean => {
  if (typeof AudioContext === 'undefined') return false;
  context ??= new AudioContext();
  // Phones suspend it in the background.
  if (context.state !== 'running') context.resume().catch(() => {});
  for (const [hz, at] of NOTES[cue]) note(context, hz, context.currentTime + at);
  return true;
};

const note = (on: AudioContext, hz: number, start: number): void => {
  const oscillator = new OscillatorNode(on, { type: 'triangle', frequency: hz });
  const gain = new GainNode(on, { gain: 0 });
  gain.gain.setValueAtTime(LOUDNESS, start);
  gain.gain.exponentialRampToValueAtTime(0.001, start + LENGTH_S);
  oscillator.connect(gain).connect(on.destination);
  oscillator.start(start);
  oscillator.stop(start + LENGTH_S);
};

const BUZZ_MS = 15;

/** A short buzz; false where the phone has none to offer. */
export const buzz = (): boolean => 'vibrate' in navigator && navigator.vibrate(BUZZ_MS);

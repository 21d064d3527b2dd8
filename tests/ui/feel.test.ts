// @vitest-environment happy-dom
import { beforeEach, expect, it, vi } from 'vitest';
import { settings } from '../../src/app/session.ts';
import { feel } from '../../src/ui/set-up/feel.ts';

/** When each note of the fake instrument begins, in ms. */
const notes: number[] = [];
const vibrate = vi.fn(() => true);

class FakeContext {
  readonly state = 'running';
  readonly currentTime = 2;
  readonly destination = {};
}
class FakeOscillator {
  connect = <T>(to: T) => to;
  start = (at: number) => notes.push(Math.round((at - 2) * 1000));
  stop = () => {};
}
class FakeGain {
  readonly gain = { setValueAtTime: () => {}, exponentialRampToValueAtTime: () => {} };
  connect = () => {};
}

beforeEach(() => {
  notes.length = 0;
  vibrate.mockClear();
  vi.stubGlobal('AudioContext', FakeContext);
  vi.stubGlobal('OscillatorNode', FakeOscillator);
  vi.stubGlobal('GainNode', FakeGain);
  Object.assign(navigator, { vibrate });
});
const choose = (sound: boolean, vibration: boolean) => {
  settings.value = { ...settings.value, sound, vibration };
};
/** Longer than a frame and what follows it. */
const settled = () => new Promise((resolve) => setTimeout(resolve, 150));

it.each([
  ['pass', [0]],
  ['skip', [0]],
  ['fail', [0, 140]],
  ['reopened', [0, 140]],
] as const)('%s sounds %j ms after it and buzzes once', async (what, begin) => {
  choose(true, true);
  feel(what);
  expect(notes).toEqual([]);
  await vi.waitFor(() => expect(vibrate).toHaveBeenCalledOnce());
  expect(notes).toEqual(begin);
});

it('each of the two can be off', async () => {
  choose(false, true);
  feel('pass');
  await vi.waitFor(() => expect(vibrate).toHaveBeenCalledOnce());
  expect(notes).toEqual([]);
  choose(true, false);
  feel('pass');
  await vi.waitFor(() => expect(notes).toEqual([0]));
  await settled();
  expect(vibrate).toHaveBeenCalledOnce();
});

it('a phone without either stays silent, and nothing fails', async () => {
  vi.stubGlobal('AudioContext', undefined);
  Reflect.deleteProperty(navigator, 'vibrate');
  choose(true, true);
  feel('pass');
  await settled();
  expect(notes).toEqual([]);
});

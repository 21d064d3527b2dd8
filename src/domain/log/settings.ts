/** How this phone shows things. Belongs to the device, not to a log. */
export interface Settings {
  readonly unit: 'in' | 'mm';
  /** Reading distance in the set-up, cm. */
  readonly distanceCm: number;
  /** CSS pixels per millimetre of glass; null: assumed 160 to the inch. */
  readonly pxPerMm: number | null;
  readonly look: 'auto' | 'day' | 'night';
  readonly sound: boolean;
  readonly vibration: boolean;
  readonly speech: boolean;
  /** Letter keys (f, s, m, backspace) in the set-up. */
  readonly letters: boolean;
  readonly clock: boolean;
}

export const DEFAULT_SETTINGS: Settings = {
  unit: 'in',
  distanceCm: 70,
  pxPerMm: null,
  look: 'auto',
  sound: true,
  vibration: true,
  speech: false,
  letters: true,
  clock: true,
};

import { type Degrees, inchesFromMm, type Millimetres, type Turns, tpiFromPitch } from './brands.ts';

/** How finely to write: digits after the point, or the smallest step in the unit written (1/64 in, 0.05 mm, 2 thou). */
type Fineness = { readonly places: number } | { readonly smallest: number };

/** What stands where there is no number. */
const NOTHING = '—';

const DEFAULT_PLACES = { in: 3, mm: 2, thou: 0 } as const;

const withoutMinusZero = (written: string): string => (/^-[0.]*$/.test(written) ? written.slice(1) : written);
const withoutLastZeros = (written: string): string =>
  written.includes('.') ? written.replace(/\.?0+$/, '') : written;

const placesOf = (step: number): number => {
  let places = 0;
  while (places < 6 && Math.abs(Math.round(step * 10 ** places) / 10 ** places - step) > 1e-9) places += 1;
  return places;
};

const decimal = (value: number, places: number): string =>
  withoutMinusZero(value.toFixed(Math.min(12, Math.max(0, Math.round(places)))));

const isPowerOfTwo = (whole: number): boolean => Number.isInteger(Math.log2(whole));

/** "1 1/2" from 1.5 in parts of `under`, in lowest terms. */
const fraction = (value: number, under: number): string => {
  const parts = Math.round(Math.abs(value) * under);
  const sign = value < 0 && parts > 0 ? '-' : '';
  const whole = Math.floor(parts / under);
  let [over, below] = [parts - whole * under, under];
  while (over > 0 && over % 2 === 0) [over, below] = [over / 2, below / 2];
  if (over === 0) return `${sign}${whole}`;
  return `${sign}${whole > 0 ? `${whole} ` : ''}${over}/${below}`;
};

/** A step of 1/2, 1/4 ... 1/64 is written as a fraction, any other as a decimal. */
const inSteps = (value: number, step: number, asFraction: boolean): string => {
  const under = Math.round(1 / step);
  if (asFraction && step < 1 && isPowerOfTwo(under) && Math.abs(under * step - 1) < 1e-9)
    return fraction(value, under);
  return decimal(Math.round(value / step) * step, placesOf(step));
};

/** Beyond this nothing is a size, and digits would turn into powers of ten. */
const LARGEST = 1e12;

const finely = (value: number, how: Fineness, asFraction: boolean): string => {
  if (!(Math.abs(value) < LARGEST)) return NOTHING;
  if ('places' in how) return decimal(value, Number.isFinite(how.places) ? how.places : 0);
  return how.smallest > 1 / LARGEST && how.smallest < LARGEST
    ? inSteps(value, how.smallest, asFraction)
    : NOTHING;
};

/**
 * A length with its unit: by default inches to 3 places ("2.474 in"), mm to 2, whole thou.
 * `{ smallest: 1 / 64 }` in inches gives workshop fractions ("1 1/2 in"); `{ smallest: 0.05 }` in mm rounds to
 * what a dial can do. Never "-0.000"; a value that is no number is written "—".
 */
export const writeLength = (
  length: Millimetres,
  unit: 'in' | 'mm' | 'thou',
  how: Fineness = { places: DEFAULT_PLACES[unit] },
): string => {
  const value = unit === 'mm' ? length : inchesFromMm(length) * (unit === 'thou' ? 1000 : 1);
  const written = finely(value, how, unit === 'in');
  return written === NOTHING ? NOTHING : `${written} ${unit}`;
};

/** A pitch as it is spoken of, "10 tpi" or "2.5 mm", to at most 3 places and without idle zeros. */
export const writePitch = (pitch: Millimetres, unit: 'tpi' | 'mm'): string => {
  const value = unit === 'mm' ? pitch : tpiFromPitch(pitch);
  return Math.abs(value) < LARGEST ? `${withoutLastZeros(decimal(value, 3))} ${unit}` : NOTHING;
};

/** Turns without the word, "3 1/2", to the nearest eighth by default. */
export const writeTurns = (count: Turns, how: Fineness = { smallest: 1 / 8 }): string =>
  finely(count, how, true);

/** Degrees with their sign, "40°" or "0.5°", to 1 place by default, without trailing zeros. */
export const writeDegrees = (angle: Degrees, how: Fineness = { places: 1 }): string => {
  const written = finely(angle, how, false);
  return written === NOTHING ? NOTHING : `${withoutLastZeros(written)}°`;
};

/** A percentage with its sign, "12 %", whole by default. */
export const writePercent = (percent: number, how: Fineness = { places: 0 }): string => {
  const written = finely(percent, how, false);
  return written === NOTHING ? NOTHING : `${written} %`;
};

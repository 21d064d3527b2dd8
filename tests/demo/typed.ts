import type { Pitch } from '../../src/domain/box/records.ts';
import { inches, type Millimetres, mm, mmFromInches, pitchFromTpi } from '../../src/domain/units/brands.ts';
import type { Length } from '../../src/domain/units/length.ts';
import type { PitchName } from './scenario.ts';

/** A decimal inch as a turner would have typed it: what is kept is what was typed, not what was true. */
export const typedInches = (length: Millimetres, places = 3): Length => {
  const text = (length / 25.4).toFixed(places);
  return { mm: mmFromInches(inches(Number(text))), text: `${text} in` };
};

export const typedMm = (length: number, places = 2): Length => {
  const text = length.toFixed(places);
  return { mm: mm(Number(text)), text: `${text} mm` };
};

export const typedPitch = (name: PitchName): Pitch => ({
  mm: pitchFromTpi(Number.parseInt(name, 10)),
  text: name,
});

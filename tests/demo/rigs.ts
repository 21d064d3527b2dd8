import type { Instrument, OwnWood, Rig } from '../../src/domain/box/records.ts';
import { inches, mm, mmFromInches } from '../../src/domain/units/brands.ts';
import { typedInches, typedMm, typedPitch } from './typed.ts';

const inch = (value: number, places: number) => typedInches(mmFromInches(inches(value)), places);

/** The two lathes of the workshop, with everything about them known. */
export const RIGS = {
  'rig-long': {
    name: 'Long bench',
    cutterRadius: inch(0.5, 1),
    teeth: 1,
    tipFlat: typedMm(0.2, 1),
    tipFlatFrom: 'scrap-pair',
    aheadOfTooth: inch(0.125, 3),
    grip: 'draw-bar',
    travelPerTurn: inch(0.05, 2),
    marksPerTurn: 50,
    slideTravel: inch(3.5, 1),
    recessDial: 'other',
    jigSide: 'front',
    banjos: 2,
    chucks: 2,
    hand: 'right',
    pitch: typedPitch('10 tpi'),
  },
  'rig-short': {
    name: 'Short bench',
    cutterRadius: inch(0.1875, 4),
    teeth: 2,
    tipFlat: typedMm(0.15, 2),
    tipFlatFrom: 'told',
    aheadOfTooth: inch(0.0625, 4),
    grip: 'collet',
    travelPerTurn: inch(0.04, 2),
    marksPerTurn: 40,
    slideTravel: inch(2.5, 1),
    recessDial: 'same',
    jigSide: 'front',
    banjos: 1,
    chucks: 2,
    hand: 'right',
    pitch: typedPitch('16 tpi'),
  },
} as const satisfies Record<string, Rig>;
export type RigId = keyof typeof RIGS;

export const CALIPER: Instrument = { name: 'Shop caliper', insideMinusOutside: { mm: mm(0), text: '0 in' } };

/** A wood that no table has. */
export const PEAR: OwnWood = {
  name: 'Hedge pear',
  group: 'hardwood',
  note: 'From the lane behind the workshop, four years dry.',
};

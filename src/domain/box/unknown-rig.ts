import type { Rig } from './records.ts';

/** A rig about which nothing is known yet: every figure then comes from the stated defaults. */
export const UNKNOWN_RIG: Rig = {
  name: 'My lathe and jig',
  cutterRadius: null,
  teeth: null,
  tipFlat: null,
  tipFlatFrom: null,
  aheadOfTooth: null,
  grip: null,
  travelPerTurn: null,
  marksPerTurn: null,
  slideTravel: null,
  recessDial: null,
  jigSide: null,
  banjos: null,
  chucks: null,
  hand: 'right',
  pitch: null,
};

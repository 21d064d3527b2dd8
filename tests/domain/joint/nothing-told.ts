import type { KnownJoint, TrialFit } from '../../../src/domain/joint/trial-evidence.ts';
import { mm } from '../../../src/domain/units/brands.ts';

export const nothingTold: TrialFit = {
  goingOn: [],
  seated: null,
  threads: [],
  marks: null,
  endPlay: null,
  turnsOn: null,
  afterFinish: false,
};

export const nothingKnown: KnownJoint = {
  pair: null,
  wantedClearance: mm(0.3),
  threads: 3,
  boreTaper: null,
  outOfRound: null,
  tenonTaper: null,
  bottomGap: null,
  film: null,
  wall: null,
  tries: null,
  onJig: null,
  dial: null,
  unit: 'metric',
};

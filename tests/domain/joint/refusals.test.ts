import { describe } from 'vitest';
import {
  deepenForClearance,
  deepenForFading,
  deepenForPlay,
  deepenFromTwoTries,
  impliedTaper,
} from '../../../src/domain/joint/correction.ts';
import { filmLoss } from '../../../src/domain/joint/film.ts';
import { fitOf, pitchDiameter, tenonForClearance } from '../../../src/domain/joint/fit.ts';
import { flankAngleChange, flankShift, leadAngle, rootFillet } from '../../../src/domain/joint/helix.ts';
import { passDepths, passLoads } from '../../../src/domain/joint/passes.ts';
import { planJoint } from '../../../src/domain/joint/plan.ts';
import type { PlanInput } from '../../../src/domain/joint/plan-input.ts';
import { crestFromDepth, depthFromCrest, truncation, vHeight } from '../../../src/domain/joint/profile.ts';
import {
  angleOfFacing,
  mostRemoval,
  planSeat,
  shoulderRemoval,
  toGo,
} from '../../../src/domain/joint/seat.ts';
import { tenonFromCrest, tenonFromDepth, tenonFromEngagement } from '../../../src/domain/joint/sizes.ts';
import { mm, moisture, rad, turns } from '../../../src/domain/units/brands.ts';
import { type At, type Case, testRefusedByName } from './refused-by-name.ts';

const P = 2.54;
const SIXTY = Math.PI / 3;
const form = (at: At) => ({
  pitch: mm(at('pitch')),
  tipFlat: mm(at('tipFlat')),
  includedAngle: rad(at('includedAngle')),
});
const FORM = { pitch: P, tipFlat: 0.2, includedAngle: SIXTY };
const FADING = { endPlay: 0.1, turnsBefore: 1, turnsFree: 2 };
const fading = (at: At) => ({
  endPlay: mm(at('endPlay')),
  turnsBefore: turns(at('turnsBefore')),
  turnsFree: turns(at('turnsFree')),
});
const PAIR = {
  pitch: P,
  includedAngle: SIXTY,
  recess: 40,
  recessDepth: 1.6,
  recessTipFlat: 0.2,
  recessFlankShift: 0.01,
  tenon: 42.4,
  tenonDepth: 1.6,
  tenonTipFlat: 0.2,
  tenonFlankShift: 0.01,
};
const pair = (at: At) => ({
  pitch: mm(at('pitch')),
  includedAngle: rad(at('includedAngle')),
  recess: {
    diameter: mm(at('recess')),
    depth: mm(at('recessDepth')),
    tipFlat: mm(at('recessTipFlat')),
    flankShift: mm(at('recessFlankShift')),
  },
  tenon: {
    diameter: mm(at('tenon')),
    depth: mm(at('tenonDepth')),
    tipFlat: mm(at('tenonTipFlat')),
    flankShift: mm(at('tenonFlankShift')),
  },
});
const { tenon: _, ...withoutTenon } = PAIR;
const WANTED = { recess: 40, wantedClearance: 0.3 };
const wanted = (at: At) => ({
  recess: mm(at('recess')),
  clearance: mm(at('wantedClearance')),
});
const wood = { strain: { radial: 0.00126, tangential: 0.00248 }, grain: 'end' } as const;
const plan = (at: At, by: 'fit' | 'depth'): PlanInput => ({
  ...form(at),
  recess: mm(at('recess')),
  woodOfRecess: wood,
  woodOfTenon: wood,
  moistureSwing: moisture(at('moistureSwing')),
  cutter: {
    radius: mm(at('cutterRadius')),
    tipFlat: mm(at('tipFlat')),
    aheadOfTooth: mm(at('aheadOfTooth')),
    neckRadius: mm(at('neckRadius')),
  },
  aim:
    by === 'fit'
      ? { by, clearance: mm(at('wantedClearance')) }
      : { by, clearance: mm(at('wantedClearance')), depth: mm(at('depth')) },
  recessIn: 'lid',
  threads: at('threads'),
  kerf: mm(at('kerf')),
  film: mm(at('film')),
  outside: mm(at('outside')),
  turnedDepth: mm(at('turnedDepth')),
  passes: 'two-thirds',
  dial: { travelPerTurn: mm(at('travelPerTurn')), marksPerTurn: 50 },
  slide: { travel: mm(at('slideTravel')), recessDial: 'same' },
});
const PLAN = {
  ...FORM,
  ...WANTED,
  moistureSwing: 3,
  cutterRadius: 12,
  aheadOfTooth: 1.9,
  neckRadius: 5,
  threads: 3,
  kerf: 1.6,
  film: 0,
  outside: 60,
  turnedDepth: 20,
  travelPerTurn: 1.27,
  slideTravel: 100,
};

const cases: readonly Case[] = [
  {
    name: 'vHeight',
    good: { pitch: P, includedAngle: SIXTY },
    ask: (at) => vHeight(mm(at('pitch')), rad(at('includedAngle'))),
  },
  {
    name: 'truncation',
    good: { flat: 0.2, includedAngle: SIXTY },
    ask: (at) => truncation(mm(at('flat')), rad(at('includedAngle'))),
  },
  {
    name: 'depthFromCrest',
    good: { ...FORM, crestFlat: 0.4 },
    ask: (at) => depthFromCrest(form(at), mm(at('crestFlat'))),
  },
  {
    name: 'crestFromDepth',
    good: { ...FORM, depth: 1.6 },
    ask: (at) => crestFromDepth(form(at), mm(at('depth'))),
  },
  {
    name: 'tenonFromCrest',
    good: { ...FORM, ...WANTED, crestFlat: 0.45 },
    ask: (at) => tenonFromCrest(form(at), wanted(at), mm(at('crestFlat'))),
  },
  {
    name: 'tenonFromDepth',
    good: { ...FORM, ...WANTED, depth: 1.6 },
    ask: (at) => tenonFromDepth(form(at), wanted(at), mm(at('depth'))),
  },
  {
    name: 'tenonFromEngagement',
    good: { ...FORM, ...WANTED, engagement: 75 },
    ask: (at) => tenonFromEngagement(form(at), wanted(at), at('engagement'), '0.75H'),
  },
  {
    name: 'pitchDiameter',
    good: { ...FORM, diameter: 40, depth: 1.6, flankShift: 0.01 },
    ask: (at) =>
      pitchDiameter(
        'tenon',
        {
          diameter: mm(at('diameter')),
          depth: mm(at('depth')),
          tipFlat: mm(at('tipFlat')),
          flankShift: mm(at('flankShift')),
        },
        mm(at('pitch')),
        rad(at('includedAngle')),
      ),
  },
  { name: 'fitOf', good: PAIR, ask: (at) => fitOf(pair(at)) },
  {
    name: 'tenonForClearance',
    good: { ...withoutTenon, clearance: 0.3 },
    bad: { clearance: 7 },
    ask: (at) =>
      tenonForClearance(
        pair((field) => (field === 'tenon' ? 42 : at(field))),
        mm(at('clearance')),
      ),
  },
  {
    name: 'leadAngle',
    good: { pitch: P, workRadius: 20 },
    ask: (at) => leadAngle(mm(at('pitch')), mm(at('workRadius'))),
  },
  {
    name: 'flankShift',
    good: { pitch: P, workRadius: 20, cutterRadius: 12, includedAngle: SIXTY },
    ask: (at) =>
      flankShift({
        part: 'tenon',
        pitch: mm(at('pitch')),
        workRadius: mm(at('workRadius')),
        cutterRadius: mm(at('cutterRadius')),
        includedAngle: rad(at('includedAngle')),
      }),
  },
  {
    name: 'rootFillet',
    good: { flankShift: 0.01, includedAngle: SIXTY },
    ask: (at) => rootFillet(mm(at('flankShift')), rad(at('includedAngle'))),
  },
  {
    name: 'flankAngleChange',
    good: { pitch: P, workRadius: 20, includedAngle: SIXTY },
    ask: (at) => flankAngleChange(mm(at('pitch')), mm(at('workRadius')), rad(at('includedAngle'))),
  },
  {
    name: 'deepenForClearance',
    good: { clearance: 0, wantedClearance: 0.3 },
    bad: { clearance: -7 },
    ask: (at) => deepenForClearance(mm(at('clearance')), mm(at('wantedClearance'))),
  },
  {
    name: 'deepenForPlay',
    good: { endPlay: 0, wantedPlay: 0.2, includedAngle: SIXTY },
    ask: (at) => deepenForPlay(mm(at('endPlay')), mm(at('wantedPlay')), rad(at('includedAngle'))),
  },
  {
    name: 'deepenFromTwoTries',
    good: { deepened: 0.06, turnsBefore: 1, turnsAfter: 2, wantedClearance: 0.3 },
    ask: (at) =>
      deepenFromTwoTries(
        {
          deepened: mm(at('deepened')),
          turnsBefore: turns(at('turnsBefore')),
          turnsAfter: turns(at('turnsAfter')),
        },
        mm(at('wantedClearance')),
      ),
  },
  {
    name: 'deepenForFading',
    good: { ...FADING, turnsNeeded: 3, playLeft: 0.05, includedAngle: SIXTY },
    ask: (at) =>
      deepenForFading(fading(at), turns(at('turnsNeeded')), mm(at('playLeft')), rad(at('includedAngle'))),
  },
  {
    name: 'impliedTaper',
    good: { ...FADING, pitch: P, includedAngle: SIXTY },
    ask: (at) => impliedTaper(fading(at), mm(at('pitch')), rad(at('includedAngle'))),
  },
  {
    name: 'passDepths',
    good: { ...FORM, depth: 1.6, passes: 3, edgeLoad: 0.1 },
    ask: (at) =>
      passDepths(
        { form: form(at), depth: mm(at('depth')) },
        { by: 'equal-force', passes: at('passes'), edgeLoad: mm(at('edgeLoad')) },
      ),
  },
  {
    name: 'passLoads',
    good: { ...FORM, depth: 1.6, edgeLoad: 0.1 },
    ask: (at) => passLoads({ form: form(at), depth: mm(at('depth')) }, [mm(1), mm(1.6)], mm(at('edgeLoad'))),
  },
  {
    name: 'passLoads, one of its depths',
    good: { depth: 1.6 },
    ask: (at) =>
      passLoads({ form: form((field) => FORM[field as keyof typeof FORM]), depth: mm(1.6) }, [
        mm(at('depth')),
      ]),
  },
  {
    name: 'toGo',
    good: { toGo: 1 },
    ask: (at) => toGo({ toGo: rad(at('toGo')) }, 'figure'),
  },
  {
    name: 'toGo, past',
    good: { overTurned: 1 },
    ask: (at) => toGo({ past: rad(at('overTurned')) }, 'figure'),
  },
  {
    name: 'shoulderRemoval',
    good: { pitch: P, toGo: 1 },
    ask: (at) => shoulderRemoval(mm(at('pitch')), rad(at('toGo'))),
  },
  {
    name: 'angleOfFacing',
    good: { pitch: P, facingError: 0.05 },
    ask: (at) => angleOfFacing(mm(at('pitch')), mm(at('facingError'))),
  },
  {
    name: 'mostRemoval',
    good: { bottomGap: 2, freeThread: 3 },
    ask: (at) => mostRemoval({ bottomGap: mm(at('bottomGap')), freeThread: mm(at('freeThread')) }),
  },
  {
    name: 'planSeat',
    good: { pitch: P, toGo: 1, bottomGap: 2, freeThread: 3 },
    ask: (at) =>
      planSeat(mm(at('pitch')), { toGo: rad(at('toGo')) }, 'figure', {
        bottomGap: mm(at('bottomGap')),
        freeThread: mm(at('freeThread')),
      }),
  },
  {
    name: 'filmLoss',
    good: { film: 0.02, includedAngle: SIXTY },
    ask: (at) => filmLoss(mm(at('film')), rad(at('includedAngle'))),
  },
  { name: 'planJoint, by fit', good: PLAN, ask: (at) => planJoint(plan(at, 'fit')) },
  { name: 'planJoint, by depth', good: { ...PLAN, depth: 1.6 }, ask: (at) => planJoint(plan(at, 'depth')) },
];

describe('whatever is out of range or no number is refused by name', () => testRefusedByName(cases));

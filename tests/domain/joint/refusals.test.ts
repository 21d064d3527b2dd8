import { describe } from 'vitest';
import { filmLoss } from '../../../src/domain/joint/film.ts';
import { fitOf, tenonForClearance } from '../../../src/domain/joint/fit.ts';
import { flankShift } from '../../../src/domain/joint/helix.ts';
import { passDepths } from '../../../src/domain/joint/passes.ts';
import { planJoint } from '../../../src/domain/joint/plan.ts';
import type { PlanInput } from '../../../src/domain/joint/plan-input.ts';
import { crestFromDepth, depthFromCrest } from '../../../src/domain/joint/profile.ts';
import { mostRemoval, planSeat, shoulderRemoval, toGo } from '../../../src/domain/joint/seat.ts';
import { tenonFromDepth, tenonFromEngagement } from '../../../src/domain/joint/sizes.ts';
import { mm, moisture, rad } from '../../../src/domain/units/brands.ts';
import { type At, type Case, testRefusedByName } from './refused-by-name.ts';

const P = 2.54;
const form = (at: At) => ({
  pitch: mm(at('pitch')),
  tipFlat: mm(at('tipFlat')),
});
const FORM = { pitch: P, tipFlat: 0.2 };
const PAIR = {
  pitch: P,
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
    name: 'tenonFromDepth',
    good: { ...FORM, ...WANTED, depth: 1.6 },
    ask: (at) => tenonFromDepth(form(at), wanted(at), mm(at('depth'))),
  },
  {
    name: 'tenonFromEngagement',
    good: { ...FORM, ...WANTED, engagement: 75 },
    ask: (at) => tenonFromEngagement(form(at), wanted(at), at('engagement'), '0.75H'),
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
    name: 'flankShift',
    good: { pitch: P, workRadius: 20, cutterRadius: 12 },
    ask: (at) =>
      flankShift({
        part: 'tenon',
        pitch: mm(at('pitch')),
        workRadius: mm(at('workRadius')),
        cutterRadius: mm(at('cutterRadius')),
      }),
  },
  {
    name: 'passDepths',
    good: { ...FORM, depth: 1.6, passes: 3 },
    ask: (at) =>
      passDepths({ form: form(at), depth: mm(at('depth')) }, { by: 'equal-area', passes: at('passes') }),
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
    name: 'mostRemoval',
    good: { bottomGap: 2, freeThread: 3 },
    ask: (at) => mostRemoval({ bottomGap: mm(at('bottomGap')), freeThread: mm(at('freeThread')) }),
  },
  {
    name: 'planSeat',
    good: { pitch: P, toGo: 1, bottomGap: 2, freeThread: 3 },
    ask: (at) =>
      planSeat(
        mm(at('pitch')),
        { toGo: rad(at('toGo')) },
        'figure',
        {
          bottomGap: mm(at('bottomGap')),
          freeThread: mm(at('freeThread')),
        },
        mm(0.05),
      ),
  },
  {
    name: 'filmLoss',
    good: { film: 0.02 },
    ask: (at) => filmLoss(mm(at('film'))),
  },
  { name: 'planJoint, by fit', good: PLAN, ask: (at) => planJoint(plan(at, 'fit')) },
  { name: 'planJoint, by depth', good: { ...PLAN, depth: 1.6 }, ask: (at) => planJoint(plan(at, 'depth')) },
];

describe('whatever is out of range or no number is refused by name', () => testRefusedByName(cases));

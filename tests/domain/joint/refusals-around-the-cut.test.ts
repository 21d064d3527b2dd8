import { describe } from 'vitest';
import { boreOf } from '../../../src/domain/box/measured.ts';
import { tenonForBore } from '../../../src/domain/joint/bore.ts';
import { clearanceBudget, leastWall, usualClearance } from '../../../src/domain/joint/clearance.ts';
import { dialTarget } from '../../../src/domain/joint/dial.ts';
import { engagementPercent, usualEngagement } from '../../../src/domain/joint/engagement.ts';
import { targetFor } from '../../../src/domain/joint/fit-target.ts';
import { neckFor, recessForShift } from '../../../src/domain/joint/largest-cutter.ts';
import { checkTenon } from '../../../src/domain/joint/tenon-check.ts';
import { learnTipFlat } from '../../../src/domain/joint/tip-flat.ts';
import { mm, rad } from '../../../src/domain/units/brands.ts';
import { type At, type Case, testRefusedByName } from './refused-by-name.ts';

const P = 2.54;
const cut = { depth: mm(1.6), tipFlat: mm(0.2) };
const planned = (tenon: number) => ({
  pitch: mm(P),
  recess: { ...cut, diameter: mm(40) },
  tenon: { ...cut, diameter: mm(tenon) },
});
const bore = (at: At) => ({
  mean: mm(at('recess')),
  outOfRound: null,
  taper: null,
  least: mm(at('recess')),
  overCrests: false,
  uncertainty: mm(at('uncertainty')),
});
const caliper = (at: At) => ({
  insideMinusOutside: mm(at('insideMinusOutside')),
  uncertainty: mm(at('uncertainty')),
});
const CALIPER = { insideMinusOutside: -0.06, uncertainty: 0.03 };

const cases: readonly Case[] = [
  {
    name: 'boreOf',
    good: { along: 40, across: 40.1, ...CALIPER },
    bad: { insideMinusOutside: 3 },
    ask: (at) =>
      boreOf(
        [
          { where: 'mouth', along: mm(40), across: null, overCrests: false },
          { where: 'relief', along: mm(at('along')), across: mm(at('across')), overCrests: false },
        ],
        caliper(at),
      ),
  },
  {
    name: 'tenonForBore',
    good: { recess: 40, allowance: 2.47, wantedClearance: 0.3, ...CALIPER },
    bad: { insideMinusOutside: 3 },
    ask: (at) => tenonForBore(bore(at), mm(at('allowance')), mm(at('wantedClearance')), caliper(at)),
  },
  { name: 'usualClearance', good: { pitch: P }, ask: (at) => usualClearance(mm(at('pitch'))) },
  { name: 'leastWall', good: { pitch: P }, ask: (at) => leastWall(mm(at('pitch'))) },
  {
    name: 'clearanceBudget',
    good: {
      runningClearance: 0.1,
      ovalMovement: 0.1,
      engagedHeight: 1.2,
      mismatch: 0.01,
      film: 0.02,
      recessFlankShift: 0.01,
      tenonFlankShift: 0.01,
    },
    ask: (at) =>
      clearanceBudget({
        runningClearance: mm(at('runningClearance')),
        ovalMovement: mm(at('ovalMovement')),
        engagedHeight: mm(at('engagedHeight')),
        mismatch: rad(at('mismatch')),
        film: mm(at('film')),
        recessFlankShift: mm(at('recessFlankShift')),
        tenonFlankShift: mm(at('tenonFlankShift')),
      }),
  },
  {
    name: 'dialTarget',
    good: { depth: 1.6, travelPerTurn: 1.27, marksPerTurn: 50 },
    ask: (at) =>
      dialTarget(mm(at('depth')), {
        travelPerTurn: mm(at('travelPerTurn')),
        marksPerTurn: at('marksPerTurn'),
      }),
  },
  {
    name: 'engagementPercent',
    good: { engagedHeight: 1.2, pitch: P },
    ask: (at) => engagementPercent(mm(at('engagedHeight')), '0.75H', mm(at('pitch'))),
  },
  { name: 'usualEngagement', good: { pitch: P }, ask: (at) => usualEngagement(mm(at('pitch'))) },
  { name: 'targetFor', good: { wantedClearance: 0.3 }, ask: (at) => targetFor(mm(at('wantedClearance'))) },
  {
    name: 'recessForShift',
    good: { pitch: P, cutterRadius: 12, largestShift: 0.02 },
    ask: (at) => recessForShift(mm(at('pitch')), mm(at('cutterRadius')), mm(at('largestShift'))),
  },
  {
    name: 'neckFor',
    good: { cutterRadius: 12, depth: 1.6, margin: 0.5 },
    ask: (at) => neckFor(mm(at('cutterRadius')), mm(at('depth')), mm(at('margin'))),
  },
  {
    name: 'checkTenon, the measured tenon',
    good: { tenon: 42.4, tolerance: 0.05 },
    ask: (at) => checkTenon({ mean: mm(at('tenon')), taper: null }, planned(42.4), mm(at('tolerance'))),
  },
  {
    name: 'checkTenon, the planned tenon',
    good: { tenon: 42.4 },
    ask: (at) => checkTenon({ mean: mm(42.4), taper: null }, planned(at('tenon')), mm(0.05)),
  },
  {
    name: 'learnTipFlat',
    good: {
      pitch: P,
      recess: 40,
      tenon: 42.4747,
      recessDepth: 1.633,
      tenonDepth: 1.633,
      endPlay: 0.2,
      flankShift: 0.01,
      uncertainty: 0.03,
    },
    ask: (at) =>
      learnTipFlat({
        pitch: mm(at('pitch')),
        recess: mm(at('recess')),
        tenon: mm(at('tenon')),
        recessDepth: mm(at('recessDepth')),
        tenonDepth: mm(at('tenonDepth')),
        endPlay: mm(at('endPlay')),
        flankShifts: mm(at('flankShift')),
        uncertainty: mm(at('uncertainty')),
      }),
  },
];

describe('whatever is out of range or no number is refused by name', () => testRefusedByName(cases));

import { judgeLean, judgeSeat, judgeTilt } from '../../src/domain/alignment/judge-setting.ts';
import { axialPlay } from '../../src/domain/alignment/play.ts';
import { slipAbsorbed } from '../../src/domain/alignment/slip.ts';
import type { AlignedJoint } from '../../src/domain/alignment/tolerance.ts';
import { squareLimits, tiltLimit } from '../../src/domain/alignment/tolerance.ts';
import { jointUnder, type KnownPair } from '../../src/domain/box/joint-under.ts';
import { boreOf } from '../../src/domain/box/measured.ts';
import { diagnose } from '../../src/domain/diagnosis/diagnose.ts';
import type { DiagnosisView } from '../../src/domain/diagnosis/view.ts';
import { fitOf } from '../../src/domain/joint/fit.ts';
import { targetFor } from '../../src/domain/joint/fit-target.ts';
import { flankShift } from '../../src/domain/joint/helix.ts';
import { passDepths } from '../../src/domain/joint/passes.ts';
import { planJoint } from '../../src/domain/joint/plan.ts';
import type { PlanInput } from '../../src/domain/joint/plan-input.ts';
import { planSeat } from '../../src/domain/joint/seat.ts';
import { tenonFromDepth, tenonFromEngagement } from '../../src/domain/joint/sizes.ts';
import { checkTenon } from '../../src/domain/joint/tenon-check.ts';
import { learnTipFlat } from '../../src/domain/joint/tip-flat.ts';
import type { Result } from '../../src/domain/result.ts';
import { mm, moisture, rad } from '../../src/domain/units/brands.ts';

const pitch = mm(2.54);
const form = { pitch, tipFlat: mm(0.2) };
const cut = { depth: mm(1.633), tipFlat: mm(0.2) };
const pair = {
  pitch,
  recess: { ...cut, diameter: mm(40) },
  tenon: { ...cut, diameter: mm(42.4747) },
};
const wanted = { recess: mm(40), clearance: mm(0.35) };
const cherry = { strain: { radial: 0.00126, tangential: 0.00248 }, grain: 'end' } as const;
const input: PlanInput = {
  recess: mm(40),
  pitch,
  woodOfRecess: cherry,
  woodOfTenon: cherry,
  moistureSwing: moisture(3),
  cutter: { radius: mm(12.7), tipFlat: mm(0.2), aheadOfTooth: mm(2), neckRadius: mm(8) },
  aim: { by: 'fit', clearance: null },
  recessIn: 'lid',
  threads: 3,
  kerf: mm(1.6),
  film: mm(0.02),
  outside: mm(60),
  turnedDepth: null,
  passes: 'equal-area',
  dial: { travelPerTurn: mm(1.27), marksPerTurn: 50 },
  slide: { travel: mm(80), recessDial: 'other' },
};
const aligned: AlignedJoint = {
  pitch,
  hand: 'right',
  opening: mm(40),
  tenon: mm(42.4747),
  depth: mm(1.633),
  clearance: mm(0.35),
  threads: 3,
  cutterRadius: mm(12.7),
  shoulder: mm(50),
};
const angle = { angle: rad(0.009), uncertainty: rad(0.001) };
const question = {
  joint: aligned,
  part: 'tenon',
  measured: angle,
  other: { known: 'measured', measured: angle, sameWay: null },
  together: 'worst-case',
} as const;
const ordinary = { ...cherry.strain, crumbles: 0.3, furs: 0.3 };
const view: DiagnosisView = {
  joint: {
    pitch,
    wanted: mm(0.35),
    threads: 3,
    cutterRadius: mm(12.7),
    tipFlat: mm(0.2),
    tipFlatUncertainty: mm(0.08),
    bore: mm(40),
    boreUncertainty: mm(0.04),
    tenon: mm(42.4747),
    tenonUncertainty: mm(0.04),
    depth: { recess: mm(1.633), tenon: mm(1.633) },
    plannedDepth: mm(1.633),
    flankShift: { recess: mm(0), tenon: mm(0) },
    boreTaper: mm(0.05),
    tenonTaper: mm(0),
    outOfRound: mm(0.05),
    bottomGap: mm(2),
    wall: mm(5),
    leastWall: mm(3),
    wood: { recess: ordinary, tenon: ordinary },
    learned: null,
  },
  bench: {
    unit: 'inch',
    dial: { travelPerTurn: mm(1.27), marksPerTurn: 50 },
    onJig: 'tenon',
    holds: true,
    finished: false,
  },
  log: { missed: [], done: [], moved: [] },
  trials: [
    {
      right: false,
      goingOn: ['drags-more-each-turn', 'stiff-all-the-way'],
      seated: 'open-one-side',
      threads: ['furry'],
      marks: { on: 'crest', at: 'all-along' },
      endPlay: mm(0.05),
      turnsOn: 2,
      bottomGap: null,
      crestFlat: null,
      afterFinish: false,
      moves: [],
    },
  ],
  seed: 1,
};
const gotten = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};
const known: KnownPair = {
  pair,
  isReal: { recess: { diameter: true, depth: true }, tenon: { diameter: true, depth: true } },
  leans: { recess: angle, tenon: angle, isOneSetting: true, together: 'doubles' },
  sides: { recess: 1, tenon: 1 },
  asItIs: {
    slimmer: mm(0),
    deeper: mm(0),
    lean: { recess: rad(0.009), tenon: rad(0.009) },
    moisture: moisture(3),
  },
  woods: { recess: cherry, tenon: cherry },
  swing: moisture(3),
  target: gotten(targetFor(mm(0.35))),
};

const every: Readonly<Record<string, () => Result<unknown>>> = {
  'whole plan, by fit': () => planJoint(input),
  'whole plan, by the dial': () =>
    planJoint({ ...input, aim: { by: 'depth', depth: mm(1.7), clearance: null } }),
  'tenon from engagement': () => tenonFromEngagement(form, wanted, 75, '0.75H'),
  'tenon from depth': () => tenonFromDepth(form, wanted, mm(1.633)),
  'fit of a pair': () => fitOf(pair),
  'measured tenon against the plan': () => checkTenon({ mean: mm(42.6), taper: null }, pair, mm(0.05)),
  'bore from its readings': () =>
    boreOf(
      [
        { where: 'mouth', along: mm(40), across: mm(40.05), overCrests: false },
        { where: 'relief', along: mm(39.95), across: mm(40), overCrests: false },
      ],
      { insideMinusOutside: mm(0.02), uncertainty: mm(0.03) },
    ),
  'tip flat from a scrap pair': () =>
    learnTipFlat({
      pitch,
      recess: mm(40),
      tenon: mm(42.4747),
      recessDepth: mm(1.633),
      tenonDepth: mm(1.633),
      endPlay: mm(0.2),
    }),
  'helix widening': () => flankShift({ part: 'recess', pitch, workRadius: mm(20), cutterRadius: mm(12) }),
  'passes, equal area': () => passDepths({ form, depth: mm(1.633) }, { by: 'equal-area', passes: 3 }),
  'seat and grain': () =>
    planSeat(pitch, { toGo: rad(1) }, 'figure', { bottomGap: mm(3), freeThread: mm(3) }, mm(0.05)),
  'diagnosis of a trial fit': () => diagnose(view),
  'play under lean': () =>
    axialPlay({
      pitch,
      recess: { ...pair.recess, lean: rad(0.02) },
      tenon: { ...pair.tenon, lean: rad(0.02) },
    }),
  'limit of tilt': () => tiltLimit(aligned, 'recess'),
  'limit of re-chucking': () => squareLimits(aligned),
  'slip of a pass': () => slipAbsorbed(mm(1.633), mm(1.1)),
  'judging a lean': () => judgeLean(question),
  'judging a tilt': () => judgeTilt(question),
  'judging a seat': () => judgeSeat(question),
  'joint under a season and leans': () => jointUnder(known, known.asItIs),
};

/** What the app reckons for a joint, each with an ordinary question that it must answer. */
export const calculations: Readonly<Record<string, () => void>> = Object.fromEntries(
  Object.entries(every).map(([name, calculate]) => [name, () => void gotten(calculate())]),
);

/**
 * Worked values of the joint's closed forms, made by an independent implementation and, where marked so in the table, by brute-force
 * simulation: shared/joint-vectors.json. Every vector of the items below must be run.
 */
import { expect, test } from 'vitest';
import table from '../../shared/joint-vectors.json' with { type: 'json' };
import { clearanceBudget } from '../../src/domain/joint/clearance.ts';
import {
  deepenForFading,
  deepenForPlay,
  deepenFromTwoTries,
  impliedTaper,
} from '../../src/domain/joint/correction.ts';
import { dialTarget } from '../../src/domain/joint/dial.ts';
import { filmLoss } from '../../src/domain/joint/film.ts';
import { fitOf } from '../../src/domain/joint/fit.ts';
import { flankAngleChange, flankShift, leadAngle, rootFillet } from '../../src/domain/joint/helix.ts';
import { cutterForLean, cutterForShift, recessForShift } from '../../src/domain/joint/largest-cutter.ts';
import { passDepths, passLoads } from '../../src/domain/joint/passes.ts';
import { depthFromCrest, truncation, vHeight } from '../../src/domain/joint/profile.ts';
import { feedPerTooth, scallopHeight } from '../../src/domain/joint/scallops.ts';
import { shoulderRemoval } from '../../src/domain/joint/seat.ts';
import { type JointSizes, tenonFromCrest, tenonFromEngagement } from '../../src/domain/joint/sizes.ts';
import type { Result } from '../../src/domain/result.ts';
import { degreesFromRad, mm, moisture, pitchFromTpi, rad, turns } from '../../src/domain/units/brands.ts';
import { equilibriumMoisture } from '../../src/domain/wood/equilibrium-moisture.ts';
import { clearanceForMovement, leastClearance } from '../../src/domain/wood/movement.ts';

const ITEMS = ['1', '2', '8', '9', '10', '11'];
const vectors = table.vectors.filter(({ item }) => ITEMS.includes(item));

/** The inputs of one vector: numbers by name, unless asked for otherwise. */
class Given {
  private readonly inputs: Record<string, unknown>;
  constructor(inputs: Record<string, unknown>) {
    this.inputs = inputs;
  }
  number(name: string): number {
    const value = this.inputs[name];
    if (typeof value !== 'number') throw new Error(`no number ${name}`);
    return value;
  }
  mm(name: string) {
    return mm(this.number(name));
  }
  list(name: string): number[] {
    return this.inputs[name] as number[];
  }
  flag(name: string): boolean {
    return this.inputs[name] === true;
  }
  angle(name: string) {
    return rad((this.number(name) * Math.PI) / 180);
  }
}

type Answer = number | readonly number[];

const got = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.error)}`);
  return result.value;
};
const inDegrees = (result: Result<ReturnType<typeof rad>>): number => degreesFromRad(got(result));
const part = (external: boolean) => (external ? 'tenon' : 'recess') as 'tenon' | 'recess';
const form = (g: Given) => ({ pitch: g.mm('P'), tipFlat: g.mm('f') });
const groove = (g: Given, depth: number) => ({
  form: { pitch: mm(6), tipFlat: g.mm('f') },
  depth: mm(depth),
});
const wood = (of: readonly number[]) => {
  const [radial = 0, tangential = 0, change = 0] = of;
  return { strain: { radial, tangential }, grain: 'end' as const, change: moisture(change) };
};
const sizesOf = (sizes: JointSizes) => ({
  he: sizes.engagedHeight,
  Dt: sizes.tenon,
  k: sizes.crestFlat,
  d: sizes.depth,
  crestGap: sizes.crestGap,
  backlash: sizes.endPlay,
  flankLength: sizes.flankLength,
  E75: sizes.percentOf75,
  E58: sizes.percentOf62,
});

const runners: Record<string, (g: Given) => Record<string, Answer>> = {
  sharpV: (g) => {
    const pitch = pitchFromTpi(g.number('tpi'));
    return { P: pitch, H: got(vHeight(pitch)) };
  },
  depthOfCut: (g) => ({
    d: got(depthFromCrest(form(g), g.mm('k'))),
    H: got(vHeight(g.mm('P'))),
    rootTrunc: got(truncation(g.mm('f'))),
    crestTrunc: got(truncation(g.mm('k'))),
  }),
  threadFromEngagement: (g) => ({
    ...sizesOf(
      got(tenonFromEngagement(form(g), { recess: g.mm('Dr'), clearance: g.mm('c') }, g.number('E'), '0.75H')),
    ),
    H: got(vHeight(g.mm('P'))),
  }),
  threadFromCrest: (g) =>
    sizesOf(got(tenonFromCrest(form(g), { recess: g.mm('Dr'), clearance: g.mm('c') }, g.mm('k')))),
  fit: (g) => {
    const value = got(
      fitOf({
        pitch: g.mm('P'),
        recess: { diameter: g.mm('Dr'), depth: g.mm('df'), tipFlat: g.mm('ff') },
        tenon: { diameter: g.mm('Dt'), depth: g.mm('dm'), tipFlat: g.mm('fm') },
      }),
    );
    return {
      c: value.clearance,
      backlash: value.endPlay,
      gapMajor: value.tenonCrestGap,
      gapMinor: value.recessCrestGap,
      he: value.engagedHeight,
    };
  },
  dialRevs: (g) => {
    const revs = got(dialTarget(g.mm('d'), { travelPerTurn: g.mm('Lx') })).turns;
    return { revs, degrees: revs * 360 };
  },
  equalAreaDepths: (g) => ({
    depths: got(passDepths(groove(g, g.number('d')), { by: 'equal-area', passes: g.number('N') })),
  }),
  equalForceDepths: (g) => ({
    depths: got(
      passDepths(groove(g, g.number('d')), {
        by: 'equal-force',
        passes: g.number('N'),
        edgeLoad: g.mm('w'),
      }),
    ),
  }),
  passLoads: (g) => ({
    loads: got(passLoads(groove(g, g.list('depths').at(-1) ?? 0), g.list('depths').map(mm), g.mm('w'))),
  }),
  feedPerTooth: (g) => ({
    fz: got(
      feedPerTooth({
        workRadius: g.mm('r'),
        crankSpeed: g.number('crankRpm'),
        cutterSpeed: g.number('cutterRpm'),
        teeth: g.number('teeth'),
      }),
    ),
  }),
  scallop: (g) => ({
    h: got(scallopHeight(part(g.flag('external')), g.mm('fz'), g.mm('Rc'), g.mm('r'))),
  }),
  flankShiftSimple: (g) => ({
    shift: got(
      flankShift({
        part: part(g.flag('external')),
        pitch: g.mm('P'),
        workRadius: g.mm('r'),
        cutterRadius: g.mm('Rc'),
      }),
    ),
    leadDeg: inDegrees(leadAngle(g.mm('P'), g.mm('r'))),
  }),
  rootFillet: (g) => {
    const shift = got(
      flankShift({
        part: part(g.flag('external')),
        pitch: g.mm('P'),
        workRadius: g.mm('r'),
        cutterRadius: g.mm('Rc'),
      }),
    );
    return { ...got(rootFillet(shift)) };
  },
  flankAngleChange: (g) => ({ deg: inDegrees(flankAngleChange(g.mm('P'), g.mm('r'))) }),
  rcMaxInternal: (g) => ({ Rc: got(cutterForShift(g.mm('P'), g.mm('r'), g.mm('shiftMax'))) }),
  rMinInternal: (g) => ({ r: got(recessForShift(g.mm('P'), g.mm('Rc'), g.mm('shiftMax'))) }),
  rcMaxYawInternal: (g) => ({ Rc: got(cutterForLean(g.mm('r'), g.angle('leanDeg'))) }),
  ovalMinClearance: (g) => {
    const piece = wood([g.number('CR'), g.number('CT'), g.number('dMC')]);
    return {
      min: got(leastClearance(g.mm('c'), g.mm('D'), piece, piece, g.angle('chiDeg'))),
      required: got(clearanceForMovement(g.mm('D'), piece, piece)),
    };
  },
  ovalRequiredMixed: (g) => ({
    required: got(clearanceForMovement(g.mm('D'), wood(g.list('female')), wood(g.list('male')))),
  }),
  emc: (g) => ({ emc: got(equilibriumMoisture(g.number('tC'), 100 * g.number('rh'))) }),
  shoulderRemoval: (g) => ({ remove: got(shoulderRemoval(g.mm('P'), g.angle('chiDeg'))) }),
  extraDepthFromBacklash: (g) => {
    const dd = got(deepenForPlay(g.mm('Bmeas'), g.mm('Btarget')));
    const dialRevs = got(dialTarget(dd, { travelPerTurn: g.mm('Lx') })).turns;
    return { dd, dialRevs, dialDeg: dialRevs * 360 };
  },
  secantDepth: (g) => ({
    dd: got(
      deepenFromTwoTries(
        {
          deepened: g.mm('dd1'),
          turnsBefore: turns(g.number('k1')),
          turnsAfter: turns(g.number('k2')),
        },
        g.mm('cTarget'),
      ),
    ),
  }),
  bindLinear: (g) => ({ dd: got(deepenForFading(fading(g), turns(g.number('n')), g.mm('Bres'))) }),
  impliedTaper: (g) => ({ deg: inDegrees(impliedTaper(fading(g), g.mm('P'))) }),
  filmClearanceLoss: (g) => ({ loss: got(filmLoss(g.mm('tf'))).clearance }),
  clearanceBudget: (g) => {
    const piece = wood([g.number('CR'), g.number('CT'), g.number('dMC')]);
    const budget = got(
      clearanceBudget({
        runningClearance: g.mm('cRun'),
        ovalMovement: got(clearanceForMovement(g.mm('D'), piece, piece)),
        engagedHeight: g.mm('he'),
        mismatch: g.angle('mismatchDeg'),
        film: g.mm('film'),
        tenonFlankShift: g.mm('shiftMale'),
        recessFlankShift: g.mm('shiftFemale'),
      }),
    );
    return {
      oval: budget.oval,
      yaw: budget.mismatch,
      film: budget.film,
      helixCredit: budget.helix,
      cCut: budget.toCut,
    };
  },
};

const fading = (g: Given) => ({
  endPlay: g.mm('B1'),
  turnsBefore: turns(g.number('j1')),
  turnsFree: turns(g.number('k')),
});

const close = (actual: number, wanted: number): boolean =>
  Math.abs(actual - wanted) <= 1e-5 * Math.max(Math.abs(wanted), 1e-9);

const flat = (answer: Answer | undefined): readonly number[] =>
  answer === undefined ? [] : typeof answer === 'number' ? [answer] : answer;

test('the table still holds the items this file answers for', () => {
  expect(vectors).toHaveLength(41);
  expect([...new Set(vectors.map(({ item }) => item))].sort()).toEqual([...ITEMS].sort());
  expect(vectors.filter(({ kind }) => kind !== 'closed-form')).toEqual([]);
});

test.each(vectors.map((vector) => [vector.id, vector] as const))('%s', (_id, { fn, inputs, outputs }) => {
  const run = runners[fn];
  if (!run) throw new Error(`no runner for ${fn}`);
  const answer = run(new Given(inputs));
  const wrong = Object.entries(outputs as Record<string, Answer>).filter(([name, wanted]) => {
    const actual = flat(answer[name]);
    const expected = flat(wanted);
    return (
      actual.length !== expected.length || expected.some((value, i) => !close(actual[i] ?? Number.NaN, value))
    );
  });
  expect(wrong, `answered ${JSON.stringify(answer)}`).toEqual([]);
});

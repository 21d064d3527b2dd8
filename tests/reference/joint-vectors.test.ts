/**
 * Worked values of the joint's closed forms, made by an independent implementation and, where marked so in the table, by brute-force
 * simulation: shared/joint-vectors.json. All are of the 60 degree thread, the only
 * one modelled. Every vector of the items below must be run.
 */
import { expect, test } from 'vitest';
import table from '../../shared/joint-vectors.json' with { type: 'json' };
import { clearanceBudget } from '../../src/domain/joint/clearance.ts';
import { dialTarget } from '../../src/domain/joint/dial.ts';
import { filmLoss } from '../../src/domain/joint/film.ts';
import { fitOf } from '../../src/domain/joint/fit.ts';
import { flankShift } from '../../src/domain/joint/helix.ts';
import { recessForShift } from '../../src/domain/joint/largest-cutter.ts';
import { passDepths } from '../../src/domain/joint/passes.ts';
import { depthFromCrest } from '../../src/domain/joint/profile.ts';
import { shoulderRemoval } from '../../src/domain/joint/seat.ts';
import { type JointSizes, tenonFromDepth, tenonFromEngagement } from '../../src/domain/joint/sizes.ts';
import type { Result } from '../../src/domain/result.ts';
import { type Millimetres, mm, moisture, pitchFromTpi, rad } from '../../src/domain/units/brands.ts';
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
/** Height of the sharp V: what a sharp tip cuts that leaves no crest. */
const sharpV = (pitch: Millimetres) => got(depthFromCrest({ pitch, tipFlat: mm(0) }, mm(0)));
/** What a flat cuts off the sharp V. */
const truncation = (pitch: Millimetres, flat: Millimetres) =>
  sharpV(pitch) - got(depthFromCrest({ pitch, tipFlat: flat }, mm(0)));
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
    return { P: pitch, H: sharpV(pitch) };
  },
  depthOfCut: (g) => ({
    d: got(depthFromCrest(form(g), g.mm('k'))),
    H: sharpV(g.mm('P')),
    rootTrunc: truncation(g.mm('P'), g.mm('f')),
    crestTrunc: truncation(g.mm('P'), g.mm('k')),
  }),
  threadFromEngagement: (g) => ({
    ...sizesOf(
      got(tenonFromEngagement(form(g), { recess: g.mm('Dr'), clearance: g.mm('c') }, g.number('E'), '0.75H')),
    ),
    H: sharpV(g.mm('P')),
  }),
  threadFromCrest: (g) => {
    const depth = got(depthFromCrest(form(g), g.mm('k')));
    return sizesOf(got(tenonFromDepth(form(g), { recess: g.mm('Dr'), clearance: g.mm('c') }, depth)));
  },
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
  flankShiftSimple: (g) => ({
    shift: got(
      flankShift({
        part: part(g.flag('external')),
        pitch: g.mm('P'),
        workRadius: g.mm('r'),
        cutterRadius: g.mm('Rc'),
      }),
    ),
  }),
  rMinInternal: (g) => ({ r: got(recessForShift(g.mm('P'), g.mm('Rc'), g.mm('shiftMax'))) }),
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
  shoulderRemoval: (g) => ({ remove: got(shoulderRemoval(g.mm('P'), g.angle('chiDeg'))) }),
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

const close = (actual: number, wanted: number): boolean =>
  Math.abs(actual - wanted) <= 1e-5 * Math.max(Math.abs(wanted), 1e-9);

const flat = (answer: Answer | undefined): readonly number[] =>
  answer === undefined ? [] : typeof answer === 'number' ? [answer] : answer;

test('the table still holds the items this file answers for', () => {
  expect(vectors).toHaveLength(26);
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

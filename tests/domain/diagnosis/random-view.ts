import { goingOn, marks, marksAt, seated, threads } from '../../../src/domain/box/trial-words.ts';
import type { DiagnosisView, MoveKind, MoveMade, TrialView } from '../../../src/domain/diagnosis/view.ts';
import { flankShift } from '../../../src/domain/joint/helix.ts';
import { type Random, seededRandom } from '../../../src/domain/random.ts';
import { MOVEMENTS } from '../../../src/domain/setup/procedure.ts';
import { type Millimetres, mm } from '../../../src/domain/units/brands.ts';

const SLOPE = Math.tan(Math.PI / 6);
const STEPS = [
  'board',
  'cone',
  'square-banjo',
  'lock-post',
  'gap',
  'seat-chuck',
  'cutter',
  'banjo-back',
  'shake',
  'pick-up',
  'touch-off',
  'dry-run',
  'of-the-users-own',
];

export const MOVE_KINDS = [
  'leave-it',
  'start-backwards',
  'brush-out',
  'on-and-off-by-hand',
  'wax',
  'slacken-jaws',
  'find-dent',
  'chamfer-start',
  'trim-last-thread',
  'same-setting-again',
  'deepen',
  'clear-floor',
  'deepen-relief',
  'face-shoulder',
  'ease-crests',
  'true-bore',
  'true-tenon',
  'rub-flanks',
  'harden-and-recut',
  'new-tenon',
] as const satisfies readonly MoveKind[];

const some = <T>(random: Random, list: readonly T[], chance: number): T[] =>
  list.filter(() => random.chance(chance));
const maybe = (random: Random, chance: number, value: () => number): Millimetres | null =>
  random.chance(chance) ? mm(value()) : null;

const randomMove = (random: Random): MoveMade => {
  const kind = random.pick(MOVE_KINDS);
  return {
    kind,
    part: random.pick(['recess', 'tenon', null] as const),
    by: maybe(random, 0.8, () => 0.05 * random.whole(1, 6)),
    size: kind === 'new-tenon' ? maybe(random, 0.8, () => random.between(10, 80)) : null,
    depth: kind === 'new-tenon' ? maybe(random, 0.8, () => random.between(0.3, 2)) : null,
  };
};

const randomTrial = (random: Random, wanted: number, pitch: number): TrialView => {
  const words = random.chance(0.9) ? [random.pick(goingOn)] : [];
  return {
    right: random.chance(0.05),
    goingOn: [...new Set([...words, ...some(random, goingOn, 0.05)])],
    seated: random.chance(0.3) ? random.pick(seated) : null,
    threads: random.chance(0.4) ? [...new Set([random.pick(threads), ...some(random, threads, 0.05)])] : [],
    marks: random.chance(0.25) ? { on: random.pick(marks), at: random.pick(marksAt) } : null,
    endPlay: maybe(random, 0.6, () => SLOPE * wanted * Math.max(0, random.between(-0.8, 2.4))),
    turnsOn: random.chance(0.25) ? random.between(0, 5) : null,
    bottomGap: maybe(random, 0.15, () => random.between(-0.2, 2)),
    crestFlat: random.chance(0.45)
      ? { part: random.pick(['recess', 'tenon'] as const), width: mm(random.between(0, 0.3 * pitch)) }
      : null,
    afterFinish: random.chance(0.05),
    moves: [],
  };
};

/** A view that could come from a bench, every field of it drawn; the same number is the same view. */
export const randomView = (number: number): DiagnosisView => {
  const random = seededRandom(number, 77);
  const pitch = random.pick([1.27, 1.5, 1.5875, 2, 2.54, 3, 25.4 / 8]);
  const bore = random.between(16, 100);
  const cutter = Math.min(15, bore / 2 - 3);
  const wanted = random.between(0.12, 0.5);
  const tip = random.between(0.05, 0.3);
  const crest = random.between(0.15, 0.9);
  const depth = Math.max(0.2, (pitch - tip - crest) / (2 * SLOPE));
  const shiftOf = (part: 'recess' | 'tenon'): Millimetres => {
    const shift = flankShift({
      part,
      pitch: mm(pitch),
      workRadius: mm(bore / 2),
      cutterRadius: mm(cutter),
    });
    return shift.ok ? mm(Math.min(0.05, shift.value)) : mm(0);
  };
  const clearance = wanted + random.normal(0, 0.35 * wanted);
  const tenon = bore + 4 * depth - (pitch - 2 * tip) / SLOPE - clearance;
  const wood = () => ({
    radial: random.between(0.0008, 0.003),
    tangential: random.between(0.0015, 0.005),
    crumbles: random.unit(),
    furs: random.unit(),
  });
  const trials = Array.from({ length: random.pick([1, 1, 1, 2, 3]) }, () =>
    randomTrial(random, wanted, pitch),
  );
  return {
    joint: {
      pitch: mm(pitch),
      wanted: mm(wanted),
      threads: random.whole(2, 5),
      cutterRadius: mm(cutter),
      tipFlat: mm(tip),
      tipFlatUncertainty: mm(random.pick([0.03, 0.08])),
      bore: mm(bore),
      boreUncertainty: mm(0.03),
      tenon: mm(Math.max(4, tenon)),
      tenonUncertainty: mm(0.03),
      depth: { recess: mm(depth), tenon: mm(depth + random.pick([0, 0, 0.05, 0.1])) },
      plannedDepth: mm(depth),
      flankShift: { recess: shiftOf('recess'), tenon: shiftOf('tenon') },
      boreTaper: maybe(random, 0.3, () => random.normal(0, 0.15)),
      tenonTaper: maybe(random, 0.3, () => random.normal(0, 0.15)),
      outOfRound: maybe(random, 0.2, () => Math.abs(random.normal(0, 0.2))),
      bottomGap: mm(random.between(0, 3)),
      wall: maybe(random, 0.5, () => random.between(1, 10)),
      leastWall: mm(2.5),
      wood: { recess: wood(), tenon: wood() },
      learned: random.chance(0.2)
        ? { clearance: mm(wanted + random.normal(0, 0.08)), uncertainty: mm(0.05) }
        : null,
    },
    bench: {
      unit: random.pick(['inch', 'metric'] as const),
      dial: random.chance(0.8)
        ? { travelPerTurn: mm(2.54), marksPerTurn: random.chance(0.8) ? 100 : null }
        : null,
      onJig: random.pick(['tenon', 'tenon', 'tenon', 'recess', null] as const),
      holds: random.chance(0.7),
      finished: random.chance(0.1),
    },
    log: {
      missed: some(random, STEPS, 0.1),
      done: some(random, STEPS, 0.7),
      moved: some(random, MOVEMENTS, 0.05),
    },
    trials: trials.map((trial, i) => ({
      ...trial,
      right: trial.right && i === trials.length - 1,
      moves:
        i < trials.length - 1 || random.chance(0.08)
          ? Array.from({ length: random.whole(1, 2) }, () => randomMove(random))
          : [],
    })),
    seed: number,
  };
};

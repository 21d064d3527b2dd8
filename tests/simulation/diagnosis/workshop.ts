import type { DiagnosisView, SetUpLog } from '../../../src/domain/diagnosis/view.ts';
import { flankShift } from '../../../src/domain/joint/helix.ts';
import { type Random, seededRandom } from '../../../src/domain/random.ts';
import { MOVEMENTS } from '../../../src/domain/setup/procedure.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { faultsOf, feelOf } from './feel.ts';
import { drawTurner, laplace, type Manners, reading, skewed, type Turner } from './turner.ts';
import { drawUpset, happen, LOGGED_STEPS, type UpsetName, type Wood } from './upsets.ts';
import { type Lobe, type Piece, SLOPE, type Workpiece } from './workpiece.ts';

/** One box on the bench: what is true, who stands there, and what the record says so far (its trials are written by the play). */
export interface Bench {
  work: Workpiece;
  readonly turner: Turner;
  readonly manners: Manners;
  readonly upsets: readonly UpsetName[];
  readonly wood: { readonly recess: Wood; readonly tenon: Wood };
  record: DiagnosisView;
}

/** Radial and tangential coefficients: Wood Handbook FPL-GTR-190, table 13-5. The rest of each row is an estimate, no source. */
const WOODS: readonly Wood[] = [
  { radial: 0.0019, tangential: 0.00274, crumbles: 0.4, furs: 0.35, stiff: 0.95 },
  { radial: 0.00256, tangential: 0.00338, crumbles: 0.3, furs: 0.3, stiff: 1.1 },
  { radial: 0.00169, tangential: 0.00274, crumbles: 0.6, furs: 0.5, stiff: 1 },
  { radial: 0.00126, tangential: 0.00248, crumbles: 0.3, furs: 0.25, stiff: 0.95 },
  { radial: 0.00205, tangential: 0.00376, crumbles: 0.1, furs: 0.1, stiff: 1.15 },
  { radial: 0.0018, tangential: 0.00365, crumbles: 0.75, furs: 0.5, stiff: 1.05 },
  { radial: 0.00165, tangential: 0.00353, crumbles: 0.2, furs: 0.2, stiff: 1.15 },
  { radial: 0.0019, tangential: 0.00431, crumbles: 0.35, furs: 0.4, stiff: 1.05 },
  { radial: 0.00144, tangential: 0.00338, crumbles: 0.7, furs: 0.8, stiff: 0.85 },
];
/** A hard ring let into a soft box carries the recess. An estimate, no source. */
const RING: Wood = { radial: 0.0019, tangential: 0.0026, crumbles: 0.05, furs: 0.05, stiff: 1.3 };

const INCH_PITCHES = [25.4 / 8, 2.54, 2.54, 25.4 / 12, 1.5875, 1.5875, 1.27];
const METRIC_PITCHES = [1.5, 2, 2, 2.5, 3];

const noLobe = (): Lobe => ({ amplitude: 0, phase: 0 });

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

const roundTo = (value: number, step: number): number => Math.round(value / step) * step;

/** Diametral clearance that a workshop aims for, by pitch: its own habit, between the two figures of the trade for 10 and 16 to the inch. */
const habit = (random: Random, pitch: number): number =>
  roundTo(clamp((0.115 + 0.025 * pitch) * random.between(1.1, 2.2), 0.1, 0.6), 0.01);

interface Plan {
  readonly pitch: number;
  readonly wanted: number;
  readonly turns: number;
  readonly tip: number;
  readonly bore: number;
  readonly tenon: number;
  readonly depth: number;
  readonly cutter: number;
  readonly shift: { readonly recess: number; readonly tenon: number };
}

/** Sizes on paper: crest flat chosen, depth and tenon from it (joint-model item 1), less what the helix gives for nothing. */
const drawPlan = (random: Random): Plan => {
  for (;;) {
    const metric = random.chance(0.35);
    const pitch = random.pick(metric ? METRIC_PITCHES : INCH_PITCHES);
    const bore = 15 * 10 ** random.unit();
    const cutter = random.between(5, Math.min(20, bore / 2 - 1.5));
    if (pitch > bore / 8 || cutter > 0.8 * (bore / 2)) continue;
    const wanted = habit(random, pitch);
    const tip = roundTo(clamp(random.between(0.04, 0.12) * pitch, 0.05, 0.3), 0.01);
    const low = random.chance(0.035);
    const crest = low ? random.between(0.27, 0.32) * pitch : random.between(0.1, 0.21) * pitch;
    if (crest < tip - wanted * SLOPE + 0.02 || crest < 0.2) continue;
    const depth = (pitch - tip - crest) / (2 * SLOPE);
    const shiftOf = (part: 'recess' | 'tenon', radius: number): number => {
      const shift = flankShift({
        part,
        pitch: mm(pitch),
        workRadius: mm(radius),
        cutterRadius: mm(cutter - depth / 2),
      });
      return shift.ok ? shift.value : 0;
    };
    const shift = { recess: shiftOf('recess', bore / 2 + depth / 2), tenon: shiftOf('tenon', bore / 2) };
    const tenon = bore + (pitch - 2 * crest) / SLOPE - wanted + (2 * (shift.recess + shift.tenon)) / SLOPE;
    return {
      pitch,
      wanted,
      turns: random.pick([1.5, 2, 2, 2.5, 3, 3, 4]),
      tip,
      bore,
      tenon,
      depth,
      cutter,
      shift,
    };
  }
};

/** A piece with the errors that every joint has. */
export const everydayPiece = (
  random: Random,
  size: { diameter: number; depth: number; tip: number; shift: number },
  wood: Wood,
): Piece => ({
  diameter: size.diameter,
  // The tick is heard a little late: grooves come out a little shallow.
  depth: size.depth - skewed(random, 0.012) + random.between(-0.015, 0.02),
  tip: size.tip,
  shift: size.shift * random.between(0.8, 1.35),
  raised: skewed(random, 0.008),
  taper: laplace(random, 0.025),
  creep: skewed(random, 0.01),
  spring: skewed(random, 0.007),
  slip: 0,
  offCentre: skewed(random, 0.025),
  tilt: skewed(random, 0.018),
  lean: laplace(random, 0.2),
  wobble: skewed(random, 0.006),
  fuzz: skewed(random, 0.006 + 0.008 * wood.furs),
  film: 0,
  oval: noLobe(),
  pinched: { two: noLobe(), three: noLobe(), four: noLobe() },
  weak: 0.15 * random.unit() * wood.crumbles,
  burnt: false,
});

const drawLog = (random: Random, careless: number): SetUpLog => {
  const missed = LOGGED_STEPS.filter(() => random.chance(careless));
  return {
    missed,
    done: LOGGED_STEPS.filter((step) => !missed.includes(step)),
    moved: random.chance(0.14) ? [random.pick(MOVEMENTS)] : [],
  };
};

const woodIn = (wood: Wood, random: Random) => {
  // What the tables say of a species is not what this board does.
  const board = (value: number) => clamp(value + random.between(-0.2, 0.2), 0, 1);
  return {
    radial: wood.radial * random.between(0.8, 1.25),
    tangential: wood.tangential * random.between(0.8, 1.25),
    crumbles: board(wood.crumbles),
    furs: board(wood.furs),
  };
};

/** A box, whatever came of it. */
const drawBox = (random: Random, manners: Manners, seed: number): Bench => {
  const plan = drawPlan(random);
  const turner = drawTurner(random, plan.wanted);
  const wood = random.pick(WOODS);
  const woods = { recess: random.chance(0.07) ? RING : wood, tenon: wood };
  const finished = random.chance(0.07);

  const learnedTip = random.chance(0.3);
  // Rigs are measured once and used for years: the true flat is mostly wider than the one on file.
  const tip = learnedTip
    ? Math.max(0.02, plan.tip + laplace(random, 0.018) + 0.01)
    : Math.max(0.02, plan.tip - 0.045 + skewed(random, 0.07));
  // Who has found an allowance plans by it, and so has already what the tip gives unseen.
  const learned = random.chance(0.2)
    ? {
        clearance: plan.wanted - (2 * (tip - plan.tip)) / SLOPE + laplace(random, 0.03),
        uncertainty: random.between(0.03, 0.08),
      }
    : null;
  const aimed = plan.tenon + (learned ? plan.wanted - learned.clearance : 0);
  const recessMeant = { diameter: plan.bore, depth: plan.depth };
  const work: Workpiece = {
    pitch: plan.pitch,
    turns: plan.turns,
    shoulder: plan.tenon + random.between(5, 14),
    drag: wood.stiff * random.between(0.85, 1.2),
    recess: everydayPiece(random, { ...recessMeant, tip, shift: plan.shift.recess }, woods.recess),
    tenon: everydayPiece(
      random,
      { diameter: aimed, depth: plan.depth, tip, shift: plan.shift.tenon },
      woods.tenon,
    ),
    floor: random.between(0.15, 1.2),
    reliefShort: 0,
    lastThread: 0,
    hump: skewed(random, 0.01),
    struck: 0,
    noLeadIn: skewed(random, 0.01),
    crossed: 0,
    chips: 0.25 * random.unit(),
    dent: 0,
    meets: random.between(0, 2 * Math.PI),
    meant: {
      recess: recessMeant,
      tenon: { diameter: plan.tenon, depth: plan.depth },
      tip: plan.tip,
    },
  };
  for (const piece of [work.recess, work.tenon]) {
    const { pinched } = piece;
    for (const lobe of [piece.oval, pinched.two, pinched.three, pinched.four])
      lobe.phase = random.between(0, 2 * Math.PI);
    piece.oval.amplitude = skewed(random, 0.008) * Math.min(2, plan.bore / 60);
    pinched.four.amplitude = skewed(random, 0.003);
  }
  // The bore is read before the tenon is turned to it, so a wrong reading of one goes into the other.
  const boreRead = reading(random, turner, 'recess', work.recess.diameter);
  const tenonAimed = boreRead + (aimed - plan.bore);
  const slipOfReading = reading(random, turner, 'tenon', 0);
  work.tenon.diameter = tenonAimed - slipOfReading + laplace(random, 0.012);
  const tenonRead = roundTo(work.tenon.diameter + slipOfReading, turner.inch ? 0.0254 : 0.01);

  const log = drawLog(random, turner.careless);
  const circumstances = { random, wood: woods, bore: plan.bore, finished };
  const lot = random.unit();
  const count = lot < 0.12 ? 0 : lot < 0.75 ? 1 : 2;
  const names: UpsetName[] = [];
  while (names.length < count) {
    const name = drawUpset(circumstances, log, manners.evenness);
    if (!names.includes(name)) names.push(name);
  }
  for (const name of names) happen(name, work, circumstances);

  const unknownWood = random.chance(0.1);
  const told = (part: 'recess' | 'tenon') =>
    unknownWood
      ? { radial: 0.0018, tangential: 0.0033, crumbles: 0.3, furs: 0.3 }
      : woodIn(woods[part], random);
  const chuckOff = log.moved.includes('chuck-off') && random.chance(0.5);
  const lot2 = random.unit();
  const onJig = lot2 < 0.87 ? 'tenon' : lot2 < 0.93 ? 'recess' : null;
  const claimed = mm(turner.caliperClaimed);
  return {
    work,
    turner,
    manners,
    upsets: names,
    wood: woods,
    record: {
      joint: {
        pitch: mm(plan.pitch),
        wanted: mm(plan.wanted),
        threads: plan.turns,
        cutterRadius: mm(plan.cutter),
        tipFlat: mm(plan.tip),
        tipFlatUncertainty: mm(learnedTip ? 0.03 : 0.08),
        bore: mm(boreRead),
        boreUncertainty: claimed,
        tenon: mm(tenonRead),
        tenonUncertainty: claimed,
        depth: { recess: mm(plan.depth), tenon: mm(plan.depth) },
        plannedDepth: mm(plan.depth),
        flankShift: { recess: mm(plan.shift.recess), tenon: mm(plan.shift.tenon) },
        boreTaper: null,
        tenonTaper: null,
        outOfRound: null,
        bottomGap: mm(0.5),
        wall: random.chance(0.5) ? mm(random.between(2, 8)) : null,
        leastWall: mm(2.5),
        wood: { recess: told('recess'), tenon: told('tenon') },
        learned: learned && { clearance: mm(learned.clearance), uncertainty: mm(learned.uncertainty) },
      },
      bench: {
        unit: turner.inch ? 'inch' : 'metric',
        dial: random.chance(0.9)
          ? {
              travelPerTurn: mm(turner.inch ? random.pick([1.5875, 2.54]) : random.pick([1, 2])),
              marksPerTurn: random.chance(0.85) ? random.pick([50, 100]) : null,
            }
          : null,
        onJig,
        holds: onJig !== null && !chuckOff && !finished && random.chance(0.92),
        finished,
      },
      log,
      trials: [],
      seed: seed | 0,
    },
  };
};

/**
 * Box number `index` of a workshop: one whose first trial fit is not right, for nobody asks about the others. The same seed, index and
 * manners give the same box. `drawn` counts how many were made until then.
 */
export const boxOf = (seed: number, index: number, manners: Manners): Bench & { readonly drawn: number } => {
  const random = seededRandom(seed, index);
  for (let drawn = 1; ; drawn++) {
    const bench = drawBox(random, manners, seed * 8191 + index);
    if (faultsOf(feelOf(bench.work, bench.turner.hand)) > 0) return { ...bench, drawn };
  }
};

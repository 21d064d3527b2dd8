import type { DiagnosisView, MoveKind } from '../../../src/domain/diagnosis/view.ts';
import type { Random } from '../../../src/domain/random.ts';
import type { Part } from '../../../src/domain/setup/events.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import type { AdvisedMove } from './adviser.ts';
import { feelOf, isInBand } from './feel.ts';
import { laplace, reading, skewed } from './turner.ts';
import { copyOf, crestFlat, type Piece, SLOPE, type Workpiece } from './workpiece.ts';
import { type Bench, everydayPiece } from './workshop.ts';

/** Ways to spoil a part. */
export const RUINS = [
  'crest-too-thin',
  'cut-too-loose',
  'too-little-engaged',
  'unusable-tenon',
  'cut-without-setting',
] as const;
export type Ruin = (typeof RUINS)[number];

export interface Made {
  readonly bench: Bench;
  readonly ruin: Ruin | null;
  /** A new tenon although the old one could have served. */
  readonly needless: boolean;
}

/** Moves that put the cutter back into a groove. */
const CUTS: readonly MoveKind[] = ['same-setting-again', 'deepen', 'harden-and-recut'];

export const isCut = ({ kind }: Pick<AdvisedMove, 'kind'>): boolean => CUTS.includes(kind);

/** Minutes at the bench, by this workshop's own count. */
export const minutes = ({ kind, reset }: Pick<AdvisedMove, 'kind' | 'reset'>): number => {
  const of: Record<MoveKind, number> = {
    'leave-it': 0,
    'start-backwards': 1,
    'brush-out': 1,
    'on-and-off-by-hand': 2,
    wax: 2,
    'slacken-jaws': 3,
    'find-dent': 4,
    'chamfer-start': 4,
    'trim-last-thread': 4,
    'same-setting-again': 3,
    deepen: 4,
    'clear-floor': 5,
    'deepen-relief': 5,
    'face-shoulder': 5,
    'ease-crests': 6,
    'true-bore': 7,
    'true-tenon': 6,
    'rub-flanks': 6,
    'harden-and-recut': 20,
    'new-tenon': 55,
  };
  return of[kind] + (reset ? 14 : 0);
};

/** Whether the piece can be cut as it is, without setting it up again. */
export const mayCut = ({ bench }: DiagnosisView, { part, reset }: AdvisedMove): boolean => {
  if (bench.finished) return false;
  if (reset) return part === 'tenon';
  return bench.holds && part !== null && bench.onJig === part;
};

const loosened = (piece: Piece, spring: number, fuzz: number, creep: number): void => {
  piece.spring *= spring;
  piece.fuzz *= fuzz;
  piece.creep *= creep;
};

/** What picking a groove up again leaves: a little slip, of which a deeper cut takes some away again, and another lean. */
const pickedUp = (piece: Piece, deeper: number, random: Random): void => {
  const beside = Math.abs(laplace(random, 0.05));
  piece.slip = Math.max(piece.slip, beside - deeper * SLOPE);
  piece.lean += laplace(random, 0.25);
};

interface Job {
  readonly work: Workpiece;
  readonly part: Part;
  readonly piece: Piece;
  readonly by: number;
  readonly random: Random;
}

type Doing = (job: Job) => void;

/** What each move does here. Luck is in all of them; some do nothing at times, some do more than they were meant to. */
const doings: Readonly<Record<Exclude<MoveKind, 'new-tenon'>, Doing>> = {
  'leave-it': () => {},
  'start-backwards': ({ work, random }) => {
    work.crossed *= random.between(0, 0.7);
  },
  'brush-out': ({ work, random }) => {
    if (random.chance(0.75)) work.chips *= 0.1 * random.unit();
    for (const piece of [work.recess, work.tenon]) piece.fuzz *= random.between(0.4, 1);
  },
  'on-and-off-by-hand': ({ work, random }) => {
    for (const piece of [work.recess, work.tenon]) {
      piece.fuzz *= random.between(0.2, 0.7);
      piece.raised *= random.between(0.6, 1);
      if (piece.weak > 0.5 && random.chance(0.1)) piece.weak = Math.min(1, piece.weak + 0.1);
    }
  },
  wax: ({ work, random }) => {
    work.drag *= random.between(0.55, 0.85);
    for (const piece of [work.recess, work.tenon]) piece.fuzz *= random.between(0.8, 1);
  },
  'slacken-jaws': ({ piece, random }) => {
    const rest = random.between(0, 0.35);
    const { pinched } = piece;
    for (const lobe of [pinched.two, pinched.three, pinched.four]) lobe.amplitude *= rest;
  },
  'find-dent': ({ work, random }) => {
    if (random.chance(0.7)) work.dent *= random.between(0, 0.25);
  },
  'chamfer-start': ({ work, random }) => {
    work.noLeadIn *= random.chance(0.93) ? random.between(0, 0.2) : 0.7;
    work.crossed *= 0.8;
  },
  'trim-last-thread': ({ work, random }) => {
    if (random.chance(0.82)) work.lastThread = 0;
  },
  'same-setting-again': ({ piece, random }) => {
    loosened(piece, random.between(0.1, 0.6), random.between(0.3, 0.8), random.between(0.6, 1));
    piece.depth += random.between(-0.004, 0.015);
  },
  deepen: ({ piece, by, random }) => {
    const more = by + random.normal(0, 0.008) + (random.chance(0.03) ? 0.03 * random.unit() : 0);
    piece.depth += Math.max(0, more);
    loosened(piece, random.between(0.2, 0.7), random.between(0.5, 1), random.between(0.85, 1));
  },
  'clear-floor': ({ work, by, random }) => {
    work.floor += by * random.between(0.85, 1.1);
  },
  'deepen-relief': ({ work, random }) => {
    work.reliefShort *= random.chance(0.9) ? 0 : 0.5;
  },
  'face-shoulder': ({ work, piece, by, random }) => {
    const off = by * random.between(0.85, 1.15);
    work.hump = Math.max(0, work.hump - off) * random.between(0, 0.4);
    work.struck = Math.max(0, work.struck - off);
    // Faced on the jig the shoulder comes square to the thread.
    piece.tilt *= random.between(0.1, 0.45);
    work.floor -= off;
    work.lastThread += random.chance(0.1) ? 0.5 * off : 0;
  },
  'ease-crests': ({ part, piece, by, random }) => {
    const off = by * random.between(0.6, 1.35);
    const fromRaised = Math.min(piece.raised, off);
    piece.raised -= fromRaised;
    const rest = off - fromRaised;
    turnDown(piece, part, rest);
    piece.taper = Math.sign(piece.taper) * Math.max(0, Math.abs(piece.taper) - off);
    piece.fuzz *= random.between(0.7, 1);
  },
  'true-bore': ({ work, random }) => {
    work.recess.taper = laplace(random, 0.02);
  },
  'true-tenon': ({ work, random }) => {
    work.tenon.taper = laplace(random, 0.02);
  },
  'rub-flanks': ({ piece, by, random }) => {
    const off = by * random.between(0.5, 1.5);
    const fromFilm = Math.min(piece.film, off);
    piece.film -= fromFilm;
    piece.depth += 2 * (off - fromFilm);
    piece.fuzz *= 0.8;
  },
  'harden-and-recut': ({ piece, random }) => {
    piece.weak *= random.between(0.3, 0.75);
    piece.film += 0.004 * random.unit();
    loosened(piece, random.between(0.3, 0.8), random.between(0.3, 0.7), random.between(0.7, 1));
    piece.depth += random.between(-0.005, 0.01);
  },
};

/** Takes `by`, radial, off the crests of a piece: its groove keeps its place, so it is less deep. */
const turnDown = (piece: Piece, part: Part, by: number): void => {
  piece.depth -= by;
  piece.diameter += (part === 'recess' ? 2 : -2) * by;
};

/** A new tenon as its turner reads it, and whether making it went wrong in a way that no advice can foresee. */
interface Remade {
  readonly read: number;
  readonly accident: boolean;
}

/** Turned, threaded and set up from the start; the recess keeps what it has. */
const newTenon = (work: Workpiece, bench: Bench, size: number, depth: number, random: Random): Remade => {
  const { turner } = bench;
  // Who makes a second tenon reads it three times.
  const readings = Array.from({ length: 3 }, () => reading(random, turner, 'tenon', 0)).sort((a, b) => a - b);
  const off = readings[1] ?? 0;
  const { tenon } = work;
  const fresh = everydayPiece(
    random,
    { diameter: size - off + laplace(random, 0.012), depth, tip: tenon.tip, shift: tenon.shift },
    bench.wood.tenon,
  );
  for (const lobe of [fresh.oval, fresh.pinched.four]) lobe.phase = random.between(0, 2 * Math.PI);
  fresh.oval.amplitude = 0.5 * skewed(random, 0.006);
  fresh.pinched.four.amplitude = skewed(random, 0.003);
  // Whoever made one mistake makes another now and then.
  const [cutAmiss, slipped] = [random.chance(0.08), random.chance(0.03)];
  if (cutAmiss)
    fresh.depth += random.chance(0.7) ? -Math.min(0.2, skewed(random, 0.08)) : 0.05 * random.unit();
  if (random.chance(0.03)) fresh.tilt += skewed(random, 0.25);
  if (slipped) fresh.slip = Math.max(0, Math.min(crestFlat(work, fresh) - 0.08, skewed(random, 0.08)));
  work.tenon = fresh;
  work.floor = Math.max(work.floor, random.between(0.15, 1));
  work.hump = skewed(random, 0.01);
  work.struck = 0;
  work.lastThread = 0;
  work.noLeadIn = skewed(random, 0.01);
  work.crossed *= 0.5;
  work.chips = 0.25 * random.unit();
  const step = turner.inch ? 0.0254 : 0.01;
  return { read: Math.round((fresh.diameter + off) / step) * step, accident: cutAmiss || slipped };
};

const THIN_CREST = 0.07;
const LEAST_ENGAGED = 38;
const LOOSER = 0.05;
const SPARE_CREST = 0.15;

const ruinBy = (before: Bench, after: Bench, move: AdvisedMove, accident: boolean): Ruin | null => {
  const { hand } = before.turner;
  const was = feelOf(before.work, hand);
  const is = feelOf(after.work, hand);
  const looser = is.free > hand.top + LOOSER && is.free > was.free + 0.005;
  if (move.kind === 'new-tenon')
    return is.crest.tenon < THIN_CREST || is.engagement < LEAST_ENGAGED || (looser && !accident)
      ? 'unusable-tenon'
      : null;
  if (isCut(move) && !mayCut(before.record, move)) return 'cut-without-setting';
  for (const part of ['recess', 'tenon'] as const)
    if (is.crest[part] < THIN_CREST && is.crest[part] < was.crest[part]) return 'crest-too-thin';
  if (isCut(move) && looser) return 'cut-too-loose';
  if (is.engagement < LEAST_ENGAGED && is.engagement < was.engagement - 0.1) return 'too-little-engaged';
  return null;
};

/** The old tenon would have served: it was inside the band and held, or only wanted a deeper groove that it had crest for. */
const isNeedless = ({ work, turner, record }: Bench): boolean => {
  const { hand } = turner;
  const felt = feelOf(work, hand);
  const { jumps, thin, crumbly } = felt.severity;
  if (jumps > 1 || thin > 1 || crumbly > 1) return false;
  if (isInBand(felt, hand)) return true;
  if (felt.free > hand.top || record.bench.finished) return false;
  const deeper = Math.max(0, (hand.low + hand.top) / 2 - felt.free) / 2;
  const trial = copyOf(work);
  trial.tenon.depth += deeper;
  const then = feelOf(trial, hand);
  const mends = then.severity.stiff <= 1 && then.severity.late <= 1 && then.severity.start <= 1;
  return mends && crestFlat(trial, trial.tenon) >= SPARE_CREST;
};

/** Does one move, and enters it in the record as a turner would: what was meant, not what came of it. */
export const make = (bench: Bench, move: AdvisedMove, random: Random): Made => {
  const work = copyOf(bench.work);
  const { record } = bench;
  const part = move.part ?? record.bench.onJig ?? 'tenon';
  const needless = move.kind === 'new-tenon' && isNeedless(bench);
  let { joint, bench: state } = record;
  let accident = false;
  if (move.kind === 'new-tenon') {
    const size = move.size ?? joint.tenon;
    const depth = move.depth ?? joint.plannedDepth;
    const remade = newTenon(work, bench, size, depth, random);
    accident = remade.accident;
    joint = {
      ...joint,
      tenon: mm(remade.read),
      tenonTaper: null,
      depth: { ...joint.depth, tenon: mm(depth) },
    };
    state = { ...state, onJig: 'tenon', holds: !state.finished };
  } else {
    const piece = work[part];
    const by = move.by ?? 0;
    doings[move.kind]({ work, part, piece, by, random });
    if (isCut(move) && move.reset) {
      pickedUp(piece, move.kind === 'deepen' ? by : 0, random);
      state = { ...state, onJig: part, holds: true };
    }
    if (move.kind === 'slacken-jaws') state = { ...state, holds: false };
    if (move.kind === 'deepen')
      joint = { ...joint, depth: { ...joint.depth, [part]: mm(joint.depth[part] + by) } };
    // A lid that goes on and off wears itself in a little, whatever was meant to help.
    for (const each of [work.recess, work.tenon]) each.fuzz *= random.between(0.85, 1);
  }
  const trials = record.trials.map((trial, i) =>
    i === record.trials.length - 1
      ? {
          ...trial,
          moves: [
            ...trial.moves,
            { kind: move.kind, part: move.part, by: move.by, size: move.size, depth: move.depth },
          ],
        }
      : trial,
  );
  const after: Bench = { ...bench, work, record: { ...record, joint, bench: state, trials } };
  return { bench: after, ruin: ruinBy(bench, after, move, accident), needless };
};

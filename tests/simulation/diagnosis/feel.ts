import { crestFlat, idealFit, type Lobe, type Piece, SLOPE, type Workpiece } from './workpiece.ts';

/**
 * How a lid feels in a hand: it is screwed on by sixteenths of a turn, and at each the two helices are laid on each other, sixteen
 * places to a turn, each with its own room on the flanks and on the crests. The rest is read off the curve of drag: where the hand gives up,
 * whether it grows, how often in a turn it comes and goes. Nothing here is a formula for a word.
 */

/** What a turner minds, and how he takes a lid in hand. */
export interface Hand {
  /** Diametral: with less free room than `low` flanks begin to drag, with more than `top` the lid is loose. */
  readonly low: number;
  readonly top: number;
  /** Mean interference, mm, from which drag is disliked. */
  readonly dislikes: number;
  /** Interference times turns, mm, that the hand cannot turn further. */
  readonly strength: number;
  /** Percent of 0.75 H below which the lid jumps when pulled. */
  readonly jumpsBelow: number;
}

export const SENSATIONS = [
  'start',
  'stiff',
  'late',
  'stop',
  'once',
  'twice',
  'four',
  'loose',
  'rough',
  'open',
  'rocks',
  'gap',
  'proud',
  'jumps',
  'thin',
  'crumbly',
] as const;
export type Sensation = (typeof SENSATIONS)[number];

export interface Feel {
  /** 1 is where this turner begins to mind it. */
  readonly severity: Readonly<Record<Sensation, number>>;
  /** Turns that it went on, and whether it came home. */
  readonly reached: number;
  readonly home: boolean;
  /** Diametral room at the tightest place of the flanks; below 0 there is none. */
  readonly free: number;
  readonly endPlay: number;
  /** Share of the drag that comes from crests, and from places in the inner third. */
  readonly onCrests: number;
  readonly byShoulder: number;
  readonly byStart: number;
  /** Percent of 0.75 H. */
  readonly engagement: number;
  readonly crest: { readonly recess: number; readonly tenon: number };
  /** Axial: how far short of home it stops hard. */
  readonly short: number;
}

const PER_TURN = 16;
/** Wood gives this much before teeth that lean ride on their edges. */
const CONFORMS = 0.02;
const CREST_FORCE = 0.8;

const lobe = ({ amplitude, phase }: Lobe, lobes: number, angle: number): number =>
  amplitude === 0 ? 0 : amplitude * Math.cos(lobes * angle + phase);

const outOfRound = ({ oval, pinched }: Piece, angle: number): number =>
  lobe(oval, 2, angle) +
  lobe(pinched.two, 2, angle) +
  lobe(pinched.three, 3, angle) +
  lobe(pinched.four, 4, angle);

/** One place on a piece's helix: turns from its mouth, and what takes room there, radial. */
interface Place {
  readonly turn: number;
  readonly along: number;
  readonly round: number;
  readonly creep: number;
  /** Of the crest alone: taper and turning off the axis. */
  readonly crest: number;
}

/** The two helices wind opposite ways as seen from where they meet. */
const alongPiece = (
  piece: Piece,
  places: number,
  turns: number,
  offCentre: number,
  winds: 1 | -1,
): readonly Place[] =>
  Array.from({ length: places }, (_, place) => {
    const turn = (place + 0.5) / PER_TURN;
    const along = turn / turns;
    const angle = winds * 2 * Math.PI * turn;
    return {
      turn,
      along,
      round: outOfRound(piece, angle),
      creep: piece.creep * along ** 1.5,
      crest: (piece.taper / 2) * along + offCentre * Math.cos(angle),
    };
  });

/** Amplitude of one frequency in the last whole turns of a curve. */
const amplitudeOf = (curve: readonly number[], perTurn: number): number => {
  const turns = Math.floor(curve.length / PER_TURN);
  if (turns < 1) return 0;
  const last = curve.slice(-Math.min(2, turns) * PER_TURN);
  const slope = ((last.at(-1) ?? 0) - (last[0] ?? 0)) / Math.max(1, last.length - 1);
  let [x, y] = [0, 0];
  last.forEach((value, i) => {
    const level = value - slope * i;
    x += level * Math.cos((2 * Math.PI * perTurn * i) / PER_TURN);
    y += level * Math.sin((2 * Math.PI * perTurn * i) / PER_TURN);
  });
  return (2 * Math.hypot(x, y)) / last.length;
};

const mean = (values: readonly number[]): number =>
  values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;

export const feelOf = (work: Workpiece, hand: Hand): Feel => {
  const { pitch, turns, recess, tenon } = work;
  const fit = idealFit(work);
  const engaged = Math.max(0, fit.engagedHeight);
  const mismatch = (Math.abs(recess.lean + tenon.lean) * Math.PI) / 180;
  const leanTakes = Math.max(0, 2.309 * engaged * mismatch - CONFORMS);
  const throughout =
    fit.clearance / 2 -
    leanTakes / 2 -
    2 * (recess.film + tenon.film) -
    recess.spring -
    tenon.spring -
    0.8 * (recess.fuzz + tenon.fuzz) +
    (recess.slip + tenon.slip) / (2 * SLOPE);
  const dodged = 0.5 * Math.max(0, throughout);
  const off = (piece: Piece) => Math.max(0, piece.offCentre - dodged);
  const [offRecess, offTenon] = [off(recess), off(tenon)];
  const wobble = Math.hypot(recess.wobble, tenon.wobble);
  const short = Math.max(0, -work.floor, work.reliefShort, work.lastThread);
  const homeAt = Math.max(0, turns - short / pitch);

  const steps = Math.max(1, Math.floor(homeAt * PER_TURN + 1e-9));
  const onTenon = alongPiece(tenon, steps, turns, offTenon, 1);
  const onRecess = alongPiece(recess, steps, turns, offRecess, -1);
  const films = recess.film + tenon.film;
  const atTenonCrest = fit.tenonCrestGap - recess.spring - tenon.raised - 0.5 * tenon.fuzz - films;
  const atRecessCrest = fit.recessCrestGap - tenon.spring - recess.raised - 0.5 * recess.fuzz - films;

  const curve: number[] = [];
  let reached = homeAt;
  let least = Number.POSITIVE_INFINITY;
  let [onCrests, byShoulder, byStart, dragSum] = [0, 0, 0, 0];
  let gaveUp = false;
  for (let step = 1; step <= steps; step++) {
    const q = step / PER_TURN;
    const wobbles = (wobble / (4 * SLOPE)) * (1 + Math.cos(2 * Math.PI * q + work.meets));
    let [sum, weights] = [0, 0];
    [onCrests, byShoulder, byStart, dragSum] = [0, 0, 0, 0];
    least = Number.POSITIVE_INFINITY;
    for (let place = 0; place < step; place++) {
      const t = onTenon[place] as Place;
      const r = onRecess[step - 1 - place] as Place;
      const round = r.round - t.round;
      const flank = throughout + round - r.creep - t.creep - wobbles;
      const tenonCrest = atTenonCrest + round - r.creep - t.crest;
      const recessCrest = atRecessCrest + round - t.creep - r.crest;
      const rubs = Math.max(0, hand.low / 2 - flank);
      const touches = CREST_FORCE * (Math.max(0, -tenonCrest) + Math.max(0, -recessCrest));
      // The ends of both threads run ahead, and are felt most.
      const weight = 1 + (t.turn < 0.5 ? 1 : 0) + (r.turn < 0.5 ? 1 : 0);
      sum += weight * (rubs + touches);
      weights += weight;
      dragSum += rubs + touches;
      onCrests += touches;
      if (t.along > 0.65 || r.along > 0.65) byShoulder += rubs + touches;
      if (t.along < 0.35) byStart += rubs + touches;
      if (flank < least) least = flank;
    }
    const bump = q > 0.4 ? work.dent * 0.35 * (1 + Math.cos(2 * Math.PI * q + work.meets)) : 0;
    const drag = work.drag * (sum / weights + bump + 0.025 * work.chips);
    // The hand has the sum of it to turn, but it expects more drag with more turns, so that only a part of the growth is minded.
    curve.push(drag * Math.sqrt(Math.max(1, q)));
    if (drag * Math.max(q, 0.75) > hand.strength) {
      reached = q;
      gaveUp = true;
      break;
    }
  }

  const home = !gaveUp && short < 0.03;
  const free = 2 * least;
  const endPlay = SLOPE * Math.max(0, free);
  // Stiff all the way is what is left where the drag is least: what comes and goes has names of its own.
  const opening = curve
    .slice(0, Math.max(PER_TURN / 2, Math.round(0.55 * turns * PER_TURN)))
    .sort((a, b) => a - b);
  const early = mean(opening.slice(0, Math.ceil(opening.length / 2)));
  const last = mean(curve.slice(Math.round(0.75 * curve.length)));
  const atStart = mean(curve.slice(0, PER_TURN / 2));
  // Pulled sideways by the room it has, a lid holds less on the other side.
  const holds = fit.percentOf75 - (100 * 0.2 * Math.max(0, free)) / (0.75 * 0.866 * pitch);
  const rocking = endPlay / (recess.diameter + turns * pitch * SLOPE);
  const tilts = (Math.hypot(recess.tilt, tenon.tilt) * Math.PI) / 180;
  const open = work.shoulder * Math.max(0, tilts - rocking);
  const step = recess.offCentre + tenon.offCentre;
  const seats = (value: number) => (home ? value : 0);
  const minds = hand.dislikes;
  return {
    severity: {
      start: (atStart + 0.7 * work.noLeadIn + 0.16 * work.crossed) / (0.42 * hand.strength),
      stiff: early / minds,
      late: (last - mean(opening) * Math.sqrt(Math.max(1, 0.87 * reached))) / (1.3 * minds),
      stop: short / 0.04,
      once: amplitudeOf(curve, 1) / (0.75 * minds),
      twice: amplitudeOf(curve, 2) / (0.75 * minds),
      four: Math.max(amplitudeOf(curve, 4), amplitudeOf(curve, 3)) / (0.75 * minds),
      loose: 1 + (free - hand.top) / 0.06,
      rough: work.chips * 1.4 + Math.max(recess.fuzz, tenon.fuzz) / 0.08,
      open: seats(open / 0.07),
      rocks: seats(work.hump / 0.08),
      gap: seats(work.struck / 0.14),
      proud: step / 0.4,
      jumps: 1 + (hand.jumpsBelow - holds) / 4,
      thin: Math.max(recess.slip, tenon.slip) / (0.15 * pitch),
      crumbly: Math.max(recess.weak, tenon.weak) / 0.55,
    },
    reached,
    home,
    free,
    endPlay,
    onCrests: dragSum > 0 ? onCrests / dragSum : 0,
    byShoulder: dragSum > 0 ? byShoulder / dragSum : 0,
    byStart: dragSum > 0 ? byStart / dragSum : 0,
    engagement: fit.percentOf75,
    crest: { recess: crestFlat(work, recess), tenon: crestFlat(work, tenon) },
    short,
  };
};

/**
 * What is wrong, all in all: how many times each sensation is past what this turner minds, as logarithms, so that what is wrong twice
 * over still is less wrong when one half of it is taken away.
 */
export const faultsOf = ({ severity }: Feel): number =>
  SENSATIONS.reduce((sum, each) => sum + Math.log(Math.max(1, severity[each])), 0);

/** Nothing that this turner would mind. */
export const isSound = (feel: Feel): boolean => faultsOf(feel) === 0;

/** Free room within what this turner likes: neither dragging by the flanks nor loose. */
export const isInBand = (feel: Feel, hand: Hand): boolean => feel.free >= hand.low && feel.free <= hand.top;

import { type Millimetres, mm, type Turns, turns } from '../units/brands.ts';
import type { PlanInput } from './plan-input.ts';
import type { JointSizes } from './sizes.ts';

/** Reliefs go this far past the root, mm radial: 0.2 to 0.3 (common practice, no source). */
const PAST_ROOT = 0.25;
/** Parting cuts that a box from one blank costs: between lid and base, and off the chuck. */
const PARTING_CUTS = 2;

/** Everything measured along the axis, and the turned diameters that go with it. */
export interface PlanLengths {
  /** Engaged thread: turns times pitch. */
  readonly thread: Millimetres;
  /** Thread to cut in the recess: the engaged length, and what lies over the tenon's relief. */
  readonly recessThread: Millimetres;
  /** At the floor of the recess and at the tenon's shoulder alike: tooth centre to the front of the cutter's body, and a quarter pitch. */
  readonly reliefWidth: Millimetres;
  /** Radial, from the turned surface. */
  readonly reliefDepth: Millimetres;
  readonly recessReliefDiameter: Millimetres;
  readonly tenonReliefDiameter: Millimetres;
  /** Chamfers at 45 degrees, down to the root of the thread: the diameter where each ends. */
  readonly recessChamferDiameter: Millimetres;
  readonly tenonChamferDiameter: Millimetres;
  /** Mouth to floor, relief included. */
  readonly recessDepth: Millimetres;
  readonly tenonLength: Millimetres;
  /** End of the tenon to the floor when the lid is home: room to rub a shoulder for the grain. */
  readonly bottomGap: Millimetres;
  /** Turns of the crank from the tooth's centre at the mouth or the end to its stop in the relief. */
  readonly recessTurns: Turns;
  readonly tenonTurns: Turns;
  /** What joint and parting cost beyond the box one sees; the tenon's length is added to the piece that carries it. */
  readonly blank: {
    readonly tenonIn: 'lid' | 'base';
    readonly tenon: Millimetres;
    readonly kerfs: Millimetres;
    readonly cost: Millimetres;
  };
}

/** Relief wide enough for the tooth to run out and the cutter's body to stop short of the wood, mm. */
const reliefWidth = (pitch: Millimetres, aheadOfTooth: Millimetres): Millimetres =>
  mm(aheadOfTooth + pitch / 4);

/**
 * The lengths of a joint, all mm. The tenon's relief lies inside the mouth of the recess, so the recess's thread is longer by it; the
 * two reliefs are alike, so the tenon ends a relief's width above the floor.
 */
export const planLengths = (input: PlanInput, sizes: JointSizes): PlanLengths => {
  const { pitch, recess, threads, kerf } = input;
  const width = reliefWidth(pitch, input.cutter.aheadOfTooth);
  const thread = threads * pitch;
  const reliefDepth = sizes.depth + PAST_ROOT;
  const tenonLength = thread + width;
  const recessDepth = input.turnedDepth ?? tenonLength + width;
  const kerfs = PARTING_CUTS * kerf;
  return {
    thread: mm(thread),
    recessThread: mm(thread + width),
    reliefWidth: width,
    reliefDepth: mm(reliefDepth),
    recessReliefDiameter: mm(recess + 2 * reliefDepth),
    tenonReliefDiameter: mm(sizes.tenon - 2 * reliefDepth),
    recessChamferDiameter: mm(recess + 2 * sizes.depth),
    tenonChamferDiameter: mm(sizes.tenon - 2 * sizes.depth),
    recessDepth: mm(recessDepth),
    tenonLength: mm(tenonLength),
    bottomGap: mm(recessDepth - tenonLength),
    recessTurns: turns((thread + width) / pitch + 0.25),
    tenonTurns: turns(threads + 0.25),
    blank: {
      tenonIn: input.recessIn === 'lid' ? 'base' : 'lid',
      tenon: mm(tenonLength),
      kerfs: mm(kerfs),
      cost: mm(tenonLength + kerfs),
    },
  };
};

/** Where the cross-slide stands at touch-off: distance between work axis and cutter axis, mm, and how far it goes between the pieces. */
export interface SlidePlaces {
  readonly tenon: Millimetres;
  readonly recess: Millimetres;
  /** Between the two ends of its work; null until it is known which wall of the recess is cut. */
  readonly travel: Millimetres | null;
}

/** Cutter plus work radius for the tenon, their difference for the recess. Exact. */
export const slidePlaces = (input: PlanInput, sizes: JointSizes): SlidePlaces => {
  const { cutter, slide } = input;
  const tenon = cutter.radius + sizes.tenon / 2;
  const recess = input.recess / 2 - cutter.radius;
  const travel =
    slide === null ? null : slide.recessDial === 'same' ? tenon + recess + sizes.depth : tenon - recess;
  return { tenon: mm(tenon), recess: mm(recess), travel: travel === null ? null : mm(travel) };
};

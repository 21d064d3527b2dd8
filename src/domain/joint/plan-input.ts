import { firstRefusal, type Refusal, within } from '../result.ts';
import type { Millimetres, MoisturePercent, Radians } from '../units/brands.ts';
import type { SwingingPiece } from '../wood/movement.ts';
import { outside } from './bounds.ts';
import type { Dial } from './dial.ts';
import { badForm, type VForm } from './profile.ts';

/** The tool that cuts both pieces. */
interface Cutter {
  /** Spindle axis to tooth tip. */
  readonly radius: Millimetres;
  readonly tipFlat: Millimetres;
  /** How far anything sticks out ahead of the tooth's centre. */
  readonly aheadOfTooth: Millimetres;
  /** Radius of neck or arbor behind the tooth; null when not known. */
  readonly neckRadius: Millimetres | null;
}

/** What a joint is planned from. Nothing here is asked for twice: null is "not known", and the plan does without. */
export interface PlanInput {
  /** Diameter of the recess before threading: the opening. */
  readonly recess: Millimetres;
  readonly pitch: Millimetres;
  /** The piece, or the insert ring, that carries each thread. */
  readonly woodOfRecess: SwingingPiece;
  readonly woodOfTenon: SwingingPiece;
  /** Change of moisture either way that the lid must survive. */
  readonly moistureSwing: MoisturePercent;
  readonly cutter: Cutter;
  /** A wanted clearance (null: the usual for the pitch, or more where the season asks for it), or the turner's own depth of cut. */
  readonly aim:
    | { readonly by: 'fit'; readonly clearance: Millimetres | null }
    | { readonly by: 'depth'; readonly depth: Millimetres; readonly clearance: Millimetres | null };
  readonly recessIn: 'lid' | 'base';
  /** Turns engaged, at least three. */
  readonly threads: number;
  /** Width of one parting cut. */
  readonly kerf: Millimetres;
  /** Dry thickness of the finish on the flanks. */
  readonly film: Millimetres;
  /** How far the two grooves will lean apart; not known when missing, and then the most that a set-up may leave. */
  readonly mismatch?: Radians;
  readonly outside: Millimetres | null;
  /** Depth of a recess that is turned already. */
  readonly turnedDepth: Millimetres | null;
  readonly passes: 'two-thirds' | 'equal-area' | 'crumbly';
  readonly dial: Dial | null;
  readonly slide: Slide | null;
}

export interface Slide {
  readonly travel: Millimetres;
  /** To go deeper in the recess the dial turns the same way as for the tenon (the recess is cut on its other wall), or the other way. */
  readonly recessDial: 'same' | 'other';
}

/** Fewest turns worth cutting. Common practice, no source. */
const FEWEST_THREADS = 3;

export const formOf = ({ pitch, cutter }: PlanInput): VForm => ({ pitch, tipFlat: cutter.tipFlat });

/** The first thing wrong with the input by itself, before anything is reckoned. */
export const badInput = (input: PlanInput): Refusal | undefined =>
  badForm(formOf(input)) ??
  outside({
    recess: input.recess,
    moistureSwing: input.moistureSwing,
    cutterRadius: input.cutter.radius,
    aheadOfTooth: input.cutter.aheadOfTooth,
    neckRadius: input.cutter.neckRadius ?? undefined,
    wantedClearance: input.aim.clearance ?? undefined,
    kerf: input.kerf,
    film: input.film,
    mismatch: input.mismatch,
    outside: input.outside ?? undefined,
    turnedDepth: input.turnedDepth ?? undefined,
  }) ??
  firstRefusal(
    within('threads', input.threads, FEWEST_THREADS, 20, 'turns'),
    within('slideTravel', input.slide?.travel ?? 1, 0, 1000),
  );

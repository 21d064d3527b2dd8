import { type Fit, fitOf } from '../../../src/domain/joint/fit.ts';
import { mm } from '../../../src/domain/units/brands.ts';

/** Slope of a flank, tan 30 degrees. */
export const SLOPE = Math.tan(Math.PI / 6);

/** Radial lobes that wood or jaws give a round piece: amplitude, mm, and where the first lobe is, rad. */
export interface Lobe {
  amplitude: number;
  phase: number;
}

/** One threaded piece as it truly is, mm and degrees. Nobody in the workshop knows these numbers. */
export interface Piece {
  /** Turned diameter at the mouth of the thread, and groove depth from it as the dial cut it. */
  diameter: number;
  depth: number;
  tip: number;
  /** Widening by the helix per flank. */
  shift: number;
  /** Radial: crests that stand higher than the surface that was measured. */
  raised: number;
  /** Diametral over the thread; above 0 it takes room at the far end. */
  taper: number;
  /** Radial: the groove's end is shallower by this; all of it is shallower by `spring`. */
  creep: number;
  spring: number;
  /** Axial: the ridge is thinner by this. */
  slip: number;
  /** Radial: turned surface off the axis of the groove. */
  offCentre: number;
  /** Degrees: shoulder out of square to the thread; teeth out of upright. */
  tilt: number;
  lean: number;
  /** Axial, once a turn. */
  wobble: number;
  fuzz: number;
  /** Thickness of finish on each flank. */
  film: number;
  oval: Lobe;
  pinched: { two: Lobe; three: Lobe; four: Lobe };
  /** 0 sound to 1: how little the crests hold. */
  weak: number;
  burnt: boolean;
}

/** Both pieces and what is between them. */
export interface Workpiece {
  readonly pitch: number;
  /** Turns that engage when the lid is home. */
  readonly turns: number;
  /** Outside diameter of the shoulder. */
  readonly shoulder: number;
  /** Force of wood and skin against the hand; 1 is an average hardwood without wax. */
  drag: number;
  recess: Piece;
  tenon: Piece;
  /** Room at the floor, below 0 the tenon hits it first; relief and last thread: axial, too short by. */
  floor: number;
  reliefShort: number;
  lastThread: number;
  hump: number;
  struck: number;
  /** Radial: lead-in that is missing. 0 to 1: how badly it was started crossed. */
  noLeadIn: number;
  crossed: number;
  chips: number;
  dent: number;
  /** Where dents and wobbles meet, rad. */
  readonly meets: number;
  /** What sizes would have been without any error. */
  readonly meant: {
    readonly recess: { readonly diameter: number; readonly depth: number };
    readonly tenon: { readonly diameter: number; readonly depth: number };
    readonly tip: number;
  };
}

const copyOfPiece = (piece: Piece): Piece => ({
  ...piece,
  oval: { ...piece.oval },
  pinched: {
    two: { ...piece.pinched.two },
    three: { ...piece.pinched.three },
    four: { ...piece.pinched.four },
  },
});

export const copyOf = (work: Workpiece): Workpiece => ({
  ...work,
  recess: copyOfPiece(work.recess),
  tenon: copyOfPiece(work.tenon),
});

/** The ideal fit of what was truly turned and cut, by the project's own geometry, which other tests hold against brute force. */
export const idealFit = ({ pitch, recess, tenon }: Workpiece): Fit => {
  const cut = ({ diameter, depth, tip, shift }: Piece) => ({
    diameter: mm(diameter),
    depth: mm(depth),
    tipFlat: mm(tip),
    flankShift: mm(shift),
  });
  const fit = fitOf({ pitch: mm(pitch), recess: cut(recess), tenon: cut(tenon) });
  if (!fit.ok) throw new Error(`the workshop made a pair that has no fit: ${JSON.stringify(fit.error)}`);
  return fit.value;
};

/** Width that is left on a crest, mm: what the groove, its widening and a slip leave of the pitch. */
export const crestFlat = ({ pitch }: Workpiece, { depth, tip, shift, slip }: Piece): number =>
  pitch - tip - 2 * shift - 2 * SLOPE * depth - slip;

import { cutTo } from './groove.ts';
import type { Mate } from './mating.ts';

const SLOPE = Math.tan(Math.PI / 6);

/** A joint with both pieces cut to one depth: 60 degree form, engagement in percent of 0.75 H. */
export interface Joint {
  readonly pitch: number;
  readonly opening: number;
  readonly engagement: number;
  readonly clearance: number;
  readonly tipFlat: number;
  readonly cutterRadius: { readonly tenon: number; readonly recess: number };
}

export interface Sizes {
  readonly engaged: number;
  readonly tenon: number;
  readonly depth: number;
}

export const sizesOf = ({ pitch, opening, engagement, clearance, tipFlat }: Joint): Sizes => {
  const engaged = (engagement / 100) * 0.75 * (pitch / (2 * SLOPE));
  const crestFlat = (pitch - SLOPE * (2 * engaged + clearance)) / 2;
  return { engaged, tenon: opening + 2 * engaged, depth: (pitch - tipFlat - crestFlat) / (2 * SLOPE) };
};

/** How each piece's jig stood: yaw in degrees, and the side of the work that was cut. */
export interface Stood {
  readonly yawDeg: number;
  readonly side: 1 | -1;
}

const STRAIGHT: Stood = { yawDeg: 0, side: 1 };

/** Both pieces of a joint, cut in simulation; a left-hand thread on request. */
export const cutJoint = (
  joint: Joint,
  stood: { readonly tenon: Stood; readonly recess: Stood } = { tenon: STRAIGHT, recess: STRAIGHT },
  hand: 'right' | 'left' = 'right',
): Mate => {
  const { tenon, depth } = sizesOf(joint);
  const crest = { tenon: tenon / 2, recess: joint.opening / 2 };
  const cut = (part: 'tenon' | 'recess') =>
    cutTo({
      part,
      pitch: hand === 'right' ? joint.pitch : -joint.pitch,
      cutter: { radius: joint.cutterRadius[part], tipFlat: joint.tipFlat },
      radius: crest[part],
      depth,
      ...stood[part],
    });
  return { tenon: cut('tenon'), recess: cut('recess'), crest };
};

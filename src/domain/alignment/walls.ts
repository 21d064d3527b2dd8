import type { Rig } from '../box/records.ts';

/**
 * Whether equal leans of tenon and recess cancel or double in the joint. The wall is decided by the dial: if going
 * deeper turns it the same way for both, they are cut on opposite sides of the work, and a lean kept for both
 * cancels; if it turns the other way, on the same side, and it doubles. Not known: the worse is assumed.
 */
export type Together = 'cancels' | 'doubles' | 'worst-case';

export const together = (recessDial: Rig['recessDial']): Together => {
  if (recessDial === null) return 'worst-case';
  return recessDial === 'same' ? 'cancels' : 'doubles';
};

/** Which side of the work the cutter touches: +1 the rear, -1 the front. */
type Side = 1 | -1;

/**
 * The side on which the cutter touches each part. A jig in front of the lathe's axis has its tenon touched at the
 * rear, a jig behind at the front; the recess follows from the dial. Nothing when the rig does not say.
 */
export const sidesTouched = (
  rig: Pick<Rig, 'jigSide' | 'recessDial'>,
): { readonly tenon: Side; readonly recess: Side } | undefined => {
  if (rig.jigSide === null || rig.recessDial === null) return undefined;
  const tenon: Side = rig.jigSide === 'front' ? 1 : -1;
  const other: Side = tenon === 1 ? -1 : 1;
  return { tenon, recess: rig.recessDial === 'same' ? other : tenon };
};

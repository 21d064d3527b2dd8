import { ok, type Result } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import type { CutPiece, Pair } from './fit.ts';
import { flankShift } from './helix.ts';

/** Helix widening per flank of both grooves, half-way up the engaged flank, mm. */
export interface Shifts {
  readonly recess: Millimetres;
  readonly tenon: Millimetres;
}

type Piece = Pick<CutPiece, 'diameter' | 'depth'>;

/** The two pieces as they are or will be turned and cut, and the cutter's radius at its tip. */
interface PairToWiden {
  readonly pitch: Millimetres;
  readonly recess: Piece;
  readonly tenon: Piece;
  readonly cutterRadius: Millimetres;
}

/** How much the disc widens each groove of a pair, mm per flank. As good as `flankShift`, and refused where it is. */
export const flankShifts = ({ pitch, recess, tenon, cutterRadius }: PairToWiden): Result<Shifts> => {
  const half = (tenon.diameter - recess.diameter) / 4;
  const shift = (part: 'recess' | 'tenon', { depth }: Piece, workRadius: number) =>
    flankShift({
      part,
      pitch,
      workRadius: mm(workRadius),
      cutterRadius: mm(cutterRadius - (depth - half)),
    });
  const inRecess = shift('recess', recess, recess.diameter / 2 + half);
  if (!inRecess.ok) return inRecess;
  const onTenon = shift('tenon', tenon, tenon.diameter / 2 - half);
  return onTenon.ok ? ok({ recess: inRecess.value, tenon: onTenon.value }) : onTenon;
};

/** The pair with its grooves widened by this cutter. A cutter that could not have cut it widens nothing. */
export const widened = (pair: Pair, cutterRadius: Millimetres): Pair => {
  const shifts = flankShifts({ ...pair, cutterRadius });
  if (!shifts.ok) return pair;
  return {
    ...pair,
    recess: { ...pair.recess, flankShift: shifts.value.recess },
    tenon: { ...pair.tenon, flankShift: shifts.value.tenon },
  };
};

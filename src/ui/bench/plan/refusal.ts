import { ASSUMED } from '../../../domain/box/assumed.ts';
import type { Rig } from '../../../domain/box/records.ts';
import type { Refusal } from '../../../domain/result.ts';
import { MM_PER_INCH } from '../../../domain/units/brands.ts';
import type { PlanField } from './texts.ts';

/** Which field of the form a refused figure came from; what is not here came from the rig. */
const FIELD_OF: Readonly<Partial<Record<string, PlanField>>> = {
  recess: 'opening',
  outside: 'outside',
  depth: 'dialTurns',
  dialTurns: 'dialTurns',
  wantedClearance: 'clearance',
  clearance: 'clearance',
  engagement: 'clearance',
  threads: 'threads',
};

/** The nearest figure that can be had, rounded to the side that is accepted when it is typed in. */
const typable = (nearest: number, given: number, step: number): number =>
  (nearest > given ? Math.ceil(nearest / step - 1e-6) : Math.floor(nearest / step + 1e-6)) * step;

const STEP = { in: MM_PER_INCH / 1000, mm: 0.01 } as const;
const TURN_STEP = 0.01;

/** The field a plan's refusal belongs to, with the refusal in that field's own terms; null when it is the rig's. */
export const placeRefusal = (
  refusal: Refusal,
  rig: Rig,
  unit: 'in' | 'mm',
): { readonly field: PlanField; readonly refusal: Refusal } | null => {
  const field = FIELD_OF[refusal.field];
  if (!field) return null;
  if (refusal.problem !== 'conflict') return { field, refusal };
  const { given, nearest, quantity } = refusal;
  if (field === 'dialTurns') {
    const travel = rig.travelPerTurn?.mm ?? ASSUMED.travelPerTurn;
    const inTurns = nearest === null ? null : typable(nearest / travel, given / travel, TURN_STEP);
    return { field, refusal: { ...refusal, given: given / travel, nearest: inTurns, quantity: 'turns' } };
  }
  if (nearest === null || quantity !== 'length') return { field, refusal };
  return { field, refusal: { ...refusal, nearest: typable(nearest, given, STEP[unit]) } };
};

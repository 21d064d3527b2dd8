import type { LidCheck, LidTurns } from '../../src/domain/box/records.ts';
import type { Random } from '../../src/domain/random.ts';
import { type Millimetres, moisture, rad } from '../../src/domain/units/brands.ts';
import { leastClearance } from '../../src/domain/wood/movement.ts';
import { dayOf } from './calendar.ts';
import { expected } from './scenario.ts';
import { strainIn } from './woods.ts';

const DAY = 24 * 60 * 60 * 1000;

/** Moisture of wood in a house by the day of the year, percent points from its yearly mean: driest at the end of January, as heating dries it. */
const moistureAt = (at: number): number => {
  const dayOfYear = (at / DAY) % 365.25;
  return -2.5 * Math.cos((2 * Math.PI * (dayOfYear - 30)) / 365.25);
};

/** More than this rattles at any pitch, mm. */
const LOOSE = 0.72;

/** What a lid does when both pieces have moved since the box was closed, the lid half turned from where it was cut. */
export const lidAt = (
  clearance: Millimetres,
  diameter: Millimetres,
  wood: string,
  grainAngle: number,
  closedAt: number,
  at: number,
): LidTurns => {
  const change = moisture(moistureAt(at) - moistureAt(closedAt));
  const piece = { strain: strainIn(wood), grain: 'end', change } as const;
  const least = expected(leastClearance(clearance, diameter, piece, piece, rad(grainAngle)));
  if (least <= 0) return 'stuck';
  if (least < 0.04) return 'stiff';
  return clearance > LOOSE ? 'loose' : 'free';
};

/** Up to two looks back, at about three months and at about nine. */
export const lookBack = (
  random: Random,
  box: { readonly clearance: Millimetres; readonly diameter: Millimetres; readonly wood: string },
  closedAt: number,
  now: number,
): readonly LidCheck[] => {
  // Most lids are turned a good way off the line their figure would ask for, some not at all.
  const grainAngle = random.between(0, Math.PI / 2);
  return [90, 270].flatMap((days, i) => {
    const at = closedAt + Math.round(random.between(days * 0.7, days * 1.3)) * DAY;
    if (at > now - DAY || !random.chance(0.55)) return [];
    const lid = lidAt(box.clearance, box.diameter, box.wood, grainAngle, closedAt, at);
    return [{ id: `later-${i + 1}`, at, on: dayOf(at), lid }];
  });
};

import type { Dial } from '../joint/dial.ts';
import type { PlanInput, Slide } from '../joint/plan-input.ts';
import { type Millimetres, mm, moisture, rad } from '../units/brands.ts';
import type { SwingingPiece } from '../wood/movement.ts';
import { strainOf, usualStrain } from '../wood/strain-of.ts';
import { ASSUMED, type Assumption, assumedCutter } from './assumed.ts';
import type { OwnWoods } from './given.ts';
import type { Plan, Rig, WoodUse } from './records.ts';

/** A 1/16 in parting tool, and a house heated in winter (percent points either way of the mean). Common practice, no source. */
const KERF = mm(1.6);
const SEASON = moisture(3);
/** A slide whose travel is not known is taken to reach; the greatest that the domain takes, mm. */
const REACHES = mm(1000);

/** The pieces, or the ring, that carry the two threads. */
export const threadWoods = (plan: Plan): { readonly recess: WoodUse; readonly tenon: WoodUse } => {
  const of = (piece: 'lid' | 'base'): WoodUse => (plan.insert?.in === piece ? plan.insert : plan[piece]);
  return plan.recessIn === 'lid'
    ? { recess: of('lid'), tenon: of('base') }
    : { recess: of('base'), tenon: of('lid') };
};

/** Joins plan, rig and woods to what a joint is planned from, and lists every default that was assumed. */
export const planInputOf = (
  plan: Plan,
  rig: Rig,
  ownWoods: OwnWoods,
  recess: Millimetres,
): { readonly input: PlanInput; readonly assumed: readonly Assumption[] } => {
  const assumed: Assumption[] = [];
  const known = (what: keyof typeof ASSUMED, length: Millimetres = ASSUMED[what]): Millimetres => {
    const entered = rig[what];
    if (entered) return entered.mm;
    assumed.push({ what, length });
    return length;
  };
  const piece = ({ wood, grain }: WoodUse): SwingingPiece => {
    const strain = strainOf(wood);
    if (strain) return { strain, grain };
    if (!assumed.some((each) => each.what === 'wood' && each.wood === wood))
      assumed.push({ what: 'wood', wood });
    return { strain: usualStrain(ownWoods.get(wood)?.group ?? 'hardwood'), grain };
  };
  const dial = (): Dial => ({
    travelPerTurn: known('travelPerTurn'),
    ...(rig.marksPerTurn === null ? {} : { marksPerTurn: rig.marksPerTurn }),
  });
  const slide: Slide | null =
    rig.recessDial === null ? null : { travel: rig.slideTravel?.mm ?? REACHES, recessDial: rig.recessDial };
  const woods = threadWoods(plan);
  const byDepth = plan.aim.by === 'depth';
  // A wrong lead would spoil the work, so a dial is assumed only where the plan is given in its turns.
  const theDial = byDepth || rig.travelPerTurn ? dial() : null;
  // Both threaded in one set-up, on opposite walls: whatever the jig leans, the grooves lean alike and it cancels.
  const isOneSetting = plan.route === 'both-turned';
  const input: PlanInput = {
    recess,
    pitch: plan.pitch.mm,
    woodOfRecess: piece(woods.recess),
    woodOfTenon: piece(woods.tenon),
    moistureSwing: SEASON,
    cutter: {
      radius: known('cutterRadius', assumedCutter(recess)),
      tipFlat: known('tipFlat'),
      aheadOfTooth: known('aheadOfTooth'),
      neckRadius: null,
    },
    aim:
      plan.aim.by === 'fit'
        ? { by: 'fit', clearance: plan.aim.clearance?.mm ?? null }
        : {
            by: 'depth',
            depth: mm(plan.aim.dialTurns * (theDial?.travelPerTurn ?? ASSUMED.travelPerTurn)),
            clearance: null,
          },
    recessIn: plan.recessIn,
    threads: plan.threads,
    kerf: KERF,
    film: mm(0),
    ...(isOneSetting && rig.recessDial === 'same' ? { mismatch: rad(0) } : {}),
    outside: plan.outside?.mm ?? null,
    turnedDepth: null,
    passes: plan.passes,
    dial: theDial,
    slide,
  };
  return { input, assumed };
};

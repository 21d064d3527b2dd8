import type { OwnWood, Plan, Rig, WoodUse } from '../domain/box/records.ts';
import type { Dial } from '../domain/joint/dial.ts';
import type { PlanInput, Slide } from '../domain/joint/plan-input.ts';
import { type Millimetres, mm, moisture, rad } from '../domain/units/brands.ts';
import type { SwingingPiece } from '../domain/wood/movement.ts';
import { strainOf, usualStrain } from '../domain/wood/strain-of.ts';
import { USUAL } from './usual-figures.ts';

/** A 1/16 in parting tool, and a house heated in winter (percent points either way of the mean). Common practice, no source. */
const KERF = mm(1.6);
const SEASON = moisture(3);
/** Of the recess's radius: a cutter not yet told is no reason to refuse a small box. */
const ROOM_FOR_CUTTER = 0.7;
/** A slide whose travel is not known is taken to reach; the greatest that the domain takes, mm. */
const REACHES = mm(1000);

/** A usual figure that stood in for one not known yet. */
export type StandIn =
  | { readonly what: keyof typeof USUAL; readonly length: Millimetres }
  | { readonly what: 'wood'; readonly wood: string };

export type OwnWoods = ReadonlyMap<string, OwnWood>;

/** The pieces, or the ring, that carry the two threads. */
export const threadWoods = (plan: Plan): { readonly recess: WoodUse; readonly tenon: WoodUse } => {
  const of = (piece: 'lid' | 'base'): WoodUse => (plan.insert?.in === piece ? plan.insert : plan[piece]);
  return plan.recessIn === 'lid'
    ? { recess: of('lid'), tenon: of('base') }
    : { recess: of('base'), tenon: of('lid') };
};

/** Joins plan, rig and woods to what a joint is planned from, and lists every usual figure that stood in. */
export const planInputOf = (
  plan: Plan,
  rig: Rig,
  ownWoods: OwnWoods,
  recess: Millimetres,
): { readonly input: PlanInput; readonly standIns: readonly StandIn[] } => {
  const standIns: StandIn[] = [];
  const known = (what: keyof typeof USUAL, usual: Millimetres = USUAL[what]): Millimetres => {
    const told = rig[what];
    if (told) return told.mm;
    standIns.push({ what, length: usual });
    return usual;
  };
  const piece = ({ wood, grain }: WoodUse): SwingingPiece => {
    const strain = strainOf(wood);
    if (strain) return { strain, grain };
    if (!standIns.some((s) => s.what === 'wood' && s.wood === wood)) standIns.push({ what: 'wood', wood });
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
  // A wrong lead would spoil the work, so a dial is only guessed at where the plan is told in its turns.
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
      radius: known('cutterRadius', mm(Math.min(USUAL.cutterRadius, (ROOM_FOR_CUTTER * recess) / 2))),
      tipFlat: known('tipFlat'),
      aheadOfTooth: known('aheadOfTooth'),
      neckRadius: null,
    },
    aim:
      plan.aim.by === 'fit'
        ? { by: 'fit', clearance: plan.aim.clearance?.mm ?? null }
        : {
            by: 'depth',
            depth: mm(plan.aim.dialTurns * (theDial?.travelPerTurn ?? USUAL.travelPerTurn)),
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
  return { input, standIns };
};

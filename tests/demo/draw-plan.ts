import type { Hardener, Plan } from '../../src/domain/box/records.ts';
import { usualEngagement } from '../../src/domain/joint/engagement.ts';
import { type Fit, fitOf } from '../../src/domain/joint/fit.ts';
import { widened } from '../../src/domain/joint/flank-shifts.ts';
import { passDepths } from '../../src/domain/joint/passes.ts';
import type { VForm } from '../../src/domain/joint/profile.ts';
import { tenonFromDepth, tenonFromEngagement } from '../../src/domain/joint/sizes.ts';
import type { Random } from '../../src/domain/random.ts';
import { inches, type Millimetres, mm, mmFromInches } from '../../src/domain/units/brands.ts';
import type { Length } from '../../src/domain/units/length.ts';
import { RIGS, type RigId } from './rigs.ts';
import {
  type BoxKind,
  expected,
  type PitchName,
  type PitchTruth,
  SCENARIO,
  type Turner,
} from './scenario.ts';
import { typedInches, typedMm, typedPitch } from './typed.ts';

/** What somebody set out to make. */
export interface Order {
  readonly name: string;
  readonly kind: BoxKind['name'];
  readonly turner: Turner;
  readonly rigId: RigId;
  readonly pitchName: PitchName;
  readonly truth: PitchTruth;
  /** Lid and body together; the log has no place for it. */
  readonly height: Millimetres;
  readonly plan: Plan;
  /** The wood that carries the thread and crumbles first. */
  readonly weakestWood: string;
  readonly hardener: Hardener;
  /** Full depth of the groove on the dial. */
  readonly depth: Length;
  readonly passes: readonly Millimetres[];
  readonly tipFlat: Millimetres;
}

const shareOf = (wood: string): number => SCENARIO.woods.sound[wood]?.share ?? 0;
export const soundIn = (wood: string, pitch: PitchName): number => SCENARIO.woods.sound[wood]?.[pitch] ?? 1;

const drawWoods = (random: Random, pitch: PitchName) => {
  const woods = Object.keys(SCENARIO.woods.sound);
  const main = random.weighted(woods, shareOf);
  const other = random.chance(0.08) ? random.weighted(woods, shareOf) : main;
  const [lid, base] = [other, main];
  // A soft wood now and then gets a ring of a hard one, and then only its other piece can crumble.
  const ring = soundIn(lid, pitch) < 0.6 && random.chance(0.4);
  const carriers = ring ? [SCENARIO.woods.ringWood, base] : [lid, base];
  const weakest = carriers.reduce((a, b) => (soundIn(b, pitch) < soundIn(a, pitch) ? b : a));
  return { lid, base, ring, weakest };
};

const drawRig = (random: Random, kind: BoxKind, pitch: PitchName): RigId => {
  if (kind.name === 'Needle case') return 'rig-short';
  if (pitch === '10 tpi') return 'rig-long';
  return random.chance(0.6) ? 'rig-long' : 'rig-short';
};

const drawHardener = (random: Random, sound: number): Hardener => {
  if (sound < 0.9 && random.chance(0.3)) return 'thin-ca';
  return random.weighted<Hardener>(['none', 'wax', 'sealer'], (h) =>
    h === 'none' ? 88 : h === 'wax' ? 7 : 5,
  );
};

/** Most bores follow a drill or a rule in sixteenths; the rest were turned until they looked right. */
const drawOpening = (random: Random, [least, most]: BoxKind['openingIn']): Length => {
  const size = random.between(least, most);
  return random.chance(0.55)
    ? typedInches(mmFromInches(inches(Math.round(size * 16) / 16)), 4)
    : typedInches(mmFromInches(inches(size)), 2);
};

/** A turner's own habit lies a mark or two about the usual depth; planned for the fit, the depth follows from it. */
const drawDepth = (
  random: Random,
  truth: PitchTruth,
  turner: Turner,
  form: VForm,
  byHabit: boolean,
): Length => {
  if (byHabit) return typedInches(mmFromInches(inches(truth.depthIn + random.whole(-2, 2) / 1000)));
  const wanted = { recess: mm(40), clearance: mm(aimOf(truth, turner)) };
  const engagement = expected(usualEngagement(form.pitch));
  return typedInches(expected(tenonFromEngagement(form, wanted, engagement, '0.75H')).depth);
};

/** One box as it was planned. The turner aims, but for a habit of a hair either way, at what truly runs well here. */
export const drawOrder = (random: Random): Order => {
  const turner = random.weighted(SCENARIO.turners, (t) => t.share);
  const kind = random.weighted(SCENARIO.kinds, (k) => k.share);
  const pitchName = random.weighted(Object.keys(kind.pitches) as PitchName[], (p) => kind.pitches[p] ?? 0);
  const truth = SCENARIO.pitches[pitchName];
  const rigId = drawRig(random, kind, pitchName);
  const rig = RIGS[rigId];
  const pitch = typedPitch(pitchName);
  const form = { pitch: pitch.mm, tipFlat: rig.tipFlat.mm };
  const woods = drawWoods(random, pitchName);
  const byHabit = random.chance(0.2);
  const depth = drawDepth(random, truth, turner, form, byHabit);
  const opening = drawOpening(random, kind.openingIn);
  const outside = typedInches(mm(opening.mm * random.between(...kind.outsidePerOpening)), 2);
  const sound = soundIn(woods.weakest, pitchName);
  const habit = sound < 0.6 ? 'crumbly' : 'two-thirds';
  return {
    kind: kind.name,
    name: `${kind.name}, ${random.pick(SCENARIO.words[kind.name])}`,
    turner,
    rigId,
    pitchName,
    truth,
    height: mm(outside.mm * random.between(...kind.heightPerOutside)),
    weakestWood: woods.weakest,
    hardener: drawHardener(random, sound),
    depth,
    passes: expected(passDepths({ form, depth: depth.mm }, { by: habit })),
    tipFlat: rig.tipFlat.mm,
    plan: {
      route: rig.banjos === 1 && random.chance(0.5) ? 'both-turned' : 'recess-first',
      recessIn: random.chance(0.7) ? 'lid' : 'base',
      lid: { wood: woods.lid, grain: 'end' },
      base: { wood: woods.base, grain: 'end' },
      insert: woods.ring ? { wood: SCENARIO.woods.ringWood, grain: 'end', in: 'lid' } : null,
      pitch,
      opening,
      outside,
      aim: byHabit
        ? { by: 'depth', dialTurns: Number((depth.mm / rig.travelPerTurn.mm).toFixed(3)) }
        : { by: 'fit', clearance: typedMm(aimOf(truth, turner)) },
      threads: random.pick(kind.threads),
      passes: habit,
    },
  };
};

/** The clearance that a turner works towards, mm. */
export const aimOf = (truth: PitchTruth, turner: Turner): number => truth.clearanceMm + turner.aimMm;

/** How two pieces of these sizes go together, cut by the disc of this order's lathe. */
export const fitWith = (
  { plan, depth, tipFlat, rigId }: Pick<Order, 'plan' | 'depth' | 'tipFlat' | 'rigId'>,
  recess: Millimetres,
  tenon: Millimetres,
  tenonDepth = depth.mm,
): Fit =>
  expected(
    fitOf(
      widened(
        {
          pitch: plan.pitch.mm,
          recess: { diameter: recess, depth: depth.mm, tipFlat },
          tenon: { diameter: tenon, depth: tenonDepth, tipFlat },
        },
        RIGS[rigId].cutterRadius.mm,
      ),
    ),
  );

/** The tenon that such an aim asks for over a bore as read. */
export const wantedTenon = (order: Order, bore: Millimetres): Millimetres => {
  const { truth, turner, depth, tipFlat, plan } = order;
  const clearance = mm(aimOf(truth, turner));
  const narrow = expected(
    tenonFromDepth({ pitch: plan.pitch.mm, tipFlat }, { recess: bore, clearance }, depth.mm),
  ).tenon;
  // The disc cuts a little wider than its profile, and that is clearance too.
  return mm(narrow + fitWith(order, bore, narrow).clearance - clearance);
};

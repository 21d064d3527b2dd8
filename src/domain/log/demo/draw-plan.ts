import type { Hardener, Plan } from '../../box/records.ts';
import { passDepths } from '../../joint/passes.ts';
import { tenonFromDepth } from '../../joint/sizes.ts';
import type { Random } from '../../random.ts';
import { inches, type Millimetres, mm, mmFromInches } from '../../units/brands.ts';
import type { Length } from '../../units/length.ts';
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
  readonly turner: Turner;
  readonly rigId: RigId;
  readonly pitchName: PitchName;
  readonly truth: PitchTruth;
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

/** One box as it was planned. The turner aims, but for a habit of a hair either way, at what truly runs well here. */
export const drawOrder = (random: Random): Order => {
  const turner = random.weighted(SCENARIO.turners, (t) => t.share);
  const kind = random.weighted(SCENARIO.kinds, (k) => k.share);
  const pitchName = random.weighted(Object.keys(kind.pitches) as PitchName[], (p) => kind.pitches[p] ?? 0);
  const truth = SCENARIO.pitches[pitchName];
  const rigId = drawRig(random, kind, pitchName);
  const rig = RIGS[rigId];
  const pitch = typedPitch(pitchName);
  const woods = drawWoods(random, pitchName);
  const depth = typedInches(mmFromInches(inches(truth.depthIn)));
  const sixteenths = Math.round(random.between(...kind.openingIn) * 16);
  const opening = typedInches(mmFromInches(inches(sixteenths / 16)), 4);
  const sound = soundIn(woods.weakest, pitchName);
  const habit = sound < 0.6 ? 'crumbly' : 'two-thirds';
  const form = { pitch: pitch.mm, tipFlat: rig.tipFlat.mm };
  return {
    name: `${kind.name}, ${random.pick(SCENARIO.words[kind.name])}`,
    turner,
    rigId,
    pitchName,
    truth,
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
      outside: typedInches(mm(opening.mm + 14), 2),
      aim: random.chance(0.3)
        ? { by: 'depth', dialTurns: depth.mm / rig.travelPerTurn.mm }
        : { by: 'fit', clearance: random.chance(0.5) ? null : typedMm(aimOf(truth, turner)) },
      threads: truth.threads,
      passes: habit,
    },
  };
};

/** The clearance that a turner works towards, mm. */
export const aimOf = (truth: PitchTruth, turner: Turner): number => truth.clearanceMm + turner.aimMm;

/** The tenon that such an aim asks for over a bore as read. */
export const wantedTenon = ({ truth, turner, depth, tipFlat, plan }: Order, bore: Millimetres): Millimetres =>
  expected(
    tenonFromDepth(
      { pitch: plan.pitch.mm, tipFlat },
      { recess: bore, clearance: mm(aimOf(truth, turner)) },
      depth.mm,
    ),
  ).tenon;

import table from '../../shared/demo-scenario.json';
import type { Result } from '../../src/domain/result.ts';

export type PitchName = '10 tpi' | '16 tpi' | '20 tpi';
/** The steps that somebody in the workshop sometimes misses; never a hold point. */
export type Missable = 'gap' | 'touch-off' | 'square-banjo' | 'board' | 'cone' | 'pick-up';

export interface Turner {
  readonly name: string;
  readonly share: number;
  /** Times the usual time of a step. */
  readonly pace: number;
  /** How often several steps are ticked at once. */
  readonly stretches: number;
  /** Times the usual chance of missing a step. */
  readonly misses: number;
  readonly aimMm: number;
}

export interface BoxKind {
  readonly name: 'Spice jar' | 'Tea caddy' | 'Needle case';
  readonly share: number;
  readonly openingIn: readonly [number, number];
  readonly outsidePerOpening: readonly [number, number];
  /** Lid and body together, for whoever draws the box. */
  readonly heightPerOutside: readonly [number, number];
  readonly pitches: Readonly<Partial<Record<PitchName, number>>>;
  /** Turns engaged. */
  readonly threads: readonly number[];
}

export interface PitchTruth {
  /** The clearance at which a lid runs freely in this shop: mean and spread between joints, and half the band that counts as right. */
  readonly clearanceMm: number;
  readonly spreadMm: number;
  readonly halfBandMm: number;
  readonly turningErrorMm: number;
  /** The usual depth of the groove. */
  readonly depthIn: number;
}

interface Harmful {
  readonly missed: number;
  readonly hurts: boolean;
  readonly oddsRatio: number;
  readonly outWhenMissed: number;
  readonly outWhenDone: number;
}

interface Scenario {
  readonly log: string;
  readonly seed: number;
  readonly boxes: number;
  readonly days: number;
  readonly steps: Readonly<Record<Missable, { readonly missed: number; readonly hurts: boolean }>> & {
    readonly gap: Harmful;
    readonly 'touch-off': Harmful;
    readonly 'pick-up': { readonly doubledWhenMissed: number };
  };
  readonly harm: {
    readonly creepShare: number;
    readonly creepDegrees: readonly [number, number];
    readonly creepLeverMm: number;
    readonly mismatchDegrees: readonly [number, number];
    readonly depthErrorOfPitch: readonly [number, number];
  };
  readonly pitches: Readonly<Record<PitchName, PitchTruth>>;
  /** Tenon less recess that gives the mean clearance, by pitch and rig. */
  readonly allowanceMm: Readonly<Record<PitchName, Readonly<Record<string, number>>>>;
  readonly woods: {
    readonly hardenerOdds: number;
    readonly holdsFrom: number;
    readonly sound: Readonly<Record<string, Readonly<Record<PitchName | 'share', number>>>>;
    readonly ringWood: string;
  };
  readonly turners: readonly Turner[];
  readonly setUpTime: { readonly practised: number; readonly seconds: Readonly<Record<string, number>> };
  readonly kinds: readonly BoxKind[];
  readonly words: Readonly<Record<BoxKind['name'], readonly string[]>>;
}

/** The invented workshop and the truth that its log is made from. */
export const SCENARIO = table as unknown as Scenario;

/** The scenario's own numbers lie inside every range, so a refusal here means that the scenario is broken. */
export const expected = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`demo scenario: ${JSON.stringify(result.error)}`);
  return result.value;
};

import type { Random } from '../../src/domain/random.ts';
import type { Part } from '../../src/domain/setup/events.ts';
import type { Neglect } from './cut-joint.ts';
import { type Missable, SCENARIO, type Turner } from './scenario.ts';

export type Misses = Readonly<Record<Part, ReadonlySet<Missable>>>;

/** Which set-up of a joint asks the steps that square the jig. */
export interface Asked {
  /** False when the jig still stands from the box before. */
  readonly byRecess: boolean;
  /** True when the post comes out between the two, so that the tenon's set-up asks again. */
  readonly byTenon: boolean;
}

const ALIGNMENT = ['gap', 'square-banjo', 'board', 'cone'] as const;

/** Each step is missed or not by its own chance alone: haste, experience and the other steps have no part in it. */
export const drawMisses = (random: Random, turner: Turner, asked: Asked): Misses => {
  const missed: Record<Part, Set<Missable>> = { recess: new Set(), tenon: new Set() };
  const miss = (step: Missable, parts: readonly Part[]) => {
    for (const part of parts) missed[part].add(step);
  };
  const oneOrBoth = (): readonly Part[] =>
    random.pick([['recess'], ['tenon'], ['recess', 'tenon']] as const satisfies readonly Part[][]);
  for (const step of ALIGNMENT) {
    const misses = random.chance(SCENARIO.steps[step].missed * turner.misses);
    if (!misses || !(asked.byRecess || asked.byTenon)) continue;
    if (asked.byRecess && asked.byTenon) miss(step, oneOrBoth());
    // What was not done for the recess is asked again for the tenon, and missed again: the cutter is in the way by then.
    else miss(step, asked.byRecess ? ['recess', 'tenon'] : ['tenon']);
  }
  if (random.chance(SCENARIO.steps['touch-off'].missed * turner.misses)) miss('touch-off', oneOrBoth());
  return missed;
};

/** What of that matters. Without board or cone there is no gap to look at. */
export const neglectOf = (misses: Misses, pickUpMissed: boolean): Neglect => {
  const either = (...steps: readonly Missable[]) =>
    steps.some((step) => misses.recess.has(step) || misses.tenon.has(step));
  return { gap: either('gap', 'board', 'cone'), touchOff: either('touch-off'), pickUp: pickUpMissed };
};

import type { Carried } from './events.ts';
import type { RunState } from './fold.ts';
import { type Movement, type Procedure, reopenedBy } from './procedure.ts';

/**
 * What the next set-up may carry over from an earlier one: steps that were passed or carried there, are asked only once,
 * and that none of the movements in between re-opens. A contested run carries nothing: its setting is not known.
 */
export const carriedOver = (
  from: RunState,
  procedure: Procedure,
  movements: readonly Movement[],
): readonly Carried[] => {
  if (from.contested || from.readOnly) return [];
  const lost = new Set(movements.flatMap((m) => [...reopenedBy(procedure, m)]));
  const inNew = new Map(procedure.steps.map((step) => [step.key, step]));
  return from.steps.flatMap((state) => {
    const step = inNew.get(state.step.key);
    const held = state.status === 'passed' || state.status === 'carried';
    if (!step || step.everyTime || lost.has(step.key) || !held || state.since === null) return [];
    return [{ key: step.key, since: state.since }];
  });
};

/**
 * What the work itself moves between two set-ups of one box. Recess first: the jig comes off for turning the tenon, so the
 * banjo moves, or with one banjo the post is lifted out for the tool-rest; the cutter leaves the spindle. Both turned: only
 * the chuck changes on the jig.
 */
export const movementsBetween = (
  route: 'recess-first' | 'both-turned',
  banjos: 1 | 2,
): readonly Movement[] =>
  route === 'both-turned'
    ? ['chuck-off']
    : ['chuck-off', 'cutter-changed', banjos === 2 ? 'banjo-moved' : 'post-loosened'];

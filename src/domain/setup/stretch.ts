import type { RunState } from './fold.ts';

/**
 * The steps that "done down to here" would tick: from the present step up to, not including, the next open hold point.
 * Empty when the present step is itself a hold point, which is ticked alone. It also stops before `leftOut`, the
 * key of the step that an experiment skips on this box.
 */
export const stretchFromNow = (run: RunState, leftOut: string | null = null): readonly string[] => {
  const start = run.steps.findIndex((s) => s.step.key === run.now);
  if (start < 0) return [];
  const keys: string[] = [];
  for (const state of run.steps.slice(start)) {
    if (state.status !== 'to-come' && state.status !== 'reopened') continue;
    if (state.step.hold || state.step.key === leftOut) break;
    keys.push(state.step.key);
  }
  return keys;
};

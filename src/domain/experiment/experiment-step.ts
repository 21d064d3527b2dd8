import type { Procedure, Step } from '../setup/procedure.ts';

/** Whether a step rests on another, directly or through others; it is closed when that one is skipped. */
export const restsOn = (
  procedure: Procedure,
  step: Step,
  key: string,
  seen: readonly string[] = [],
): boolean =>
  step.restsOn.includes(key) ||
  procedure.steps.some(
    (under) =>
      step.restsOn.includes(under.key) &&
      !seen.includes(under.key) &&
      restsOn(procedure, under, key, [...seen, step.key]),
  );

/** Whether an experiment may leave this step out: no hold point, none that a hold point rests on, and asked in every set-up. */
export const mayVary = (procedure: Procedure, key: string): boolean =>
  procedure.steps.some((step) => step.key === key && !step.hold && !step.onlyWithGroove) &&
  !procedure.steps.some((step) => step.hold && restsOn(procedure, step, key));

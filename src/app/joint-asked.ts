import { computed, type ReadonlySignal } from '@preact/signals-core';
import { type Conditions, type JointSeen, jointUnder, type KnownPair } from '../domain/box/joint-under.ts';
import type { Refusal } from '../domain/result.ts';

/** A joint under what is asked of it at the moment. */
export interface JointAsked {
  readonly conditions: ReadonlySignal<Conditions>;
  readonly isWhatIf: ReadonlySignal<boolean>;
  /** Why there is no such joint; null while there is one. */
  readonly refusal: ReadonlySignal<Refusal | null>;
  /** The joint, and while there is none the last that there was. */
  readonly seen: ReadonlySignal<JointSeen>;
}

export const jointAsked = (
  known: KnownPair,
  asItIs: JointSeen,
  changed: ReadonlySignal<Partial<Conditions>>,
): JointAsked => {
  const isWhatIf = computed(() => Object.keys(changed.value).length > 0);
  const conditions = computed(() => ({ ...known.asItIs, ...changed.value }));
  const answer = computed(() => jointUnder(known, conditions.value));
  let last = asItIs;
  return {
    conditions,
    isWhatIf,
    refusal: computed(() => (answer.value.ok ? null : answer.value.error)),
    seen: computed(() => {
      if (answer.value.ok) last = answer.value.value;
      return last;
    }),
  };
};

import { type Given, givenFor, planOf, type Reckoned } from '../../../app/plan-of.ts';
import { logId } from '../../../app/session.ts';
import type { Box } from '../../../domain/box/records.ts';
import type { Result } from '../../../domain/result.ts';
import { useLive } from '../../parts/use-live.ts';

/** A box reckoned with what is known of its rig, caliper and woods; undefined until they are read. */
export const useReckoned = (
  box: Box,
): { readonly given: Given; readonly reckoned: Result<Reckoned> } | undefined => {
  const given = useLive(
    () => givenFor(box),
    ['rig', 'instrument', 'wood'],
    `${logId.value} ${box.rigId} ${box.instrumentId}`,
  ).value;
  return given && { given, reckoned: planOf(box, given) };
};

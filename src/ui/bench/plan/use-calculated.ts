import { givenFor } from '../../../app/calculated.ts';
import { logId } from '../../../app/session.ts';
import { type CalculatedBox, calculate } from '../../../domain/box/calculate.ts';
import type { Given } from '../../../domain/box/given.ts';
import type { Box } from '../../../domain/box/records.ts';
import type { Result } from '../../../domain/result.ts';
import { useLive } from '../../parts/use-live.ts';

/** A box calculated with what is known of its rig, caliper and woods; undefined until they are read. */
export const useCalculated = (
  box: Box,
): { readonly given: Given; readonly calculated: Result<CalculatedBox> } | undefined => {
  const given = useLive(
    () => givenFor(box),
    ['rig', 'instrument', 'wood'],
    `${logId.value} ${box.rigId} ${box.instrumentId}`,
  ).value;
  return given && { given, calculated: calculate(box, given) };
};

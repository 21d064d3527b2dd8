import { type CalculatedBox, calculate } from '../../../domain/box/calculate.ts';
import type { Given } from '../../../domain/box/given.ts';
import type { Box } from '../../../domain/box/records.ts';
import type { Result } from '../../../domain/result.ts';
import { useGiven } from '../cut/use-given.ts';

/** A box calculated with what is known of its rig, caliper and woods; undefined until they are read. */
export const useCalculated = (
  box: Box,
): { readonly given: Given; readonly calculated: Result<CalculatedBox> } | undefined => {
  const given = useGiven({ box });
  return given && { given, calculated: calculate(box, given) };
};

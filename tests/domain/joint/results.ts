import type { Refusal, Result } from '../../../src/domain/result.ts';

/** The value of a result that must not be a refusal. */
export const gotten = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.error)}`);
  return result.value;
};

/** The refusal of a result that must be one. */
export const refusalOf = (result: Result<unknown>): Refusal => {
  if (result.ok) throw new Error(`answered: ${JSON.stringify(result.value)}`);
  return result.error;
};

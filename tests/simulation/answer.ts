import type { Result } from '../../src/domain/result.ts';

/** The value of an answer that must not be a refusal. */
export const value = <T>(answer: Result<T>): T => {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};

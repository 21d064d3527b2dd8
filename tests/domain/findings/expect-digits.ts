import { expect } from 'vitest';
import type { Refusal, Result } from '../../../src/domain/result.ts';

/** Each value, rounded to as many significant digits as the reference prints (or `digits`), is the reference. */
export const expectDigits = (found: readonly number[], printed: readonly number[], digits?: number): void => {
  expect(found.length).toBe(printed.length);
  printed.forEach((reference, i) => {
    const value = found[i] as number;
    if (!Number.isFinite(reference)) {
      expect(value).toBe(reference);
      return;
    }
    const significant = digits ?? Math.min(12, digitsOf(reference));
    // Half a unit of the last digit printed, and a hair for the rounding of the comparison itself.
    const unit = 10 ** (Math.floor(Math.log10(Math.abs(reference) || 1)) + 1 - significant);
    expect(Math.abs(value - reference), `${value} against ${reference}`).toBeLessThanOrEqual(unit * 0.51);
  });
};

const digitsOf = (value: number): number =>
  value.toExponential().replace(/e.*$/, '').replace(/[-.]/g, '').length;

/** The value of a result that must be one. */
export const must = <T>(result: Result<T, Refusal>): T => {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.error)}`);
  return result.value;
};

import { expect, test } from 'vitest';
import type { Result } from '../../../src/domain/result.ts';
import { gotten, refusalOf } from './results.ts';

export type At = (field: string) => number;

export interface Case {
  readonly name: string;
  /** Good inputs by the names that its refusals use. */
  readonly good: Readonly<Record<string, number>>;
  readonly ask: (at: At) => Result<unknown>;
  /** A value out of range where minus one is in range. */
  readonly bad?: Readonly<Record<string, number>>;
}

/** A test for each case: the good is answered; each of its inputs, out of range or no number, is refused by its name. */
export const testRefusedByName = (cases: readonly Case[]): void => {
  test.each(cases)('$name', ({ good, bad = {}, ask }) => {
    gotten(ask((field) => good[field] ?? Number.NaN));
    for (const wrong of Object.keys(good)) {
      const withOne = (value: number) =>
        refusalOf(ask((field) => (field === wrong ? value : (good[field] ?? Number.NaN))));
      expect(withOne(Number.NaN)).toMatchObject({ problem: 'not-a-number', field: wrong });
      expect(withOne(bad[wrong] ?? -1)).toMatchObject({ problem: 'out-of-range', field: wrong });
    }
  });
};

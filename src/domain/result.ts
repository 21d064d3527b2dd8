/** The answer of every domain function that can refuse: a value, or a reason as data. Nothing in the domain throws on bad input. */
export type Result<T, E = Refusal> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

/**
 * Why an input was refused, as data; the screen turns it into words in the user's unit.
 * `field` is the name of the offending input. Lengths are mm, angles radians, moisture percent points.
 */
export type Refusal =
  | { readonly problem: 'empty'; readonly field: string }
  | { readonly problem: 'not-a-number'; readonly field: string; readonly typed: string }
  | { readonly problem: 'unknown-unit'; readonly field: string; readonly typed: string }
  | { readonly problem: 'too-long'; readonly field: string; readonly length: number; readonly most: number }
  | {
      /** Typed so that it can be two numbers; both as they should be typed. */
      readonly problem: 'ambiguous';
      readonly field: string;
      readonly typed: string;
      readonly readings: readonly [string, string];
    }
  | {
      readonly problem: 'out-of-range';
      readonly field: string;
      readonly given: number;
      readonly min: number;
      readonly max: number;
      readonly quantity: Quantity;
    }
  | {
      /** Two inputs that cannot both be true; `nearest` is the value of `field` closest to the one given that agrees with `other`. */
      readonly problem: 'conflict';
      readonly field: string;
      readonly other: string;
      readonly given: number;
      readonly otherGiven: number;
      readonly nearest: number | null;
      readonly quantity: Quantity;
    };

/** What kind of number a refusal speaks of, so that the words can carry the right unit. */
export type Quantity = 'length' | 'pitch' | 'angle' | 'percent' | 'count' | 'turns' | 'ratio';

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const refuse = <E = Refusal>(error: E): { readonly ok: false; readonly error: E } => ({
  ok: false,
  error,
});

/** A finite number within [min, max], or the refusal that says so. NaN and infinities are refused as not a number. */
export const within = (
  field: string,
  given: number,
  min: number,
  max: number,
  quantity: Quantity = 'length',
): Result<number> => {
  if (!Number.isFinite(given)) return refuse({ problem: 'not-a-number', field, typed: String(given) });
  if (given < min || given > max)
    return refuse({ problem: 'out-of-range', field, given, min, max, quantity });
  return ok(given);
};

/** The first refusal among several checks, or nothing. */
export const firstRefusal = (...checks: readonly Result<unknown>[]): Refusal | undefined => {
  for (const check of checks) if (!check.ok) return check.error;
  return undefined;
};

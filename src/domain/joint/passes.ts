import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { badForm, fullDepth, SLOPE, type VForm } from './profile.ts';

/** A groove to be cut in passes; depth is radial, from touch-off. */
interface Groove {
  readonly form: VForm;
  readonly depth: Millimetres;
}

/**
 * How the depth is shared out. 'two-thirds': 2/3 + 1/3 of the depth. 'crumbly': 60, 30, 10 % of the depth (both common practice, no source).
 * 'equal-area': equal chip in every pass.
 */
type PassPlan =
  | { readonly by: 'two-thirds' | 'crumbly' }
  | { readonly by: 'equal-area'; readonly passes: number };

const shares = { 'two-thirds': [2 / 3, 1], crumbly: [0.6, 0.9, 1] } as const;

/** Section of the groove at a depth: f d + d^2 tan A. */
const area = (tipFlat: number, depth: number): number => depth * (tipFlat + SLOPE * depth);

/** The depth whose groove has a given section. */
const depthOfArea = (tipFlat: number, section: number): number =>
  (-tipFlat + Math.sqrt(tipFlat ** 2 + 4 * SLOPE * section)) / (2 * SLOPE);

const badGroove = ({ form, depth }: Groove) => {
  const refusal = badForm(form) ?? outside({ depth });
  if (refusal) return refusal;
  const deepest = fullDepth(form.pitch, form.tipFlat);
  return depth <= deepest
    ? undefined
    : ({
        problem: 'conflict',
        field: 'depth',
        other: 'pitch',
        given: depth,
        otherGiven: form.pitch,
        nearest: deepest,
        quantity: 'length',
      } as const);
};

/** Depth on the dial after each pass, mm from touch-off; the last is the full depth. One to twelve passes. */
export const passDepths = (groove: Groove, plan: PassPlan): Result<readonly Millimetres[]> => {
  const passes = 'passes' in plan ? plan.passes : undefined;
  const refusal = badGroove(groove) ?? outside({ passes });
  if (refusal) return refuse(refusal);
  if (passes !== undefined && !Number.isInteger(passes))
    return refuse({ problem: 'not-a-number', field: 'passes', typed: String(passes) });
  const { form, depth } = groove;
  switch (plan.by) {
    case 'two-thirds':
    case 'crumbly':
      return ok(shares[plan.by].map((share) => mm(depth * share)));
    case 'equal-area': {
      const whole = area(form.tipFlat, depth);
      const at = (pass: number) => depthOfArea(form.tipFlat, (whole * pass) / plan.passes);
      return ok(Array.from({ length: plan.passes }, (_, i) => mm(i + 1 === plan.passes ? depth : at(i + 1))));
    }
  }
};

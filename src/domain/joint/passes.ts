import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { outside } from './bounds.ts';
import { badForm, flankSlope, fullDepth, SIXTY_DEGREES, type VForm } from './profile.ts';

/** A groove to be cut in passes; depth is radial, from touch-off. */
export interface Groove {
  readonly form: VForm;
  readonly depth: Millimetres;
}

/**
 * How the depth is shared out. 'two-thirds': 2/3 + 1/3 of the depth. 'crumbly': 60, 30, 10 % of the depth (both common practice, no source).
 * 'equal-area': equal chip in every pass. 'equal-force': chip area plus `edgeLoad` (mm; an estimate, 0 unless measured) times the length of edge at work.
 */
export type PassPlan =
  | { readonly by: 'two-thirds' | 'crumbly' }
  | { readonly by: 'equal-area'; readonly passes: number }
  | { readonly by: 'equal-force'; readonly passes: number; readonly edgeLoad: Millimetres };

const shares = { 'two-thirds': [2 / 3, 1], crumbly: [0.6, 0.9, 1] } as const;

/** Section of the groove at a depth: f d + d^2 tan A. */
const area = (tipFlat: number, slope: number, depth: number): number => depth * (tipFlat + slope * depth);

/** The depth whose groove has a given section. */
const depthOfArea = (tipFlat: number, slope: number, section: number): number =>
  (-tipFlat + Math.sqrt(tipFlat ** 2 + 4 * slope * section)) / (2 * slope);

/** Load of a pass from one depth to the next: its chip area and, weighed, the length of edge in the cut. */
const load = (form: VForm, from: number, to: number, edgeLoad: number): number => {
  const half = (form.includedAngle ?? SIXTY_DEGREES) / 2;
  const slope = Math.tan(half);
  const chip = area(form.tipFlat, slope, to) - area(form.tipFlat, slope, from);
  return chip + edgeLoad * (form.tipFlat + (2 * to) / Math.cos(half));
};

const badGroove = ({ form, depth }: Groove) => {
  const refusal = badForm(form) ?? outside({ depth });
  if (refusal) return refusal;
  const deepest = fullDepth(form.pitch, form.tipFlat, flankSlope(form.includedAngle));
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
  const edgeLoad = 'edgeLoad' in plan ? plan.edgeLoad : undefined;
  const refusal = badGroove(groove) ?? outside({ passes, edgeLoad });
  if (refusal) return refuse(refusal);
  if (passes !== undefined && !Number.isInteger(passes))
    return refuse({ problem: 'not-a-number', field: 'passes', typed: String(passes) });
  const { form, depth } = groove;
  switch (plan.by) {
    case 'two-thirds':
    case 'crumbly':
      return ok(shares[plan.by].map((share) => mm(depth * share)));
    case 'equal-area': {
      const slope = flankSlope(form.includedAngle);
      const whole = area(form.tipFlat, slope, depth);
      return ok(
        depthList(plan.passes, depth, (pass) =>
          depthOfArea(form.tipFlat, slope, (whole * pass) / plan.passes),
        ),
      );
    }
    case 'equal-force':
      return ok(equalForce(form, depth, plan.passes, plan.edgeLoad));
  }
};

const depthList = (passes: number, depth: number, at: (pass: number) => number): readonly Millimetres[] =>
  Array.from({ length: passes }, (_, i) => mm(i + 1 === passes ? depth : at(i + 1)));

/** Sixty halvings bring any span here below the last bit of a double. */
const HALVINGS = 60;

const bisect = (low: number, high: number, tooLow: (x: number) => boolean): number => {
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (tooLow(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Find the load that, spent in every pass, ends exactly at the full depth. */
const equalForce = (form: VForm, depth: number, passes: number, edgeLoad: number): readonly Millimetres[] => {
  const stepFrom = (from: number, wanted: number) =>
    bisect(from, depth, (to) => load(form, from, to, edgeLoad) < wanted);
  const depths = (wanted: number): number[] => {
    const list: number[] = [];
    for (let i = 0; i < passes; i++) list.push(stepFrom(list.at(-1) ?? 0, wanted));
    return list;
  };
  const whole = load(form, 0, depth, edgeLoad);
  const wanted = bisect(0, whole, (each) => {
    const before = depths(each).at(-2) ?? 0;
    return load(form, before, depth, edgeLoad) > each;
  });
  const found = depths(wanted);
  return depthList(passes, depth, (pass) => found[pass - 1] ?? depth);
};

/** Load of each pass of a list of depths, mm^2 of chip (with `edgeLoad` weighed in). Depths must not shrink. */
export const passLoads = (
  groove: Groove,
  depths: readonly Millimetres[],
  edgeLoad: Millimetres = mm(0),
): Result<readonly number[]> => {
  const refusal = badGroove(groove) ?? outside({ edgeLoad });
  if (refusal) return refuse(refusal);
  const loads: number[] = [];
  let before = 0;
  for (const depth of depths) {
    const bad = outside({ depth });
    if (bad) return refuse(bad);
    if (depth < before)
      return refuse({
        problem: 'conflict',
        field: 'depth',
        other: 'depthBefore',
        given: depth,
        otherGiven: before,
        nearest: before,
        quantity: 'length',
      });
    loads.push(load(groove.form, before, depth, edgeLoad));
    before = depth;
  }
  return ok(loads);
};

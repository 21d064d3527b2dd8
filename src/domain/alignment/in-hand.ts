import { firstRefusal, ok, type Result, refuse } from '../result.ts';
import { type Millimetres, mm, type Radians } from '../units/brands.ts';
import { angle, size } from './inputs.ts';

/** A thou: what a thumb feels at the tip of a tooth. */
const A_THOU = 0.0254;
/** The thinnest paper. */
const PAPER = 0.05;

/** The length over which angles are given as a gap: a bank card (0.76 mm) over 80 mm is half a degree. */
export const OVER: Millimetres = mm(80);

const toStep = (value: number, step: number): Millimetres => mm(Math.round(value / step) * step + 0);

/** A length rounded to what a paper feeler resolves, 0.05 mm. */
export const toPaper = (value: Millimetres): Millimetres => toStep(value, PAPER);

/** A length rounded to a thou. */
export const toThou = (value: Millimetres): Millimetres => toStep(value, A_THOU);

/** An angle as the gap it makes over a length, 80 mm by default, rounded to 0.05 mm. Angles to 15 degrees. */
export const asGap = (value: Radians, over: Millimetres = OVER): Result<Millimetres> => {
  const bad = firstRefusal(angle('angle', value), size('over', over));
  return bad ? refuse(bad) : ok(toPaper(mm(over * Math.tan(Math.abs(value)))));
};

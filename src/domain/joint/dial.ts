import { ok, type Result, refuse } from '../result.ts';
import { type Millimetres, MM_PER_INCH, mm, type Turns, turns } from '../units/brands.ts';
import { outside } from './bounds.ts';

/** The cross-slide's dial: travel for one turn, and how many marks go round it. */
export interface Dial {
  readonly travelPerTurn: Millimetres;
  readonly marksPerTurn?: number;
}

/** Where to stop the dial: turns in all, and the same as whole turns and marks to the nearest half mark. */
export interface DialTarget {
  readonly turns: Turns;
  readonly wholeTurns: number;
  /** Null when the dial's marks are not known. */
  readonly marks: number | null;
}

/** Turns of the dial that move the slide by a depth, mm. Exact; marks rounded to a half, the least an eye can set. */
export const dialTarget = (depth: Millimetres, dial: Dial): Result<DialTarget> => {
  const { travelPerTurn, marksPerTurn } = dial;
  const refusal = outside({ depth, travelPerTurn, marksPerTurn });
  if (refusal) return refuse(refusal);
  const all = depth / travelPerTurn;
  if (marksPerTurn === undefined) return ok({ turns: turns(all), wholeTurns: Math.floor(all), marks: null });
  const marks = Math.round(2 * all * marksPerTurn) / 2;
  const wholeTurns = Math.floor(marks / marksPerTurn);
  return ok({ turns: turns(all), wholeTurns, marks: marks - wholeTurns * marksPerTurn });
};

/** The finest step that a dial and a hand can be asked for, mm: 0.05 mm, or 2 thou for who thinks in inches. */
export const benchStep = { metric: mm(0.05), inch: mm(0.002 * MM_PER_INCH) } as const;

/** A whole number of steps, mm, free of the last bits that binary fractions leave. */
export const steps = (count: number, step: number): Millimetres => mm(Number((count * step).toFixed(6)));

import { firstRefusal, type Quantity, type Refusal, within } from '../result.ts';

type Bound = readonly [min: number, max: number, quantity?: Quantity];

/** What each input of the joint may be: wide enough for any wooden thread, narrow enough to catch a wrong unit. */
const bounds = {
  pitch: [0.25, 12.7],
  tipFlat: [0, 6],
  recessTipFlat: [0, 6],
  tenonTipFlat: [0, 6],
  crestFlat: [0, 12.7],
  depth: [0, 24],
  recessDepth: [0, 24],
  tenonDepth: [0, 24],
  recess: [3, 1000],
  tenon: [3, 1000],
  outside: [3, 1500],
  workRadius: [1, 500],
  cutterRadius: [0.5, 200],
  neckRadius: [0, 200],
  clearance: [-6, 6],
  wantedClearance: [0, 6],
  runningClearance: [0, 2],
  endPlay: [0, 6],
  flankShift: [0, 2],
  recessFlankShift: [0, 2],
  tenonFlankShift: [0, 2],
  largestShift: [0.0001, 2],
  mismatch: [-Math.PI / 6, Math.PI / 6, 'angle'],
  engagement: [0, 150, 'percent'],
  engagedHeight: [0, 12.7],
  film: [0, 1],
  passes: [1, 12, 'count'],
  travelPerTurn: [0.1, 25.4],
  marksPerTurn: [2, 1000, 'count'],
  toGo: [0, 2 * Math.PI, 'angle'],
  overTurned: [0, 2 * Math.PI, 'angle'],
  bottomGap: [0, 200],
  turnedDepth: [0, 200],
  freeThread: [0, 200],
  kerf: [0, 20],
  aheadOfTooth: [0, 30],
  ovalMovement: [0, 20],
  moistureSwing: [0, 20, 'percent'],
  insideMinusOutside: [-2, 2],
  uncertainty: [0, 2],
  margin: [0, 2],
} as const satisfies Record<string, Bound>;

type Bounded = keyof typeof bounds;

/**
 * The refusal for the first of the named values that is not finite or lies outside its range, or nothing.
 * An undefined value was not given and is not checked.
 */
export const outside = (
  values: Readonly<Partial<Record<Bounded, number | undefined>>>,
): Refusal | undefined => {
  for (const [field, value] of Object.entries(values)) {
    if (value === undefined) continue;
    const [min, max, quantity] = bounds[field as Bounded] as Bound;
    const refusal = firstRefusal(within(field, value, min, max, quantity));
    if (refusal) return refusal;
  }
  return undefined;
};

/** The least and the greatest value that `outside` accepts. */
export const boundsOf = (field: Bounded): { readonly min: number; readonly max: number } => ({
  min: bounds[field][0],
  max: bounds[field][1],
});

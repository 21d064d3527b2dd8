import type { DiagnosisView, TrialView } from '../../../src/domain/diagnosis/view.ts';
import { mm } from '../../../src/domain/units/brands.ts';

const SLOPE = Math.tan(Math.PI / 6);
const WANTED = 0.35;

/** A trial of which nothing was said but what is given. */
export const trialOf = (said: Partial<TrialView> = {}): TrialView => ({
  right: false,
  goingOn: [],
  seated: null,
  threads: [],
  marks: null,
  endPlay: null,
  turnsOn: null,
  bottomGap: null,
  crestFlat: null,
  afterFinish: false,
  moves: [],
  ...said,
});

/** A box at 10 to the inch whose sizes are as planned and whose lid is said to be stiff; the tenon is on the jig and its setting holds. */
export const soundView = (
  trials: readonly TrialView[] = [trialOf({ goingOn: ['stiff-all-the-way'] })],
  change: {
    readonly joint?: Partial<DiagnosisView['joint']>;
    readonly bench?: Partial<DiagnosisView['bench']>;
    readonly log?: Partial<DiagnosisView['log']>;
    readonly seed?: number;
  } = {},
): DiagnosisView => {
  const depth = (2.54 - 0.2 - 0.5) / (2 * SLOPE);
  const wood = { radial: 0.0019, tangential: 0.0027, crumbles: 0.3, furs: 0.3 };
  return {
    joint: {
      pitch: mm(2.54),
      wanted: mm(WANTED),
      threads: 3,
      cutterRadius: mm(12),
      tipFlat: mm(0.2),
      tipFlatUncertainty: mm(0.03),
      bore: mm(50),
      boreUncertainty: mm(0.03),
      tenon: mm(50 + 4 * depth - (2.54 - 0.4) / SLOPE - WANTED),
      tenonUncertainty: mm(0.03),
      depth: { recess: mm(depth), tenon: mm(depth) },
      plannedDepth: mm(depth),
      flankShift: { recess: mm(0), tenon: mm(0) },
      boreTaper: null,
      tenonTaper: null,
      outOfRound: null,
      bottomGap: mm(2),
      wall: null,
      leastWall: mm(3),
      wood: { recess: wood, tenon: wood },
      learned: null,
      ...change.joint,
    },
    bench: {
      unit: 'metric',
      dial: { travelPerTurn: mm(2), marksPerTurn: 40 },
      onJig: 'tenon',
      holds: true,
      finished: false,
      ...change.bench,
    },
    log: { missed: [], done: [], moved: [], ...change.log },
    trials,
    seed: change.seed ?? 1,
  };
};

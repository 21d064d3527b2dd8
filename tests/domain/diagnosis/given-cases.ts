import table from '../../../shared/diagnosis-cases.json' with { type: 'json' };
import type { DiagnosisView, MoveKind, SetUpLog, TrialView } from '../../../src/domain/diagnosis/view.ts';
import { flankShift } from '../../../src/domain/joint/helix.ts';
import type { Part } from '../../../src/domain/setup/events.ts';
import { type Millimetres, mm } from '../../../src/domain/units/brands.ts';

interface GivenWood {
  readonly CR: number;
  readonly CT: number;
  readonly crumbles: number;
  readonly furs: number;
}

/** A move of a case; `by` lists all amounts. */
export interface GivenMove {
  readonly kind: MoveKind;
  readonly part?: Part;
  readonly by?: readonly number[];
  readonly why: string;
}

export interface GivenCase {
  readonly id: string;
  readonly seed: number;
  readonly known: {
    readonly box: {
      readonly pitch: number;
      readonly unit: 'inch' | 'metric';
      readonly dial: { readonly travelPerTurn: number; readonly marksPerTurn: number | null } | null;
      readonly wanted: number;
      readonly threads: number;
      readonly tipFlat: number;
      readonly tipFlatU: number;
      readonly cutterRadius: number;
      readonly bore: number;
      readonly boreU: number;
      readonly tenon: number;
      readonly tenonU: number;
      readonly depthRecess: number;
      readonly depthTenon: number;
      readonly plannedDepth: number;
      readonly boreTaper: number | null;
      readonly outOfRound: number | null;
      readonly tenonTaper: number | null;
      readonly plannedBottomGap: number;
      readonly wall: number | null;
      readonly leastWall: number;
      readonly recessWood: GivenWood;
      readonly tenonWood: GivenWood;
      readonly learned: { readonly clearance: number; readonly u: number } | null;
    };
    readonly setting: { readonly onJig: Part | null; readonly holds: boolean; readonly finished: boolean };
    readonly log: SetUpLog;
    readonly trials: readonly (Omit<TrialView, 'endPlay' | 'bottomGap' | 'crestFlat' | 'moves'> & {
      readonly endPlay: number | null;
      readonly bottomGap: number | null;
    })[];
  };
  readonly truth: {
    readonly causes: readonly string[];
    readonly faults: Readonly<Record<string, number>>;
    readonly flankClearance: number;
    readonly crestFlats: readonly [tenon: number, recess: number];
    readonly crestGaps: readonly [tenon: number, recess: number];
    readonly endPlay: number;
    readonly bandOfThisTurner: readonly [number, number];
  };
  readonly forbidden: readonly GivenMove[];
}

export const givenCases = table.cases as unknown as readonly GivenCase[];

const orNull = (value: number | null): Millimetres | null => (value === null ? null : mm(value));

/** A case as the engine is given it: what the app would know, nothing of the truth. */
export const caseView = ({ seed, known }: GivenCase): DiagnosisView => {
  const { box, setting, log, trials } = known;
  const wood = (of: GivenWood) => ({
    radial: of.CR,
    tangential: of.CT,
    crumbles: of.crumbles,
    furs: of.furs,
  });
  const shift = (part: Part, diameter: number, depth: number): Millimetres => {
    const of = flankShift({
      part,
      pitch: mm(box.pitch),
      workRadius: mm(diameter / 2 + ((part === 'recess' ? 1 : -1) * depth) / 2),
      cutterRadius: mm(box.cutterRadius - depth / 2),
    });
    return of.ok ? of.value : mm(0);
  };
  return {
    joint: {
      pitch: mm(box.pitch),
      wanted: mm(box.wanted),
      threads: box.threads,
      cutterRadius: mm(box.cutterRadius),
      tipFlat: mm(box.tipFlat),
      tipFlatUncertainty: mm(box.tipFlatU),
      bore: mm(box.bore),
      boreUncertainty: mm(box.boreU),
      tenon: mm(box.tenon),
      tenonUncertainty: mm(box.tenonU),
      depth: { recess: mm(box.depthRecess), tenon: mm(box.depthTenon) },
      plannedDepth: mm(box.plannedDepth),
      flankShift: {
        recess: shift('recess', box.bore, box.depthRecess),
        tenon: shift('tenon', box.tenon, box.depthTenon),
      },
      boreTaper: orNull(box.boreTaper),
      tenonTaper: orNull(box.tenonTaper),
      outOfRound: orNull(box.outOfRound),
      bottomGap: mm(box.plannedBottomGap),
      wall: orNull(box.wall),
      leastWall: mm(box.leastWall),
      wood: { recess: wood(box.recessWood), tenon: wood(box.tenonWood) },
      learned: box.learned && { clearance: mm(box.learned.clearance), uncertainty: mm(box.learned.u) },
    },
    bench: {
      unit: box.unit,
      dial: box.dial && {
        travelPerTurn: mm(box.dial.travelPerTurn),
        marksPerTurn: box.dial.marksPerTurn,
      },
      ...setting,
    },
    log,
    trials: trials.map((trial) => ({
      ...trial,
      endPlay: orNull(trial.endPlay),
      bottomGap: orNull(trial.bottomGap),
      crestFlat: null,
      moves: [],
    })),
    seed,
  };
};

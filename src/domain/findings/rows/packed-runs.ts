import type { CutRun, CutStep } from './cut-run.ts';

/**
 * Version of the fold, of `CutRun` and of the packing. Raise it with every change of one of them: what was cached under an
 * earlier version is then folded again.
 */
export const FOLD_RULE = 'runs 1';

/** Many set-ups as one text, each step's wording once: some 150 bytes a set-up. */
export const packRuns = (runs: Iterable<CutRun>): string => {
  const steps: CutStep['step'][] = [];
  const places = new Map<CutStep['step'], number>();
  const lists: number[][] = [];
  const listPlaces = new Map<string, number>();
  const placeOfStep = (step: CutStep['step']): number => {
    const known = places.get(step);
    if (known !== undefined) return known;
    places.set(step, steps.length);
    return steps.push(step) - 1;
  };
  const placeOfList = (list: number[]): number => {
    const name = list.join();
    const known = listPlaces.get(name);
    if (known !== undefined) return known;
    listPlaces.set(name, lists.length);
    return lists.push(list) - 1;
  };
  const packed = Array.from(
    runs,
    (run): PackedRun => [
      run.runId,
      run.part,
      run.closed,
      run.fromRun,
      run.contested,
      run.readOnly,
      placeOfList(run.steps.map(({ step }) => placeOfStep(step))),
      run.steps.map(({ status }) => STATUSES.indexOf(status).toString(36)).join(''),
      run.steps.map(({ exactMs }) => exactMs ?? 0),
    ],
  );
  return JSON.stringify({ steps, lists, runs: packed } satisfies Packed);
};

/** The set-ups again by their ids; `text` must be what `packRuns` of the same rule wrote. */
export const unpackRuns = (text: string): Map<string, CutRun> => {
  const { steps, lists, runs } = JSON.parse(text) as Packed;
  return new Map(
    runs.map(([runId, part, closed, fromRun, contested, readOnly, list, statuses, times]) => [
      runId,
      {
        ...{ runId, part, closed, fromRun, contested, readOnly },
        steps: (lists[list] as number[]).map((place, i) => ({
          step: steps[place] as CutStep['step'],
          status: STATUSES[Number.parseInt(statuses[i] as string, 36)] as CutStep['status'],
          exactMs: times[i] || null,
        })),
      },
    ]),
  );
};

type PackedRun = readonly [
  runId: string,
  part: CutRun['part'],
  closed: CutRun['closed'],
  fromRun: CutRun['fromRun'],
  contested: boolean,
  readOnly: boolean,
  list: number,
  statuses: string,
  times: readonly number[],
];

interface Packed {
  readonly steps: readonly CutStep['step'][];
  readonly lists: readonly number[][];
  readonly runs: readonly PackedRun[];
}

const STATUSES: readonly CutStep['status'][] = [
  ...(['to-come', 'passed', 'failed', 'skipped'] as const),
  ...(['carried', 'reopened', 'closed', 'not-needed'] as const),
];

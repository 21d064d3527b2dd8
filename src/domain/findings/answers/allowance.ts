import { usualClearance } from '../../joint/clearance.ts';
import { type Millimetres, mm } from '../../units/brands.ts';
import { type ClearanceTrial, inTimeOrder, type JointRow, type JointTable } from '../rows/joint-row.ts';
import type { Interval } from '../statistics/counts.ts';
import { contradicts, logLikelihood, type Wanted, wantedBy } from './clearance-likelihood.ts';

/** What clearance has worked at one pitch. Lengths in mm, diametral; turn them into a tenon at the depth you plan. */
export interface Allowance {
  readonly pitch: Millimetres;
  /** The clearance that suits, middle of the belief, and its 80 % interval. */
  readonly clearance: Interval & { readonly value: Millimetres };
  /** What geometry alone would say. */
  readonly geometric: Millimetres;
  /** How much joints differ in what suits them (standard deviation), and half the band that feels right. */
  readonly spread: Millimetres;
  readonly halfBand: Millimetres;
  /** Joints behind it, newest at most `NEWEST` of this pitch. */
  readonly joints: number;
  /** Joints whose trials contradict each other: only their first trial counts. */
  readonly contradictory: number;
  /** Every trial behind it, for the strip. */
  readonly marks: readonly ClearanceTrial[];
}

export interface Allowances {
  readonly pitches: readonly Allowance[];
  /** Joints whose trials say nothing of size, or that lack a measurement. */
  readonly silent: number;
}

/** Only the newest joints count: older ones say little about how the turner works now. */
const NEWEST = 400;
const LEVEL = 0.8;

/** Standard deviation of the prior around the default clearance of the pitch: 0.08 mm; 0.3 where the tip flat is a guess (0.1 mm of tip is 0.35 of clearance). */
const PRIOR_ERROR = 0.08;
const PRIOR_ERROR_UNKNOWN_TIP = 0.3;
/** Log-normal priors of spread and half band: median in mm, standard deviation of the log. Judgement. */
const SPREAD = { median: 0.04, log: 0.5 };
const BAND = { median: 0.06, log: 0.4 };

interface Group {
  readonly pitch: Millimetres;
  readonly statements: readonly Wanted[];
  readonly marks: readonly ClearanceTrial[];
  readonly joints: number;
  readonly contradictory: number;
  readonly prior: { readonly mean: number; readonly error: number };
}

/**
 * The clearance that works, by pitch: every joint has a clearance it wanted, xi ~ N(mean of its pitch, spread), and its
 * trials bound it (tight: xi > c + w; right: |c - xi| <= w; slack: xi < c - w). One statement a joint, all priors on a grid,
 * spread and band shared by all pitches. One joint in ten may be tight or slack for another reason. Contradictory trials
 * count by their first.
 */
export const allowances = (table: JointTable): Allowances => {
  const rows = inTimeOrder(table.rows).filter((row) => row.clearanceTrials.length > 0);
  const groups = [...new Set(rows.map((row) => row.pitch.toFixed(3)))]
    .sort((a, b) => Number(b) - Number(a))
    .map((pitch) => groupOf(rows.filter((row) => row.pitch.toFixed(3) === pitch).slice(-NEWEST)));
  return { pitches: believe(groups), silent: table.rows.length - rows.length };
};

const groupOf = (rows: readonly JointRow[]): Group => {
  const statements = new Map<string, Wanted>();
  let [joints, contradictory] = [0, 0];
  for (const row of rows)
    for (const fit of new Set(row.clearanceTrials.map((trial) => trial.fit))) {
      const trials = row.clearanceTrials.filter((trial) => trial.fit === fit);
      const together = wantedBy(trials);
      const clash = contradicts(together);
      const said = clash ? wantedBy(trials.slice(0, 1)) : together;
      if (clash) contradictory++;
      joints++;
      const key = Object.values(said).join(' ');
      statements.set(key, { ...said, count: (statements.get(key)?.count ?? 0) + 1 });
    }
  const pitch = (rows[0] as JointRow).pitch;
  const usual = usualClearance(pitch);
  return {
    pitch,
    statements: [...statements.values()],
    marks: rows.flatMap((row) => row.clearanceTrials),
    joints,
    contradictory,
    prior: {
      mean: usual.ok ? usual.value.usual : 0.3,
      error: rows.every((row) => row.tipFlatKnown) ? PRIOR_ERROR : PRIOR_ERROR_UNKNOWN_TIP,
    },
  };
};

/** Points of a parameter with their log prior weight. */
interface Axis {
  readonly at: readonly number[];
  readonly prior: readonly number[];
}

const logNormalAxis = ({ median, log }: typeof SPREAD, from: number, to: number, points: number): Axis => {
  const z = Array.from({ length: points }, (_, i) => from + ((to - from) * i) / (points - 1));
  return { at: z.map((x) => median * Math.exp(log * x)), prior: z.map((x) => -(x * x) / 2) };
};

const meanAxis = ({ prior }: Group, from: number, to: number, points: number): Axis => {
  const at = Array.from({ length: points }, (_, i) => from + ((to - from) * i) / (points - 1));
  return { at, prior: at.map((x) => -(((x - prior.mean) / prior.error) ** 2) / 2) };
};

/** A coarse look over all of the prior, then a fine one where the belief lies. */
const believe = (groups: readonly Group[]): readonly Allowance[] => {
  if (groups.length === 0) return [];
  const wide = { spread: logNormalAxis(SPREAD, -3, 3, 11), band: logNormalAxis(BAND, -3, 3, 11) };
  const coarse = belief(
    groups,
    wide.spread,
    wide.band,
    groups.map((g) => meanAxis(g, g.prior.mean - 4 * g.prior.error, g.prior.mean + 4 * g.prior.error, 49)),
  );
  const zoom = (axis: Axis, weight: readonly number[], median: number, log: number) => {
    const [from, to] = support(axis, weight);
    return [Math.log(from / median) / log, Math.log(to / median) / log] as const;
  };
  const spread = logNormalAxis(SPREAD, ...zoom(wide.spread, coarse.spread, SPREAD.median, SPREAD.log), 15);
  const band = logNormalAxis(BAND, ...zoom(wide.band, coarse.band, BAND.median, BAND.log), 15);
  const axes = groups.map((g, i) => {
    const axis = coarse.axes[i] as Axis;
    const [from, to] = support(axis, coarse.means[i] as number[]);
    return meanAxis(g, from, to, 81);
  });
  const fine = belief(groups, spread, band, axes);
  return groups.map((g, i) => {
    const axis = axes[i] as Axis;
    const weight = fine.means[i] as number[];
    return {
      pitch: g.pitch,
      clearance: {
        value: mm(quantile(axis, weight, 0.5)),
        low: quantile(axis, weight, (1 - LEVEL) / 2),
        high: quantile(axis, weight, (1 + LEVEL) / 2),
      },
      geometric: mm(g.prior.mean),
      spread: mm(quantile(spread, fine.spread, 0.5)),
      halfBand: mm(quantile(band, fine.band, 0.5)),
      joints: g.joints,
      contradictory: g.contradictory,
      marks: g.marks,
    };
  });
};

/** Belief about each pitch's mean, and about the spread and band that all pitches share. Each list of weights sums to 1. */
const belief = (
  groups: readonly Group[],
  spread: Axis,
  band: Axis,
  axes: readonly Axis[],
): { axes: readonly Axis[]; means: readonly number[][]; spread: number[]; band: number[] } => {
  const cells = spread.at.length * band.at.length;
  // For each pitch and each (spread, band): the likelihood along the mean, and its sum.
  const tables = groups.map((group, g) => {
    const axis = axes[g] as Axis;
    const logs = new Float64Array(cells * axis.at.length);
    const sums = new Float64Array(cells);
    spread.at.forEach((s, i) => {
      band.at.forEach((b, j) => {
        const cell = i * band.at.length + j;
        const row = axis.at.map(
          (m, k) => logLikelihood(group.statements, m, s, b) + (axis.prior[k] as number),
        );
        const top = Math.max(...row);
        let all = 0;
        row.forEach((log, k) => {
          logs[cell * axis.at.length + k] = log - top;
          all += Math.exp(log - top);
        });
        sums[cell] = top + Math.log(all);
      });
    });
    return { logs, sums };
  });
  const logCell = Array.from({ length: cells }, (_, cell) => {
    const [i, j] = [Math.floor(cell / band.at.length), cell % band.at.length];
    const prior = (spread.prior[i] as number) + (band.prior[j] as number);
    return tables.reduce((sum, t) => sum + (t.sums[cell] as number), prior);
  });
  const weight = normalised(logCell.map((log) => Math.exp(log - Math.max(...logCell))));
  return {
    axes,
    means: tables.map(({ logs }, g) => {
      const length = (axes[g] as Axis).at.length;
      const mean = new Array<number>(length).fill(0);
      for (let cell = 0; cell < cells; cell++) {
        const w = weight[cell] as number;
        if (w < 1e-9) continue;
        // Rows are kept relative to their own top; their sum relative to it turns them into shares.
        let all = 0;
        for (let k = 0; k < length; k++) all += Math.exp(logs[cell * length + k] as number);
        for (let k = 0; k < length; k++)
          mean[k] = (mean[k] as number) + (w * Math.exp(logs[cell * length + k] as number)) / all;
      }
      return normalised(mean);
    }),
    spread: normalised(
      spread.at.map((_, i) => sumOver(weight, (cell) => Math.floor(cell / band.at.length) === i)),
    ),
    band: normalised(band.at.map((_, j) => sumOver(weight, (cell) => cell % band.at.length === j))),
  };
};

const sumOver = (weight: readonly number[], chosen: (cell: number) => boolean): number =>
  weight.reduce((sum, w, cell) => (chosen(cell) ? sum + w : sum), 0);

const normalised = (weights: readonly number[]): number[] => {
  const all = weights.reduce((sum, w) => sum + w, 0);
  return weights.map((w) => w / all);
};

/** Where all but a hair of the weight lies, with a point to spare on each side. */
const support = ({ at }: Axis, weight: readonly number[]): readonly [number, number] => {
  const most = Math.max(...weight);
  const heavy = weight.map((w) => w > 1e-4 * most);
  const from = Math.max(0, heavy.indexOf(true) - 1);
  const to = Math.min(at.length - 1, heavy.lastIndexOf(true) + 1);
  return [at[from] as number, at[to] as number];
};

/** Quantile of weights on points, by straight lines between the middles of the steps. */
const quantile = ({ at }: Axis, weight: readonly number[], q: number): number => {
  let before = 0;
  for (let i = 0; i < at.length; i++) {
    const here = weight[i] as number;
    if (before + here >= q) {
      const step =
        i + 1 < at.length ? (at[i + 1] as number) - (at[i] as number) : (at[i] as number) - (at[i - 1] ?? 0);
      return (at[i] as number) + step * ((q - before) / here - 0.5);
    }
    before += here;
  }
  return at.at(-1) ?? Number.NaN;
};

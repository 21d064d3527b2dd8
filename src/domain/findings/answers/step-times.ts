import { groupBy } from '../../group-by.ts';
import { exposureOf } from '../rows/exposure.ts';
import { inTimeOrder, type JointRow, type JointTable } from '../rows/joint-row.ts';
import type { Interval } from '../statistics/counts.ts';
import { type Drift, drift, median, type Shift, shift } from '../statistics/rank-statistics.ts';

/** One step's time, from exact times only. Hold points have none. */
export interface StepTime {
  readonly step: string;
  /** Median of the exact times, ms; null when there is none. */
  readonly usualMs: number | null;
  readonly middleHalf: Interval | null;
  /** Exact times behind it, and times that are not known exactly. */
  readonly exact: number;
  readonly unknown: number;
  /** Share of all steps' usual time. */
  readonly share: number;
  /** Change a session, as a factor (0.98: 2 % quicker each); p by Mann-Kendall on the sessions' medians. */
  readonly change: { readonly factor: number; readonly p: number; readonly sessions: number } | null;
  /** Done in under half the median of the times before. */
  readonly hurried: number;
  /** Time of the other steps where this one was missed, as a factor of theirs where it was done (1.1: a tenth longer). */
  readonly without: Shift | null;
}

/** Where the set-up time goes, step by step. */
export const stepTimes = (table: JointTable): readonly StepTime[] => {
  const rows = inTimeOrder(table.rows);
  const steps = table.steps.map(({ key }) => ({ key, times: timesOf(rows, key) }));
  const usual = steps.map(({ times }) => median(times.exact.map(({ ms }) => ms)));
  const all = usual.reduce<number>((sum, ms) => sum + (ms ?? 0), 0);
  return steps.map(({ key, times: { exact, unknown } }, i) => {
    const change = drift(sessionMedians(exact));
    const ms = exact.map((time) => time.ms).sort((a, b) => a - b);
    return {
      step: key,
      usualMs: usual[i] ?? null,
      middleHalf: ms.length < 4 ? null : { low: quarter(ms, 0.25), high: quarter(ms, 0.75) },
      exact: exact.length,
      unknown,
      share: all > 0 ? (usual[i] ?? 0) / all : 0,
      change: change && factorOf(change),
      hurried: hurriedOf(exact.map((time) => time.ms)),
      without: timeWithout(rows, key),
    };
  });
};

interface Timed {
  readonly day: string;
  readonly ms: number;
}

const timesOf = (
  rows: readonly JointRow[],
  key: string,
): { readonly exact: readonly Timed[]; readonly unknown: number } => {
  const exact: Timed[] = [];
  let unknown = 0;
  for (const row of rows)
    for (const steps of [row.steps.recess, row.steps.tenon]) {
      const step = steps[key];
      if (!step || step.carriedOver || (step.outcome !== 'done' && step.outcome !== 'left-failing')) continue;
      if (step.exactMs !== null && step.exactMs > 0) exact.push({ day: row.day, ms: step.exactMs });
      else unknown++;
    }
  return { exact, unknown };
};

/** Log median of each session, numbered in order, so that one hurried day is one point however many boxes it had. */
const sessionMedians = (times: readonly Timed[]): readonly { x: number; y: number }[] => {
  const sessions = [...groupBy(times, ({ day }) => day).values()];
  return sessions
    .slice(-MOST_SESSIONS)
    .map((session, x) => ({ x, y: median(session.map(({ ms }) => Math.log(ms))) as number }));
};

/** All pairs of sessions are compared; this keeps a long log quick. */
const MOST_SESSIONS = 400;

const factorOf = ({ slope, p, points }: Drift) => ({ factor: Math.exp(slope), p, sessions: points });

const quarter = (sorted: readonly number[], q: number): number => {
  const at = (sorted.length - 1) * q;
  const below = sorted[Math.floor(at)] as number;
  return below + ((sorted[Math.ceil(at)] as number) - below) * (at - Math.floor(at));
};

const BEFORE = 5;

/** Times under half the median of those before, once there are five to compare with. */
const hurriedOf = (ms: readonly number[]): number => {
  const sorted: number[] = [];
  let hurried = 0;
  for (const time of ms) {
    const middle = (sorted.length - 1) / 2;
    const usual = ((sorted[Math.floor(middle)] ?? 0) + (sorted[Math.ceil(middle)] ?? 0)) / 2;
    if (sorted.length >= BEFORE && time < usual / 2) hurried++;
    sorted.splice(placeOf(time, sorted), 0, time);
  }
  return hurried;
};

/** Where a value goes among sorted ones, behind its equals. */
const placeOf = (value: number, sorted: readonly number[]): number => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) > value) high = middle;
    else low = middle + 1;
  }
  return low;
};

/** The newest of each kind: every pair of them is compared. */
const MOST_TIMES = 150;

/**
 * From joints whose other steps all have exact times. Null when there are too few. Hold points are not in it, so it says
 * nothing about them.
 */
const timeWithout = (rows: readonly JointRow[], key: string): Shift | null => {
  const groups = { done: [] as number[], missed: [] as number[] };
  for (let i = rows.length - 1; i >= 0; i--) {
    const row = rows[i] as JointRow;
    const exposure = exposureOf(row, key);
    if ((exposure !== 'done' && exposure !== 'missed') || groups[exposure].length === MOST_TIMES) continue;
    const total = othersTime(row, key);
    if (total !== null) groups[exposure].push(Math.log(total));
  }
  const found = shift(groups.missed, groups.done);
  return (
    found && {
      value: Math.exp(found.value),
      low: Math.exp(found.low),
      high: Math.exp(found.high),
      p: found.p,
    }
  );
};

const othersTime = (row: JointRow, key: string): number | null => {
  let total = 0;
  for (const steps of [row.steps.recess, row.steps.tenon])
    for (const other of Object.keys(steps)) {
      const step = steps[other];
      if (other === key || !step || step.carriedOver || step.outcome !== 'done') continue;
      if (step.exactMs === null) return null;
      total += step.exactMs;
    }
  return total > 0 ? total : null;
};

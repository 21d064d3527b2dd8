import { describe, expect, it } from 'vitest';
import { allowances } from '../../../src/domain/findings/answers/allowance.ts';
import { hardnessCurve, heldAt } from '../../../src/domain/findings/answers/hardness-curve.ts';
import type { TwoByTwo } from '../../../src/domain/findings/statistics/counts.ts';
import {
  newcombeDifference,
  relativeRiskInterval,
} from '../../../src/domain/findings/statistics/intervals.ts';
import { pooledShares } from '../../../src/domain/findings/statistics/pooled-shares.ts';
import { seededRandom } from '../../../src/domain/random.ts';
import { exactCoverage, firthCoverage } from './coverage.ts';
import {
  drawnClearance,
  inventedCells,
  inventedTrials,
  inventedWoods,
  type TrueClearance,
} from './invented-fits.ts';
import { measured, pick, TIMEOUT } from './scale.ts';

const within = ({ low, high }: { low: number; high: number }, truth: number) =>
  low <= truth + 1e-12 && truth - 1e-12 <= high;

describe('95 % intervals of a fourfold table, by exact enumeration', () => {
  const sizes = pick([5, 12, 20], [5, 8, 12, 20, 35, 60]);
  const risks = [0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
  const kinds: Record<string, (t: TwoByTwo, p: number, q: number) => boolean> = {
    'difference (Newcombe)': (t, p, q) => within(newcombeDifference(t), p - q),
    'relative risk (Miettinen-Nurminen)': (t, p, q) => {
      const interval = relativeRiskInterval(t);
      return interval === null || within(interval, p / q);
    },
  };
  it.each(Object.keys(kinds))(
    '%s: mean coverage 0.945 to 0.965, hardly a cell below 0.915',
    (name) => {
      const cells: number[] = [];
      for (const missed of sizes)
        for (const done of sizes)
          for (const p of risks)
            for (const q of risks)
              cells.push(exactCoverage(missed, done, p, q, (t) => kinds[name]?.(t, p, q) ?? false));
      const mean = cells.reduce((sum, c) => sum + c, 0) / cells.length;
      const below = cells.filter((c) => c < 0.915).length / cells.length;
      measured(
        name,
        cells.length,
        `mean ${mean.toFixed(4)}`,
        `least ${Math.min(...cells).toFixed(4)}`,
        `below 0.915: ${(100 * below).toFixed(2)} %`,
      );
      expect(mean).toBeGreaterThan(0.945);
      expect(mean).toBeLessThan(0.965);
      expect(below).toBeLessThan(0.02);
      expect(Math.min(...cells)).toBeGreaterThan(0.85);
    },
    TIMEOUT,
  );
});

describe('95 % profile interval of the model', () => {
  it.each(pick([30, 120], [30, 60, 120, 250]))(
    'covers at %i boxes',
    (boxes) => {
      const logs = pick(150, 2000);
      const coverage = firthCoverage(boxes, logs, 3);
      measured('profile interval', boxes, logs, coverage.toFixed(4));
      const luck = pick(0.055, 0);
      expect(coverage).toBeGreaterThan(0.935 - luck);
      expect(coverage).toBeLessThan((boxes >= 120 ? 0.97 : 0.99) + luck);
    },
    TIMEOUT,
  );
});

/** Outside the prior's middle; reported in the full set. */
const FIXED: readonly TrueClearance[] = [
  { mean: 0.35, spread: 0.03, band: 0.07 },
  { mean: 0.45, spread: 0.05, band: 0.05 },
  { mean: 0.25, spread: 0.02, band: 0.1 },
];

describe('80 % interval of the allowance', () => {
  const covers = (joints: number, logs: number, draw: (seed: number) => TrueClearance) => {
    let [hit, width] = [0, 0];
    for (let log = 0; log < logs; log++) {
      const random = seededRandom(9, log);
      const truth = draw(log);
      const found = allowances(inventedTrials(truth, joints, random)).pitches[0]?.clearance;
      if (found && within(found, truth.mean)) hit++;
      width += found ? found.high - found.low : 0;
    }
    return { share: hit / logs, width: width / logs };
  };

  it.each(pick([15], [5, 15, 40, 120]))(
    'truths drawn from the prior, %i joints: 0.77 to 0.83',
    (joints) => {
      const logs = pick(60, joints > 100 ? 500 : joints > 20 ? 1000 : 2000);
      const { share, width } = covers(joints, logs, (log) => drawnClearance(seededRandom(11, log)));
      measured('allowance, prior', joints, logs, share.toFixed(4), `mean width ${width.toFixed(3)} mm`);
      const luck = pick(0.14, 0);
      expect(share).toBeGreaterThan(0.77 - luck);
      expect(share).toBeLessThan(0.83 + luck);
    },
    TIMEOUT,
  );

  it.each(pick([], FIXED))(
    'fixed truths, reported: %j',
    (truth) => {
      const { share } = covers(40, 200, () => truth);
      measured('allowance, fixed', JSON.stringify(truth), 40, 200, share.toFixed(4));
      expect(share).toBeGreaterThan(0.5);
    },
    TIMEOUT,
  );
});

describe('90 % intervals of woods by pitch', () => {
  it.each([3, 6, 12])(
    '%i cells, truths drawn from the prior: 0.87 to 0.93',
    (cells) => {
      const logs = pick(60, 2000);
      let [hit, all] = [0, 0];
      for (let log = 0; log < logs; log++) {
        const drawn = inventedCells(cells, 7, log);
        pooledShares(drawn).forEach((share, i) => {
          all++;
          if (within(share, drawn[i]?.share ?? Number.NaN)) hit++;
        });
      }
      measured('woods by pitch', cells, logs, (hit / all).toFixed(4));
      const luck = pick(0.08, 0);
      expect(hit / all).toBeGreaterThan(0.87 - luck);
      expect(hit / all).toBeLessThan(0.93 + luck);
    },
    TIMEOUT,
  );

  it.each([4, 8, 16])(
    'a new wood by its hardness, %i woods tried',
    (woods) => {
      const logs = pick(40, 1000);
      let hit = 0;
      for (let log = 0; log < logs; log++) {
        const { table, next } = inventedWoods(woods, seededRandom(13, log));
        const curve = hardnessCurve(table);
        const interval = curve && heldAt(curve, next.hardness, next.pitch);
        if (interval?.ok && within(interval.value, next.share)) hit++;
      }
      measured('new wood by hardness', woods, logs, (hit / logs).toFixed(4));
      expect(hit / logs).toBeGreaterThan(pick(0.7, 0.82));
    },
    TIMEOUT,
  );
});

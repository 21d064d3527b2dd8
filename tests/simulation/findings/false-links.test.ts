import { describe, expect, it } from 'vitest';
import { weighSteps, wordingsOf } from '../../../src/domain/findings/answers/weigh-steps.ts';
import { inTimeOrder } from '../../../src/domain/findings/rows/joint-row.ts';
import { inventedLog, type Truth } from './invented-log.ts';
import { measured, pick, SLOW, TIMEOUT } from './scale.ts';

const SEED = 20;
const SIZES = pick([30, 60], [30, 60, 120, 500]);
const LOGS = pick(40, 500);
const PLAIN = { fails: 0.2, failsOtherwise: 0.12 };
/** Odds ratio that lifts failures from 15 to 45 in 100. */
const FROM_15_TO_45 = 0.45 / 0.55 / (0.15 / 0.85);

interface Scenario {
  readonly name: string;
  readonly truth: Omit<Truth, 'boxes'>;
  /** Logs in 500 that may call a harmless step strong; null: reported, not gated (but at 60 boxes, if given). */
  readonly atMost: number | null;
  readonly atMostAt60?: number;
}

const SCENARIOS: readonly Scenario[] = [
  { name: 'no link at all', truth: PLAIN, atMost: 10 },
  { name: 'soft wood, linear', truth: { ...PLAIN, softWood: 'linear' }, atMost: 20 },
  { name: 'soft wood, threshold', truth: { ...PLAIN, softWood: 'threshold' }, atMost: 20 },
  { name: 'experience', truth: { ...PLAIN, experience: true }, atMost: 20 },
  { name: 'shared set-ups', truth: { ...PLAIN, sharedSetUps: 1 }, atMost: 20 },
  {
    name: 'one true link (odds 8), skipped together',
    truth: { ...PLAIN, together: 0.25, link: { step: 0, odds: 8, missed: 0.15 } },
    atMost: 20,
  },
  { name: 'unmeasured haste (odds 4)', truth: { ...PLAIN, haste: 4 }, atMost: null, atMostAt60: 35 },
];

const LINKED: readonly Scenario[] = [
  {
    name: '15 to 45 in 100, missed in 15 %',
    truth: { fails: 0.15, failsOtherwise: 0.12, link: { step: 0, odds: FROM_15_TO_45, missed: 0.15 } },
    atMost: 10,
  },
  {
    name: 'odds 8, missed in 15 %',
    truth: { ...PLAIN, link: { step: 0, odds: 8, missed: 0.15 } },
    atMost: 10,
  },
];

const tally = (truth: Omit<Truth, 'boxes'>, boxes: number, logs: number) => {
  const harmful = truth.link?.step ?? -1;
  const counts = { falseStrong: 0, falsePossible: 0, strong: 0, possibleOrBetter: 0, wrongNoSign: 0 };
  for (let log = 0; log < logs; log++) {
    const table = inventedLog({ ...truth, boxes }, SEED, log);
    const words = wordingsOf(weighSteps(inTimeOrder(table.rows), table.steps)).map(({ word }) => word);
    const harmless = words.filter((_, step) => step !== harmful);
    if (harmless.includes('strong')) counts.falseStrong++;
    if (harmless.includes('possible')) counts.falsePossible++;
    if (words[harmful] === 'strong') counts.strong++;
    if (words[harmful] === 'strong' || words[harmful] === 'possible') counts.possibleOrBetter++;
    if (words[harmful] === 'no-sign') counts.wrongNoSign++;
  }
  return counts;
};

/** In the fast set: so few logs that the full limit, scaled, needs room for luck (three standard deviations above the limit). */
const roomFor = (in500: number): number =>
  SLOW ? in500 : Math.ceil((in500 * LOGS) / 500 + 3 * Math.sqrt((in500 * LOGS) / 500));

describe.each(SCENARIOS)('harmless steps: $name', ({ name, truth, atMost, atMostAt60 }) => {
  it.each(SIZES)(
    'at %i boxes few logs call one strong',
    (boxes) => {
      const started = process.cpuUsage().user;
      const { falseStrong, falsePossible } = tally(truth, boxes, LOGS);
      const ms = (process.cpuUsage().user - started) / 1000 / LOGS;
      measured(
        name,
        boxes,
        LOGS,
        `${falseStrong} strong`,
        `${falsePossible} possible`,
        `${ms.toFixed(0)} ms`,
      );
      const limit = boxes === 60 ? (atMostAt60 ?? atMost) : atMost;
      if (limit !== null) expect(falseStrong).toBeLessThanOrEqual(roomFor(limit));
    },
    TIMEOUT,
  );
});

describe.each(LINKED)('a true link: $name', ({ name, truth, atMost }) => {
  it.each(pick([60], SIZES))(
    'at %i boxes it is found about as often as reckoned, and never dismissed',
    (boxes) => {
      const found = tally(truth, boxes, LOGS);
      const share = (n: number) => (n / LOGS).toFixed(3);
      measured(
        name,
        boxes,
        LOGS,
        `strong ${share(found.strong)}`,
        `possible or better ${share(found.possibleOrBetter)}`,
        `wrong no-sign ${share(found.wrongNoSign)}`,
        `${found.falseStrong} harmless strong`,
      );
      expect(found.falseStrong).toBeLessThanOrEqual(roomFor(atMost ?? LOGS));
      expect(found.wrongNoSign / LOGS).toBeLessThanOrEqual(pick(0.06, 0.012));
      if (boxes === 60) expect(found.possibleOrBetter / LOGS).toBeGreaterThan(0.25);
      if (boxes >= 500) expect(found.strong / LOGS).toBeGreaterThan(0.85);
    },
    TIMEOUT,
  );
});

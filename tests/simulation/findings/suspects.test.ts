import { expect, it } from 'vitest';
import { SYMPTOMS } from '../../../src/domain/findings/answers/mechanism.ts';
import { CAUSES, type CauseRow, ELSEWHERE } from '../../../src/domain/findings/answers/suspect-table.ts';
import { type Case, suspects } from '../../../src/domain/findings/answers/suspects.ts';
import type { Symptom } from '../../../src/domain/findings/rows/joint-row.ts';
import { type Random, seededRandom } from '../../../src/domain/random.ts';
import { measured, pick, TIMEOUT } from './scale.ts';

const NOISE = 0.7;

/** The table as it might truly be: each entry, the unnamed ones too, moved by logit noise. */
const shaken = (random: Random): readonly CauseRow[] =>
  CAUSES.map((row) => {
    const shows: Partial<Record<Symptom, number>> = {};
    for (const symptom of SYMPTOMS) {
      const p = row.shows[symptom] ?? ELSEWHERE;
      shows[symptom] = 1 / (1 + Math.exp(-(Math.log(p / (1 - p)) + random.normal(0, NOISE))));
    }
    return { ...row, shows };
  });

const drawCase = (random: Random, table: readonly CauseRow[]): { joint: Case; cause: string } => {
  for (;;) {
    const row = random.weighted(table, ({ prior }) => prior);
    const symptoms = SYMPTOMS.filter((symptom) => random.chance(row.shows[symptom] ?? ELSEWHERE));
    if (symptoms.length > 0)
      return {
        joint: { symptoms, marks: null, missed: [], done: [], moved: [], measured: {} },
        cause: row.cause,
      };
  }
};

it(
  'the true cause is among the first two about as often as if the true table were known, and better than base rates',
  () => {
    const [tables, cases] = pick([20, 60], [200, 200]);
    const sums = { ceiling: 0, ours: 0, brier: 0, base: 0, all: 0 };
    for (let t = 0; t < tables; t++) {
      const random = seededRandom(17, t);
      const truth = shaken(random);
      for (let c = 0; c < cases; c++) {
        const { joint, cause } = drawCase(random, truth);
        const among = (list: ReturnType<typeof suspects>) =>
          list.slice(0, 2).some((suspect) => suspect.cause === cause);
        const ours = suspects(joint);
        sums.all++;
        if (among(suspects(joint, truth))) sums.ceiling++;
        if (among(ours)) sums.ours++;
        for (const row of CAUSES) {
          const is = Number(row.cause === cause);
          sums.brier += (is - (ours.find((suspect) => suspect.cause === row.cause)?.weight ?? 0)) ** 2;
          sums.base += (is - row.prior) ** 2;
        }
      }
    }
    const [ceiling, ours] = [sums.ceiling / sums.all, sums.ours / sums.all];
    measured(
      'suspects, first two',
      sums.all,
      `ceiling ${ceiling.toFixed(3)}`,
      `ours ${ours.toFixed(3)}`,
      `Brier ${(sums.brier / sums.all).toFixed(3)}`,
      `base rates ${(sums.base / sums.all).toFixed(3)}`,
    );
    expect(ceiling - ours).toBeLessThan(0.05);
    expect(sums.brier).toBeLessThan(sums.base);
  },
  TIMEOUT,
);

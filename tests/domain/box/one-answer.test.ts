import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calculate } from '../../../src/domain/box/calculate.ts';
import type { Given } from '../../../src/domain/box/given.ts';
import { jointUnder, knownPair } from '../../../src/domain/box/joint-under.ts';
import { openTrial } from '../../../src/domain/box/open-trial.ts';
import { pairAsCut } from '../../../src/domain/box/pair.ts';
import type { Box, Stored, Trial } from '../../../src/domain/box/records.ts';
import { diagnosisView } from '../../../src/domain/diagnosis/diagnosis-view.ts';
import { clearanceTrialsOf } from '../../../src/domain/findings/rows/clearance-trials.ts';
import { rowsFromLogs } from '../../../src/domain/findings/rows/rows-from-log.ts';
import { fitOf, type Pair } from '../../../src/domain/joint/fit.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { boxesCsv } from '../../../src/storage/backup/boxes-csv.ts';
import { gotten } from '../joint/results.ts';
import { anyGiven, anyTriedBox, bored, boxOf, cut, givenWith, takenBack, tried, turned } from './any-box.ts';

const clearanceOf = (pair: Pair | null): number | null => (pair ? gotten(fitOf(pair)).clearance : null);

/** What the Bench advises from; null where it knows of no pair. */
const onBench = (box: Box, given: Given): number | null => {
  const trial = openTrial(box);
  const calculated = calculate(box, given);
  // A plan that does not hold together is refused on the Bench; what was measured and cut is asked for without it.
  if (!calculated.ok || !trial) return clearanceOf(pairAsCut(box, given));
  if (!pairAsCut(box, given, trial.seq)) return null;
  const view = diagnosisView({
    boxId: 'box',
    box,
    calculated: calculated.value,
    runs: new Map(),
    trialId: trial.id,
    unit: 'mm',
    learned: null,
  });
  if (!view) return null;
  const { joint } = view;
  const piece = (part: 'recess' | 'tenon') => ({
    diameter: part === 'recess' ? joint.bore : joint.tenon,
    depth: joint.depth[part],
    tipFlat: joint.tipFlat,
    flankShift: joint.flankShift[part],
  });
  return clearanceOf({ pitch: joint.pitch, recess: piece('recess'), tenon: piece('tenon') });
};

const workshopOf = ({ rig, caliper }: Given) => ({
  rigs: new Map([['rig', rig]]),
  calipers: new Map([['caliper', caliper]]),
  ownWoods: new Map(),
});

/** The box with its earlier trials saying this, so that only the newest speaks. */
const newestAlone = (box: Box, earlier: Partial<Trial>): Box => ({
  ...box,
  trials: [...box.trials.slice(0, -1).map((trial) => ({ ...trial, ...earlier })), ...box.trials.slice(-1)],
});

/** The newest trial's clearance in the row of the findings. */
const inFindings = (box: Box, given: Given): number | null => {
  const [row] = rowsFromLogs([
    {
      ...workshopOf(given),
      log: 'mine',
      boxes: new Map([['box', newestAlone(box, { goingOn: [] })]]),
      runs: new Map(),
      woodFacts: () => ({ group: 'hardwood', hardness: null }),
    },
  ]).rows;
  return row?.clearanceTrials.at(-1)?.clearance ?? null;
};

const cellsOf = (box: Box, given: Given): ((heading: string) => string) => {
  const stored = (kind: string, id: string, body: unknown) =>
    ({ logId: 'mine', kind, id, rev: 1, writer: 'w', savedAt: 0, body }) as Stored;
  const [heading = '', row = ''] = boxesCsv([
    stored('box', 'box', box),
    stored('rig', 'rig', given.rig),
    stored('instrument', 'caliper', given.caliper),
  ]).split('\r\n');
  const columns = heading.split(',');
  const cells = row.match(/"[^"]*"|[^,]+|(?<=,)(?=,)/g) ?? [];
  expect(cells.length).toBeLessThanOrEqual(columns.length);
  return (name) => cells[columns.indexOf(name)] ?? '';
};

/** What the sizes in the table of boxes come to, cut with the cutter of this rig. */
const inTable = (
  box: Box,
  given: Given,
): { readonly said: number | null; readonly implied: number | null } => {
  const cell = cellsOf(box, given);
  const pair = pairAsCut(box, given);
  const names = ['bore mm', 'tenon mm', 'recess depth mm', 'tenon depth mm'];
  const [bore, tenon, recessDepth, tenonDepth] = names.map((name) => cell(name));
  const isWhole = [bore, tenon, recessDepth, tenonDepth].every((text) => text !== '');
  const size = (text: string | undefined) => mm(Number(text));
  return {
    said: cell('clearance mm') === '' ? null : Number(cell('clearance mm')),
    implied:
      pair && isWhole
        ? clearanceOf({
            pitch: box.plan.pitch.mm,
            recess: { ...pair.recess, diameter: size(bore), depth: size(recessDepth) },
            tenon: { ...pair.tenon, diameter: size(tenon), depth: size(tenonDepth) },
          })
        : null,
  };
};

/** Each of the two sizes in the table is rounded to a micron. */
const A_MICRON = 0.0011;

const expectOneAnswer = (box: Box, given: Given): number | null => {
  const bench = onBench(box, given);
  const { said, implied } = inTable(box, given);
  const findings = inFindings(box, given);
  if (bench === null) {
    expect([findings, said, implied]).toEqual([null, null, null]);
    return null;
  }
  expect(findings).toBe(bench);
  expect(Math.abs((said ?? Number.NaN) - bench)).toBeLessThan(A_MICRON);
  expect(Math.abs((implied ?? Number.NaN) - bench)).toBeLessThan(A_MICRON);
  return bench;
};

const BOTH_CUT = [cut('recess', 1.6), cut('tenon', 1.6)];

describe('one box, one answer', () => {
  const plain = expectOneAnswer(boxOf([bored(50), turned(52.4), ...BOTH_CUT, tried()]), givenWith(null));

  it('a tenon turned down is what it was turned down to, everywhere', () => {
    const box = boxOf([bored(50), turned(52.9), turned(52.4), ...BOTH_CUT, tried()]);
    expect(expectOneAnswer(box, givenWith(null))).toBeCloseTo(plain ?? 0, 9);
    expect(cellsOf(box, givenWith(null))('tenon mm')).toBe('52.4');
  });

  it('inside jaws that read over make the bore smaller by as much, everywhere', () => {
    const box = boxOf([bored(50), turned(52.4), ...BOTH_CUT, tried()]);
    // The helix widens a grain less round a smaller bore.
    expect(expectOneAnswer(box, givenWith(0.1))).toBeCloseTo((plain ?? 0) - 0.1, 3);
    expect(cellsOf(box, givenWith(0.1))('bore mm')).toBe('49.9');
  });

  it('readings over crests count for nothing beside plain ones, everywhere', () => {
    const over = { overCrests: true };
    const box = boxOf([bored(50), turned(52.4), ...BOTH_CUT, bored(49.8, over), turned(52.2, over), tried()]);
    expect(expectOneAnswer(box, givenWith(null))).toBeCloseTo(plain ?? 0, 9);
  });

  it('the passes of an old tenon are not those of a new one', () => {
    const old = [bored(50), turned(52.4), ...BOTH_CUT, tried()];
    const turnedAgain = boxOf([...old, turned(52.6)]);
    expect(pairAsCut(turnedAgain, givenWith(null))).toBeNull();
    expect(cellsOf(turnedAgain, givenWith(null))('tenon depth mm')).toBe('');
    const box = boxOf([...old, turned(52.6), cut('tenon', 1.5), tried()]);
    expect(expectOneAnswer(box, givenWith(null))).toBeCloseTo((plain ?? 0) - 0.2 - 0.2, 3);
  });

  it('each trial keeps the clearance that it was made with, whatever was cut or turned after it', () => {
    const box = boxOf([
      ...[bored(50), turned(52.4), ...BOTH_CUT, tried(), cut('tenon', 1.65), tried()],
      ...[turned(52.6), cut('tenon', 1.6), tried()],
    ]);
    const found = clearanceTrialsOf(box, givenWith(null)).map(({ clearance }) => clearance);
    expect(found[0]).toBe(plain);
    expect(found.map((clearance) => clearance - (plain ?? 0))).toEqual([
      0,
      expect.closeTo(0.1, 3),
      expect.closeTo(-0.2, 3),
    ]);
  });

  it('a pass taken back was never cut, and the next one has its place', () => {
    const box = boxOf([bored(50), turned(52.4), ...BOTH_CUT, cut('tenon', 1.7), takenBack, tried()]);
    expect(expectOneAnswer(box, givenWith(null))).toBeCloseTo(plain ?? 0, 9);
  });

  it('no clock takes part: set back between cut and trial, the cut still was before it', () => {
    const entries = [bored(50), turned(52.4), ...BOTH_CUT, tried()];
    const box = boxOf(entries, (i) => 1e12 - i * 3_600_000);
    expect(expectOneAnswer(box, givenWith(null))).toBe(plain);
    expect(openTrial(box)).not.toBeNull();
    expect(openTrial(boxOf([...entries, cut('tenon', 1.65)], (i) => 1e12 - i * 3_600_000))).toBeNull();
  });

  it('is a law, over any box and any workshop', () => {
    let known = 0;
    fc.assert(
      fc.property(anyTriedBox, anyGiven, (box, given) => {
        if (expectOneAnswer(box, given) !== null) known++;
      }),
      { numRuns: 300 },
    );
    expect(known).toBeGreaterThan(150);
  }, 30_000);

  it('is what the page of the joint shows too', () => {
    let known = 0;
    fc.assert(
      fc.property(anyTriedBox, anyGiven, (box, given) => {
        const asCut = clearanceOf(pairAsCut(box, given));
        const calculated = calculate(box, given);
        const joint = calculated.ok ? knownPair(box, calculated.value, new Map()) : calculated;
        if (asCut === null || !joint.ok) return;
        const seen = jointUnder(joint.value, joint.value.asItIs);
        if (!seen.ok) return;
        known++;
        expect(seen.value.fit.clearance).toBeCloseTo(asCut, 9);
      }),
      { numRuns: 300 },
    );
    expect(known).toBeGreaterThan(100);
  }, 30_000);
});

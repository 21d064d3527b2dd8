import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measuredAngle } from '../../../src/domain/alignment/measure.ts';
import type { Box, ExperimentMeasure, ExperimentPlan } from '../../../src/domain/box/records.ts';
import { BOUNDS, compare, type Drawn } from '../../../src/domain/experiment/compare.ts';
import { drawLots, type Lot } from '../../../src/domain/experiment/draw-lots.ts';
import { type ExperimentBox, experimentBoxOf } from '../../../src/domain/experiment/experiment-box.ts';
import { experimentPower, powerTable } from '../../../src/domain/experiment/experiment-power.ts';
import { experimentQuestions } from '../../../src/domain/experiment/experiment-questions.ts';
import { type ExperimentStatus, experimentStatus } from '../../../src/domain/experiment/experiment-status.ts';
import { mayVary } from '../../../src/domain/experiment/experiment-step.ts';
import { checkRecord } from '../../../src/domain/log/validate.ts';
import { seededRandom } from '../../../src/domain/random.ts';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import type { SetUpEvent } from '../../../src/domain/setup/events.ts';
import { foldRun, type RunState } from '../../../src/domain/setup/fold.ts';
import type { Procedure } from '../../../src/domain/setup/procedure.ts';
import { must } from '../findings/expect-digits.ts';
import { GAP, type InventedExperiment, inventedExperiment, setUpOf } from './invented-experiment.ts';

const END = BOUNDS.end;
const lotsOf = (boxes: number, seed: number): readonly Lot[] => must(drawLots(boxes, seededRandom(seed)));
/** An experiment of whole blocks; a reading in eight or so is missing. */
const experiments = fc
  .record({ blocks: fc.integer({ min: 2, max: 10 }), seed: fc.integer({ min: 1, max: 1e6 }) })
  .chain(({ blocks, seed }) =>
    fc
      .array(fc.option(fc.double({ min: -5, max: 5, noNaN: true }), { freq: 8 }), {
        minLength: 4 * blocks,
        maxLength: 4 * blocks,
      })
      .map((values) => lotsOf(4 * blocks, seed).map((lot, i): Drawn => ({ lot, value: values[i] ?? null }))),
  );
const other: Readonly<Record<Lot, Lot>> = { with: 'without', without: 'with' };
const swapped = (boxes: readonly Drawn[]) => boxes.map((box) => ({ ...box, lot: other[box.lot] }));
const shifted = (boxes: readonly Drawn[], by: number) =>
  boxes.map(({ lot, value }) => ({ lot, value: value !== null && lot === 'with' ? value - by : value }));

/** Every way to draw two of four in each of two blocks: the variance of the with-sum by counting them all. */
const zByCounting = (boxes: readonly Drawn[]): number => {
  const values = boxes.map(({ value }) => value as number);
  const pairs = [0, 1, 2, 3].flatMap((a) => [0, 1, 2, 3].filter((b) => b > a).map((b) => [a, b] as const));
  const sums = pairs.flatMap(([a, b]) =>
    pairs.map(
      ([c, d]) =>
        (values[a] as number) + (values[b] as number) + (values[4 + c] as number) + (values[4 + d] as number),
    ),
  );
  const mean = sums.reduce((sum, each) => sum + each, 0) / sums.length;
  const variance = sums.reduce((sum, each) => sum + (each - mean) ** 2, 0) / sums.length;
  const drawn = boxes.reduce((sum, { lot, value }) => sum + (lot === 'with' ? (value as number) : 0), 0);
  return (drawn - mean) / Math.sqrt(variance);
};

describe('with and without compared', () => {
  it('z is that of counting every drawing the blocks could have given', () => {
    const values = [0.3, 1.2, 0.1, 0.9, 2.2, 1.1, 0.4, 0.8];
    const boxes = lotsOf(8, 3).map((lot, i) => ({ lot, value: values[i] as number }));
    expect(compare(boxes, END).z).toBeCloseTo(zByCounting(boxes), 10);
  });

  it('turns its sign round when the lots change names, and nothing else', () => {
    fc.assert(
      fc.property(experiments, (boxes) => {
        const [one, two] = [compare(boxes, END), compare(swapped(boxes), END)];
        expect(two.state).toBe(one.state);
        expect(two.clear).toBe(one.clear);
        expect(two.z).toBeCloseTo(-one.z, 9);
        expect(two.difference).toBeCloseTo(-one.difference, 9);
        expect(two.with).toEqual(one.without);
        if (one.interval && two.interval) {
          expect(two.interval.low).toBeCloseTo(-one.interval.high, 6);
          expect(two.interval.high).toBeCloseTo(-one.interval.low, 6);
        }
      }),
    );
  });

  it('a day that all of a block shares changes nothing; the unit changes the unit alone', () => {
    fc.assert(
      fc.property(
        experiments,
        fc.array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: 10 }),
        (boxes, days) => {
          const found = compare(boxes, END);
          fc.pre(found.state === 'compared' && Math.abs(found.z) > 1e-6);
          const moved = boxes.map(({ lot, value }, i) => ({
            lot,
            value: value === null ? null : value + (days[Math.floor(i / 4)] as number),
          }));
          expect(compare(moved, END).difference).toBeCloseTo(found.difference, 6);
          const inThou = boxes.map(({ lot, value }) => ({
            lot,
            value: value === null ? null : 25.4 * value,
          }));
          expect(compare(inThou, END).z).toBeCloseTo(found.z, 6);
          expect(compare(inThou, END).difference).toBeCloseTo(25.4 * found.difference, 6);
        },
      ),
    );
  });

  it('the interval ends where a shift makes z the bound, holds the difference, and leaves out nought exactly when clear', () => {
    let clear = 0;
    fc.assert(
      fc.property(
        experiments,
        fc.constantFrom(BOUNDS.half, BOUNDS.end),
        fc.double({ min: -4, max: 4, noNaN: true }),
        (drawn, bound, effect) => {
          const boxes = shifted(drawn, effect);
          const found = compare(boxes, bound);
          const { interval } = found;
          fc.pre(
            interval !== null && interval.high - interval.low > 1e-3 && interval.high - interval.low < 1e3,
          );
          expect(interval.low).toBeLessThanOrEqual(found.difference);
          expect(interval.high).toBeGreaterThanOrEqual(found.difference);
          expect(Math.abs(compare(shifted(boxes, interval.low), bound).z)).toBeCloseTo(bound, 5);
          expect(Math.abs(compare(shifted(boxes, interval.high), bound).z)).toBeCloseTo(bound, 5);
          if (Math.abs(Math.abs(found.z) - bound) > 1e-9)
            expect(found.clear).toBe(interval.low > 0 || interval.high < 0);
          if (found.clear) clear++;
        },
      ),
      { seed: 11, numRuns: 300 },
    );
    expect(clear).toBeGreaterThan(10);
  });

  it('counts what was not measured by lot, and leaves it out of its block', () => {
    const lots: readonly Lot[] = ['with', 'without', 'with', 'without', 'with', 'with', 'without', 'without'];
    const values = [1, 2, null, 3, 5, 6, null, null];
    const found = compare(
      lots.map((lot, i) => ({ lot, value: values[i] ?? null })),
      END,
    );
    expect(found.with).toEqual({ boxes: 4, measured: 3, mean: 4 });
    expect(found.without).toEqual({ boxes: 4, measured: 2, mean: 2.5 });
    // The second four have no box without the step: only the first can be compared.
    expect(found.difference).toBeCloseTo(1 - 2.5, 12);
  });

  it('says so where nothing can be told: none measured, one lot only, all alike, nothing but the lot', () => {
    const lots = lotsOf(16, 2);
    const all = (value: (lot: Lot) => number | null) =>
      compare(
        lots.map((lot) => ({ lot, value: value(lot) })),
        END,
      );
    expect(compare([], END)).toMatchObject({ state: 'nothing', interval: null, z: 0, clear: false });
    expect(all(() => null)).toMatchObject({ state: 'nothing', clear: false });
    expect(all((lot) => (lot === 'with' ? 1 : null))).toMatchObject({ state: 'nothing', clear: false });
    expect(all(() => 0.1 + 0.2)).toMatchObject({ state: 'alike', difference: 0, z: 0, clear: false });
    // Two ways to reckon 0.3: what differs is rounding.
    expect(all((lot) => (lot === 'with' ? 0.1 + 0.2 : 0.3))).toMatchObject({ state: 'alike', clear: false });
    expect(all((lot) => (lot === 'with' ? 1 : 0))).toMatchObject({
      difference: 1,
      interval: null,
      clear: true,
    });
  });
});

const folded = (events: readonly SetUpEvent[]): RunState => foldRun(events) as RunState;
const experimentBoxes = ({ plan, boxes }: InventedExperiment): readonly ExperimentBox[] =>
  boxes.map(({ box, events }) => experimentBoxOf(plan, box, [folded(events)]));
const status = (experiment: InventedExperiment): ExperimentStatus =>
  experimentStatus(experiment.plan, experimentBoxes(experiment));

describe('an experiment as it stands', () => {
  it('tells nothing of the difference before the first look, nor of later boxes until the last', () => {
    const whole = inventedExperiment();
    const at = (taken: number) => status({ ...whole, boxes: whole.boxes.slice(0, taken) });
    expect(at(19)).toEqual({ look: 'none-yet', taken: 19, planned: 40, nextLook: 20, unfinished: 0 });
    const half = at(20);
    expect(half).toMatchObject({ look: 'half', bound: 2.8, nextLook: 40 });
    expect({ ...at(33), taken: 0, unfinished: 0 }).toEqual({ ...half, taken: 0, unfinished: 0 });
    expect(at(40)).toMatchObject({ look: 'end', bound: 1.98, nextLook: null, unfinished: 0 });
  });

  it('waits at a look for boxes that are still on the bench', () => {
    const whole = inventedExperiment({ taken: 22 });
    const open = (box: Box): Box => ({ ...box, trials: [], closing: null });
    const boxes = whole.boxes.map((each, i) =>
      i === 4 || i === 21 ? { ...each, box: open(each.box) } : each,
    );
    expect(status({ ...whole, boxes })).toEqual({
      look: 'none-yet',
      taken: 22,
      planned: 40,
      nextLook: 20,
      unfinished: 1,
    });
    const gone = experimentBoxes({ ...whole, boxes }).map((box, i) =>
      i === 4 ? experimentBoxOf(whole.plan, null, []) : box,
    );
    const now = experimentStatus(whole.plan, gone);
    expect(now.look).toBe('half');
    expect(gone[4]).toEqual({ value: null, fit: null, finished: true, did: null });
  });

  it('finds a true effect on a reading, tells the fit second, and counts every box by its lot', () => {
    const now = status(inventedExperiment({ effect: 2 }));
    if (now.look === 'none-yet') throw new Error('no look');
    expect(now.measured).toMatchObject({ state: 'compared', clear: true });
    // 0.12 mm over 80 is 1.5 mrad.
    expect(now.measured.interval?.low).toBeLessThan(-0.12 / 80);
    expect(now.measured.interval?.high).toBeGreaterThan(-0.12 / 80);
    expect(now.measured.with.boxes + now.measured.without.boxes).toBe(40);
    expect(now.measured.with.measured + now.measured.without.measured).toBeLessThan(40);
    expect(now.fit?.with.measured).toBe(20);
    expect(now.otherwise).toBe(0);
  });

  it('a lot that was not kept counts by the lot, and is told', () => {
    const whole = inventedExperiment({ boxes: 8, missingOneIn: 1e9 });
    const at = whole.plan.lots.indexOf('without');
    const kept = whole.boxes.map((each, i) =>
      i === at ? { ...each, events: setUpOf(each.id, `run-${i + 1}`, { gap: 9 }) } : each,
    );
    const now = status({ ...whole, boxes: kept });
    if (now.look === 'none-yet') throw new Error('no look');
    expect(now.otherwise).toBe(1);
    expect(now.measured.without.mean as number).toBeGreaterThan(Math.atan(9 / 80) / 4);
  });

  it('an old experiment without a measure goes by the fit', () => {
    const whole = inventedExperiment();
    const { measure: _, ...old } = whole.plan;
    const now = status({ ...whole, plan: old });
    if (now.look === 'none-yet') throw new Error('no look');
    expect(now.fit).toBeNull();
    const asked = status(inventedExperiment({ measure: { kind: 'fit' } }));
    expect(now).toEqual(asked);
    expect(now.measured.with.mean as number).toBeGreaterThan(now.measured.without.mean as number);
  });
});

describe('what is measured of a box', () => {
  const measured = (measure: ExperimentMeasure, ...runs: readonly (readonly SetUpEvent[])[]) =>
    experimentBoxOf({ ...inventedExperiment().plan, measure }, null, runs.map(folded)).value;
  const base = setUpOf('box-1', 'run-1', { gap: 0.4 });
  /** The events with others put in before the n-th, all numbered anew and ten seconds apart. */
  const withMore = (events: readonly SetUpEvent[], n: number, ...more: readonly object[]): SetUpEvent[] =>
    [...events.slice(0, n), ...more, ...events.slice(n)].map((event, i) => ({
      ...(events[0] as SetUpEvent),
      ...(event as SetUpEvent),
      n: i + 1,
      at: 1e12 + i * 10_000,
      mono: i * 10_000,
    }));
  const gapRead = base.findIndex(({ kind }) => kind === 'read');
  const read = (gap: number) => ({
    ...base[gapRead],
    reading: { kind: 'gap', gap: { mm: gap }, over: { mm: 80 } },
  });
  const failed = { kind: 'ticked', steps: ['gap'], verdict: 'fail' };

  it('is the angle of the reading first taken there, the worst of several, before the step was put right', () => {
    expect(measured(GAP, base)).toBeCloseTo(Math.atan(0.4 / 80), 9);
    expect(measured(GAP, withMore(base, gapRead, read(0.7), failed))).toBeCloseTo(Math.atan(0.7 / 80), 9);
    expect(measured(GAP, withMore(base, gapRead, read(0.7)))).toBeCloseTo(Math.atan(0.7 / 80), 9);
    expect(measured(GAP, withMore(base, gapRead, read(0.2)))).toBeCloseTo(Math.atan(0.4 / 80), 9);
    // What is read after something moved is another setting's.
    const moved = { kind: 'moved', what: 'post-loosened' };
    expect(measured(GAP, withMore(base, gapRead, read(0.2), moved))).toBeCloseTo(Math.atan(0.2 / 80), 9);
    // Ticked as failing first and read then: still what the step found.
    expect(measured(GAP, withMore(base, gapRead, failed))).toBeCloseTo(Math.atan(0.4 / 80), 9);
    const sweep = {
      ...base[gapRead],
      reading: { kind: 'sweep', difference: { mm: -0.5 }, radius: { mm: 50 }, plane: 'lean' },
    };
    expect(measured(GAP, withMore(base, gapRead, sweep, failed))).toBeCloseTo(Math.atan(0.5 / 100), 9);
  });

  it('is the angle that the set-up itself tells of that reading', () => {
    for (const gap of [0, 0.1, 0.76, 4]) {
      const [reading] = setUpOf('box-1', 'run-1', { gap }).flatMap((event) =>
        event.kind === 'read' && event.reading.kind === 'gap' ? [event.reading] : [],
      );
      if (!reading) throw new Error('no reading');
      expect(measured(GAP, setUpOf('box-1', 'run-1', { gap }))).toBeCloseTo(
        must(measuredAngle(reading)).angle,
        12,
      );
    }
  });

  it('is nothing where it was not read, is of another kind, or two phones wrote the set-up', () => {
    expect(measured(GAP, setUpOf('box-1', 'run-1'))).toBeNull();
    expect(measured({ ...GAP, of: 'turns' } as ExperimentMeasure, base)).toBeNull();
    const second = { ...(base[4] as SetUpEvent), writer: 'another' };
    expect(measured(GAP, [...base, second])).toBeNull();
    expect(measured({ kind: 'fit' }, base)).toBeNull();
  });

  it('is taken from the first set-up of the box that was cut, those given up before it included, and none after', () => {
    const given = base
      .slice(0, gapRead + 1)
      .concat({ ...(base.at(-1) as SetUpEvent), how: 'abandoned' } as SetUpEvent);
    const abandoned = withMore(given, 0).map((event) => ({ ...event, runId: 'run-0' }));
    expect(measured(GAP, abandoned, setUpOf('box-1', 'run-1', { gap: 0.1 }))).toBeCloseTo(
      Math.atan(0.4 / 80),
      9,
    );
    expect(measured(GAP, setUpOf('box-1', 'run-1'), setUpOf('box-1', 'run-2', { gap: 0.3 }))).toBeNull();
  });

  it('time is the log of the timed steps of the first set-up, hold points left out; null unless all of it is exact', () => {
    const procedure = DEFAULT_PROCEDURES['board-and-cone'];
    const timed = procedure.steps.filter(({ hold, onlyWithGroove }) => !hold && !onlyWithGroove).length;
    const time = (events: readonly SetUpEvent[]) => measured({ kind: 'time' }, events);
    const plain = setUpOf('box-1', 'run-1', { seconds: 20 });
    expect(Math.exp(time(plain) as number)).toBeCloseTo(20_000 * timed, 3);
    // Opened anew while a step is done; while a hold point is asked, no time of a step is lost.
    const openedAnew = (key: string) => {
      const at = plain.findIndex((event) => event.kind === 'ticked' && event.steps.includes(key));
      return time(plain.map((event, i) => (i >= at ? { ...event, session: 'another' } : event)));
    };
    expect(openedAnew('cone')).toBeNull();
    expect(openedAnew('lock-post')).toBe(time(plain));
    const stretch = plain.map((event) =>
      event.kind === 'ticked' && event.steps[0] === 'board' ? { ...event, steps: ['board', 'cone'] } : event,
    );
    expect(
      time(stretch.filter((event) => !(event.kind === 'ticked' && event.steps[0] === 'cone'))),
    ).toBeNull();
    expect(time(plain.slice(0, -1))).toBeNull();
  });
});

describe('what can be tried both ways', () => {
  const of = (procedure: Procedure) =>
    Object.fromEntries(
      experimentQuestions(procedure).map(({ step, measures }) => [step, measures.map(({ kind }) => kind)]),
    );

  it('no hold point, and a reading only where the step can act on it and it can still be taken', () => {
    expect(of(DEFAULT_PROCEDURES['board-and-cone'])).toEqual({
      board: ['fit', 'time'],
      cone: ['fit', 'time'],
      'square-banjo': ['reading', 'fit', 'time'],
      gap: ['fit', 'time'],
      'touch-off': ['fit', 'time'],
    });
    expect(of(DEFAULT_PROCEDURES['true-bar'])['bar-grip']).toEqual(['fit', 'time']);
    const [asked] = experimentQuestions(DEFAULT_PROCEDURES['board-and-cone']).flatMap(({ step, measures }) =>
      step === 'square-banjo' ? measures : [],
    );
    expect(asked).toEqual(GAP);
  });

  it('no step that a hold point rests on, through whatever chain, even a circle', () => {
    const procedure = DEFAULT_PROCEDURES['board-and-cone'];
    const resting = (key: string, restsOn: readonly string[]): Procedure => ({
      ...procedure,
      steps: procedure.steps.map((step) => (step.key === key ? { ...step, restsOn } : step)),
    });
    expect(mayVary(procedure, 'board')).toBe(true);
    expect(mayVary(resting('shake', ['gap']), 'board')).toBe(false);
    expect(mayVary(resting('board', ['gap']), 'board')).toBe(true);
    expect(mayVary(procedure, 'lock-post')).toBe(false);
    expect(mayVary(procedure, 'pick-up')).toBe(false);
    expect(mayVary(procedure, 'not there')).toBe(false);
  });
});

describe('lots and power', () => {
  it('lots are two and two in every four; refuses fewer than eight', () => {
    const lots = lotsOf(20, 4);
    for (let i = 0; i < 20; i += 4)
      expect(lots.slice(i, i + 4).filter((lot) => lot === 'with')).toHaveLength(2);
    expect(drawLots(4, seededRandom(1)).ok).toBe(false);
  });

  it('power grows with boxes, is the error rate where there is nothing to find, and is told for either kind of measure', () => {
    expect(experimentPower(40, { measure: 'reading', effect: 0 })).toBeCloseTo(0.05, 1);
    expect(experimentPower(80, { measure: 'reading', effect: 0.5 })).toBeGreaterThan(
      experimentPower(40, { measure: 'reading', effect: 0.5 }),
    );
    const at40 = powerTable().find(({ boxes }) => boxes === 40);
    expect(at40?.fit).toBeCloseTo(
      experimentPower(40, { measure: 'right', withRate: 0.15, withoutRate: 0.35 }),
      9,
    );
    expect(at40?.reading).toBeCloseTo(experimentPower(40, { measure: 'reading', effect: 0.8 }), 9);
  });
});

describe('the record of an experiment from a file', () => {
  const record = (body: unknown) => ({
    ...{ logId: 'mine', kind: 'experiment', id: 'experiment', rev: 1, writer: 'w', savedAt: 1 },
    body,
  });
  const { plan } = inventedExperiment({ boxes: 8 });
  const fits = (body: unknown): boolean => checkRecord(JSON.parse(JSON.stringify(record(body)))).ok;

  it('comes back as it is with each measure, and without one', () => {
    const { measure: _, ...old } = plan;
    const plans: readonly ExperimentPlan[] = [
      plan,
      { ...plan, measure: { kind: 'time' } },
      { ...plan, measure: { kind: 'fit' } },
      old,
    ];
    for (const each of plans) {
      const checked = checkRecord(JSON.parse(JSON.stringify(record(each))));
      expect(checked).toEqual({ ok: true, value: record(each) });
    }
  });

  it('is refused with a measure that nothing here can read, more boxes than lots, or a box twice', () => {
    expect(fits({ ...plan, measure: { kind: 'feel' } })).toBe(false);
    expect(fits({ ...plan, measure: { ...GAP, of: 'depth' } })).toBe(false);
    expect(fits({ ...plan, measure: { kind: 'time', step: 'gap' } })).toBe(false);
    expect(fits({ ...plan, boxes: Array.from({ length: 9 }, (_, i) => `box ${i}`) })).toBe(false);
    expect(fits({ ...plan, boxes: ['box-1', 'box-1'] })).toBe(false);
  });
});

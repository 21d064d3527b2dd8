import type { Box, ExperimentMeasure, ExperimentPlan } from '../../../src/domain/box/records.ts';
import { drawLots, type Lot } from '../../../src/domain/experiment/draw-lots.ts';
import { seededRandom } from '../../../src/domain/random.ts';
import { DEFAULT_PROCEDURES } from '../../../src/domain/setup/default-procedures.ts';
import type { Happening, SetUpEvent } from '../../../src/domain/setup/events.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { sampleBox, sampleClosing } from '../../storage/sample-log.ts';
import { must } from '../findings/expect-digits.ts';

export const GAP: ExperimentMeasure = {
  kind: 'reading',
  step: 'gap',
  sentence: 'Back off the cone. Still no card goes in at any corner.',
  of: 'angle',
};
const PROCEDURE = DEFAULT_PROCEDURES['board-and-cone'];
const AT = Date.UTC(2031, 2, 4, 9);
const DAY = 86_400_000;

/** The events of a first set-up: the steps ticked one by one, in so many seconds each, the gap read where it is given (mm over 80). */
export const setUpOf = (
  boxId: string,
  runId: string,
  { skipped = [], gap = null, seconds = 20 }: SetUp = {},
): readonly SetUpEvent[] => {
  const happenings: Happening[] = [
    {
      kind: 'started',
      boxId,
      part: 'recess',
      procedureId: 'board-and-cone',
      procedure: PROCEDURE,
      inherited: [],
      fromRun: null,
      groove: false,
    },
  ];
  for (const { key, onlyWithGroove } of PROCEDURE.steps) {
    if (onlyWithGroove) continue;
    if (key === 'gap' && gap !== null)
      happenings.push({
        kind: 'read',
        step: key,
        reading: {
          kind: 'gap',
          gap: { mm: mm(gap), text: `${gap.toFixed(2)} mm` },
          over: { mm: mm(80), text: '80 mm' },
          plane: 'either',
        },
      });
    happenings.push({ kind: 'ticked', steps: [key], verdict: skipped.includes(key) ? 'skip' : 'pass' });
  }
  happenings.push({ kind: 'closed', how: 'cut' });
  return happenings.map((happening, i) => ({
    logId: 'mine',
    runId,
    n: i + 1,
    writer: 'workshop',
    at: AT + i * seconds * 1000,
    mono: i * seconds * 1000,
    hid: 0,
    session: runId,
    ...happening,
  }));
};

interface SetUp {
  readonly skipped?: readonly string[];
  readonly gap?: number | null;
  readonly seconds?: number;
}

export interface InventedExperiment {
  readonly plan: ExperimentPlan;
  readonly boxes: readonly {
    readonly id: string;
    readonly box: Box;
    readonly events: readonly SetUpEvent[];
  }[];
}

/**
 * An invented experiment of "square-banjo", finished up to `taken` boxes: the gap is 0.15 mm over 80 with a spread of 0.06, and
 * `effect` spreads more where the step was left out; 85 in 100 are right with it, 65 without. One reading in `missingOneIn` was not taken.
 */
export const inventedExperiment = ({
  seed = 7,
  boxes = 40,
  taken = boxes,
  effect = 1.2,
  missingOneIn = 20,
  measure = GAP,
  lots = must(drawLots(boxes, seededRandom(seed, 1))),
}: {
  readonly lots?: readonly Lot[];
  readonly seed?: number;
  readonly boxes?: number;
  readonly taken?: number;
  readonly effect?: number;
  readonly missingOneIn?: number;
  readonly measure?: ExperimentMeasure;
} = {}): InventedExperiment => {
  const random = seededRandom(seed);
  const made = lots.slice(0, taken).map((lot, i) => {
    const [id, runId] = [`box-${i + 1}`, `run-${i + 1}`];
    const without = lot === 'without';
    const gap = Math.max(0, random.normal(0.15 + (without ? effect * 0.06 : 0), 0.06));
    const right = random.chance(without ? 0.65 : 0.85);
    const day = new Date(AT - (boxes - i) * DAY).toISOString().slice(0, 10);
    return {
      id,
      box: sampleBox({
        number: i + 1,
        name: `Needle case ${i + 1}`,
        startedOn: day,
        setUps: [{ runId, part: 'recess', seq: 1 }],
        trials: [
          {
            id: `trial-${i + 1}`,
            seq: 2,
            at: AT,
            right,
            goingOn: right ? ['free'] : ['stops-dead'],
            seated: right ? 'flush' : 'gap-all-round',
            threads: ['sound'],
            marks: null,
            endPlay: null,
            turnsOn: null,
            afterFinish: false,
          },
        ],
        closing: { ...sampleClosing, at: AT },
      }),
      events: setUpOf(id, runId, {
        skipped: without ? ['square-banjo'] : [],
        gap: random.chance(1 / missingOneIn) ? null : gap,
        seconds: Math.round(random.between(12, 30)),
      }),
    };
  });
  return {
    plan: {
      step: 'square-banjo',
      sentence: 'Banjo against the square. Clamp it.',
      measure,
      lots,
      drawnOn: '2031-01-02',
      boxes: made.map(({ id }) => id),
      givenUp: false,
    },
    boxes: made,
  };
};

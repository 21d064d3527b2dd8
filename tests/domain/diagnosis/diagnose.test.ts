import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CAUSES } from '../../../src/domain/diagnosis/causes.ts';
import { diagnose } from '../../../src/domain/diagnosis/diagnose.ts';
import {
  calibrated,
  chanceWordOf,
  confidenceOf,
  type Diagnosis,
  inTenths,
} from '../../../src/domain/diagnosis/diagnosis.ts';
import { MISSED } from '../../../src/domain/diagnosis/log-factors.ts';
import type { DiagnosisView } from '../../../src/domain/diagnosis/view.ts';
import { benchStep } from '../../../src/domain/joint/dial.ts';
import { fullEngagement } from '../../../src/domain/joint/engagement.ts';
import { type Millimetres, mm } from '../../../src/domain/units/brands.ts';
import { randomView } from './random-view.ts';
import { soundView, trialOf } from './sound-view.ts';

const SLOPE = Math.tan(Math.PI / 6);
/** LIDWRIGHT_VIEWS=20000 npx vitest run tests/domain/diagnosis/diagnose asks as many as the design does. */
const VIEWS = Number(process.env.LIDWRIGHT_VIEWS ?? 120);

const answered = (view: DiagnosisView): Diagnosis => {
  const found = diagnose(view);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
};
const shareOf = (found: Diagnosis, cause: string): number =>
  found.causes.find((each) => each.cause === cause)?.share ?? 0;

const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : value !== null && typeof value === 'object'
      ? Object.values(value).flatMap(numbersIn)
      : [];

const isWhole = (value: number, step: number): boolean =>
  Math.abs(value / step - Math.round(value / step)) < 1e-3;

const CUTS = ['deepen', 'same-setting-again', 'harden-and-recut'];

/** Everything that must hold of any answer, whatever it was given; what does not, in words. */
const broken = (view: DiagnosisView, found: Diagnosis): string[] => {
  const wrong: string[] = [];
  const must = (holds: boolean, what: string) => {
    if (!holds) wrong.push(what);
  };
  must(numbersIn(found).every(Number.isFinite), 'a number is none');
  must(
    Math.abs(found.causes.reduce((sum, { share }) => sum + share, 0) - 1) < 1e-9,
    'shares do not sum to 1',
  );
  must(
    found.causes.every(({ cause, share }) => CAUSES.includes(cause) && share > 0 && share <= 1 + 1e-12),
    'shares',
  );
  const last = view.trials.at(-1);
  if (last?.right && last.moves.length === 0)
    must(found.move === null && found.ask === null, 'right, yet advised');
  const finished = view.bench.finished || view.trials.some(({ afterFinish }) => afterFinish);
  const felt = last?.endPlay == null || last.moves.length > 0 ? null : last.endPlay / SLOPE;
  const { joint, bench } = view;
  const step = benchStep[bench.unit];
  for (const move of [found.move, found.next]) {
    if (!move) continue;
    const by = move.by ?? 0;
    must(
      move.kind === 'rub-flanks' ? isWhole(by, 0.01) : isWhole(by, step),
      `${move.kind}: not in whole steps`,
    );
    must(move.chance >= 0 && move.chance <= 1, 'chance');
    if (CUTS.includes(move.kind)) {
      must(!finished, 'a cut after a finish');
      must(felt !== null, 'a cut without the play felt');
      must((felt ?? 0) + 2 * by <= 1.2 * joint.wanted + 1e-9, 'cut beyond 1.2 of the wanted clearance');
      if (move.reset) must(!bench.holds && move.part === 'tenon', 'set up again without need, or the recess');
      else
        must(
          bench.holds && bench.onJig === move.part,
          'a cut without a setting, or on the part not on the jig',
        );
    }
    if (move.kind === 'deepen') {
      const part = move.part ?? 'tenon';
      const tip = joint.learned
        ? joint.tipFlat + (SLOPE * (joint.wanted - joint.learned.clearance)) / 2
        : joint.tipFlat;
      const crest = joint.pitch - tip - 2 * joint.flankShift[part] - 2 * SLOPE * (joint.depth[part] + by);
      must(crest >= 0.15 - 1e-9, 'calculated crest under 0.15');
      must(by <= Math.max(step, joint.wanted / 2) + 1e-9, 'more than half of the wanted clearance at once');
      const seen = last?.crestFlat;
      if (seen?.part === part) must(seen.width - 2 * SLOPE * by >= 0.12 - 1e-9, 'seen crest under 0.12');
    }
    if (move.kind === 'new-tenon') {
      const least = joint.bore + 2 * 0.45 * fullEngagement(joint.pitch, '0.75H');
      must((move.size ?? 0) >= least - 1e-9, 'a tenon smaller than bore and least engagement');
      must(felt !== null, 'a new tenon without the play felt');
      must(
        view.trials.some(({ crestFlat }) => crestFlat !== null),
        'a new tenon without a crest seen',
      );
      must(isWhole(move.size ?? 0, step), 'size not in whole steps');
    }
    if (move.kind === 'face-shoulder') must(joint.bottomGap - by > -5, 'faced into the floor');
  }
  return wrong;
};

describe('any view within the bounds', { timeout: 120_000 }, () => {
  test(`is answered with sense, and within the limits (${VIEWS} random views)`, { timeout: 1e7 }, () => {
    const wrong: string[] = [];
    let cuts = 0;
    for (let number = 1; number <= VIEWS; number++) {
      const view = randomView(number);
      const found = diagnose(view);
      if (!found.ok) {
        wrong.push(`view ${number}: refused, ${JSON.stringify(found.error)}`);
        continue;
      }
      if (CUTS.includes(found.value.move?.kind ?? '')) cuts++;
      wrong.push(...broken(view, found.value).map((what) => `view ${number}: ${what}`));
    }
    expect(wrong).toEqual([]);
    expect(cuts).toBeGreaterThan(VIEWS / 200);
  });

  test('is answered the same again; order does not matter', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), (number) => {
        const view = randomView(number);
        const turned: DiagnosisView = {
          ...view,
          log: {
            missed: view.log.missed.toReversed(),
            done: view.log.done.toReversed(),
            moved: view.log.moved.toReversed(),
          },
          trials: view.trials.map((trial) => ({
            ...trial,
            goingOn: [...trial.goingOn.toReversed(), ...trial.goingOn],
            threads: trial.threads.toReversed(),
          })),
        };
        const found = diagnose(view);
        expect(diagnose(view)).toEqual(found);
        const again = diagnose(turned);
        if (!found.ok || !again.ok) return;
        expect(again.value.causes.map(({ cause, share }) => [cause, share])).toEqual(
          found.value.causes.map(({ cause, share }) => [cause, share]),
        );
        expect(again.value.move?.kind).toBe(found.value.move?.kind);
      }),
      { numRuns: 12 },
    );
  });

  test('has the same causes in inches and millimetres', () => {
    for (let number = 1; number <= 12; number++) {
      const view = randomView(number);
      const [inch, metric] = (['inch', 'metric'] as const).map((unit) =>
        answered({ ...view, bench: { ...view.bench, unit } }),
      );
      expect(inch?.causes).toEqual(metric?.causes);
    }
  });
});

describe('a hostile view', { timeout: 120_000 }, () => {
  /** Puts something else in the place of one number, at any depth. */
  const spoilt = (value: unknown, at: { left: number }, by: number): unknown => {
    if (typeof value === 'number') return at.left-- === 0 ? by : value;
    if (Array.isArray(value)) return value.map((each) => spoilt(each, at, by));
    if (value !== null && typeof value === 'object')
      return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, spoilt(each, at, by)]));
    return value;
  };

  test('is refused by field or answered without NaN; nothing is thrown', () => {
    const hostile = fc.constantFrom(
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      -1e308,
      1e308,
      -1,
      0,
      1e-12,
      5,
      1000,
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1e5 }),
        fc.integer({ min: 0, max: 60 }),
        hostile,
        (number, left, by) => {
          const view = spoilt(randomView(number), { left }, by) as DiagnosisView;
          const found = diagnose(view);
          if (found.ok) {
            expect(numbersIn(found.value).every(Number.isFinite)).toBe(true);
            expect(found.value.causes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
          } else expect(found.error.field).not.toBe('');
        },
      ),
      { numRuns: 80 },
    );
  });

  test.each([
    ['no trial', soundView([]), 'trials'],
    ['a tip as wide as the pitch', soundView(undefined, { joint: { tipFlat: mm(2.54) } }), 'tipFlat'],
    ['an end play that is no number', soundView([trialOf({ endPlay: mm(Number.NaN) })]), 'endPlay'],
    ['a step of no procedure', soundView(undefined, { log: { missed: ['__proto__', 'constructor'] } }), null],
  ])('%s', (_, view, field) => {
    const found = diagnose(view);
    expect(found.ok ? null : found.error.field).toBe(field);
  });
});

describe('what is felt and said', { timeout: 120_000 }, () => {
  const loose = (endPlay: number, words: readonly ('end-play' | 'rattles-sideways')[] = ['end-play']) =>
    soundView([trialOf({ goingOn: words, endPlay: mm(endPlay) })]);

  test('play inside the band and only end play said: left as it is, or a question; never a cut or a new tenon', () => {
    for (let seed = 1; seed <= 12; seed++)
      for (const share of [0.7, 1, 1.3]) {
        const found = answered({ ...loose(share * 0.35 * SLOPE), seed });
        expect([...CUTS, 'new-tenon']).not.toContain(found.move?.kind);
        expect([...CUTS, 'new-tenon']).not.toContain(found.next?.kind);
      }
    expect(answered(loose(0.35 * SLOPE)).move?.kind).toBe('leave-it');
  });

  test('more play never makes tight likelier', () => {
    for (let seed = 1; seed <= 6; seed++) {
      const shares = [0, 0.05, 0.15, 0.3, 0.45].map((play) =>
        shareOf(
          answered({ ...soundView([trialOf({ goingOn: ['gritty'], endPlay: mm(play) })]), seed }),
          'tight',
        ),
      );
      // Each answer draws its joints anew from the same numbers; thinning moves a share by less than 3 in 100.
      for (const [i, share] of shares.slice(1).entries())
        expect(share).toBeLessThanOrEqual((shares[i] as number) + 0.03);
      expect(shares.at(-1)).toBeLessThan(shares[0] as number);
    }
  });

  test('a missed step never makes its causes less likely', () => {
    const words: Readonly<Record<string, Parameters<typeof trialOf>[0]>> = {
      slip: { threads: ['thin-or-double-cut'] },
      tilt: { seated: 'open-one-side' },
      creep: { goingOn: ['drags-more-each-turn'] },
      lean: { goingOn: ['stiff-all-the-way'] },
      struck: { threads: ['shoulder-hit'] },
    };
    for (const [step, factors] of Object.entries(MISSED))
      for (const cause of Object.keys(factors)) {
        const said = words[cause];
        if (!said) continue;
        const [before, after] = [[], [step]].map((missed) =>
          shareOf(answered(soundView([trialOf(said)], { log: { missed } })), cause),
        ) as [number, number];
        expect(after, `${step}: ${cause}`).toBeGreaterThanOrEqual(before - 0.02);
      }
  });

  test('a nearer floor never makes bottoming less likely', () => {
    const shares = [2, 1, 0.3, 0, -0.3].map((gap) =>
      shareOf(answered(soundView([trialOf({ goingOn: ['stops-dead'], bottomGap: mm(gap) })])), 'bottoming'),
    );
    for (const [i, share] of shares.slice(1).entries())
      expect(share).toBeGreaterThanOrEqual((shares[i] as number) - 0.03);
    expect(shares.at(-1)).toBeGreaterThan(0.7);
  });

  test('lean does not come first where it would have to be more than 7 degrees', () => {
    // 0.75 mm too much room by the sizes, and stiff: no lean eats that, a wrong size may.
    const view = soundView([trialOf({ goingOn: ['stiff-all-the-way'] })]);
    const roomy = { ...view, joint: { ...view.joint, tenon: mm(view.joint.tenon - 0.75) } };
    expect(answered(roomy).causes[0]?.cause).not.toBe('lean');
  });

  test('a tapered bore eases the crests of the recess or trues the bore, a tapered tenon the tenon', () => {
    const tapered = (joint: Partial<DiagnosisView['joint']>) =>
      answered(
        soundView(
          [
            trialOf({
              goingOn: ['drags-more-each-turn'],
              marks: { on: 'crest', at: 'by-shoulder' },
              endPlay: mm(0.2),
            }),
          ],
          { joint },
        ),
      );
    const bore = tapered({ boreTaper: mm(0.9), tenonTaper: mm(0) });
    const tenon = tapered({ boreTaper: mm(0), tenonTaper: mm(0.9) });
    expect(bore.causes[0]?.cause).toBe('tapered-bore');
    expect(tenon.causes[0]?.cause).toBe('tapered-tenon');
    for (const move of [bore.move, bore.next])
      if (move?.kind === 'ease-crests') expect(move.part).toBe('recess');
      else expect(move?.kind).not.toBe('true-tenon');
    for (const move of [tenon.move, tenon.next])
      if (move?.kind === 'ease-crests') expect(move.part).toBe('tenon');
      else expect(move?.kind).not.toBe('true-bore');
  });

  test('a move that was made without success makes its cause less likely', () => {
    const trial = trialOf({ goingOn: ['gritty'] });
    const brushed = trialOf({
      goingOn: ['gritty'],
      moves: [{ kind: 'brush-out', part: null, by: null, size: null, depth: null }],
    });
    const before = shareOf(answered(soundView([trial])), 'fuzz');
    const after = shareOf(answered(soundView([brushed, trial])), 'fuzz');
    expect(before).toBeGreaterThan(0.3);
    expect(after).toBeLessThan(before);
  });

  test('a question asked already is not asked again, and two are enough', () => {
    const view = soundView();
    const first = answered(view).ask?.field;
    expect(first).toBeDefined();
    if (!first) return;
    expect(answered({ ...view, asked: [first] }).ask?.field).not.toBe(first);
    expect(answered({ ...view, asked: [first, 'seated'] }).ask).toBeNull();
  });

  test('a question says what each answer would lead to', () => {
    const { ask } = answered(soundView());
    expect(ask?.answers.length).toBeGreaterThan(0);
  });

  test('what speaks for the first cause was said', () => {
    const found = answered(
      soundView([trialOf({ seated: 'open-one-side' })], { log: { missed: ['seat-chuck'] } }),
    );
    expect(found.causes[0]?.cause).toBe('tilt');
    expect(found.causes[0]?.for).toContainEqual({ kind: 'missed', step: 'seat-chuck', ratio: 3 });
    expect(found.causes[0]?.for.some((each) => each.kind === 'said' && each.word === 'open-one-side')).toBe(
      true,
    );
  });

  test('where it binds is said for a screen to draw', () => {
    const bindsOf = (view: DiagnosisView) => answered(view).predicted.binds;
    const stiff = trialOf({ goingOn: ['stiff-all-the-way'], marks: { on: 'flank', at: 'all-along' } });
    const drags = trialOf({
      goingOn: ['drags-more-each-turn'],
      marks: { on: 'crest', at: 'by-shoulder' },
      endPlay: mm(0.2),
    });
    const loose = trialOf({ goingOn: ['rattles-sideways', 'end-play'] });
    expect(bindsOf(soundView([stiff]))).toEqual({ on: 'flank', late: false });
    expect(bindsOf(soundView([drags], { joint: { boreTaper: mm(1.3) } }))).toEqual({
      on: 'crest',
      late: true,
    });
    expect(bindsOf(soundView([loose]))).toBeNull();
  });

  test('a deepening carries its dial', () => {
    const tight: Partial<DiagnosisView['joint']> = { tenon: mm(soundView().joint.tenon + 0.4) };
    const found = answered(
      soundView(
        [
          trialOf({
            goingOn: ['stiff-all-the-way'],
            endPlay: mm(0),
            crestFlat: { part: 'tenon', width: mm(0.5) },
            marks: { on: 'flank', at: 'all-along' },
          }),
        ],
        { joint: tight },
      ),
    );
    expect(found.move?.kind).toBe('deepen');
    const by = found.move?.by as Millimetres;
    expect(found.move?.dial?.turns).toBeCloseTo(by / 2, 9);
  });
});

describe('words for numbers', () => {
  test('shares in tenths, confidence and chance by their thresholds', () => {
    expect([0.04, 0.55, 0.96].map(inTenths)).toEqual([0, 6, 10]);
    expect([0.6, 0.3, 0.29].map(confidenceOf)).toEqual(['likely', 'possibly', 'hard-to-say']);
    expect([0.7, 0.4, 0.39].map(chanceWordOf)).toEqual(['should-do-it', 'may-do-it', 'step-towards']);
  });

  test('a greater chance never turns into a smaller one, and never grows', () => {
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(chance, chance, (a, b) => {
        expect(calibrated(Math.min(a, b))).toBeLessThanOrEqual(calibrated(Math.max(a, b)));
        expect(calibrated(a)).toBeLessThanOrEqual(a);
      }),
    );
  });
});

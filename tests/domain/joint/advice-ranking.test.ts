import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { goingOn, marks, marksAt, seated, threads } from '../../../src/domain/box/trial-words.ts';
import { adviceFor, type Disagreement } from '../../../src/domain/joint/advice.ts';
import type { Cause } from '../../../src/domain/joint/advice-table.ts';
import { weighings } from '../../../src/domain/joint/cause-weights.ts';
import {
  type Evidence,
  evidenceOfField,
  findingsOf,
  type KnownJoint,
  type TrialFit,
} from '../../../src/domain/joint/trial-evidence.ts';
import { mm, turns } from '../../../src/domain/units/brands.ts';
import { pairOf, t } from './clearing-pair.ts';
import { nothingKnown, nothingTold } from './nothing-told.ts';
import { gotten, refusalOf } from './results.ts';

const asked = (told: Partial<TrialFit>, known: Partial<KnownJoint> = {}) =>
  [
    { ...nothingTold, ...told },
    { ...nothingKnown, ...known },
  ] as const;
const advise = (told: Partial<TrialFit>, known: Partial<KnownJoint> = {}) =>
  gotten(adviceFor(...asked(told, known)));

const weight = (cause: Cause, evidence: Evidence): number => weighings[cause].weights[evidence] ?? 0;
const scoreOf = (cause: Cause, evidence: ReadonlySet<Evidence>): number =>
  [...evidence].reduce((sum, each) => sum + weight(cause, each), weighings[cause].prior);

const anyTrial = fc.record({
  goingOn: fc.subarray([...goingOn]),
  seated: fc.option(fc.constantFrom(...seated)),
  threads: fc.subarray([...threads]),
  marks: fc.option(fc.record({ on: fc.constantFrom(...marks), at: fc.constantFrom(...marksAt) })),
  endPlay: fc.option(fc.double({ min: 0, max: 0.6, noNaN: true }).map(mm)),
  turnsOn: fc.option(fc.double({ min: 0, max: 3, noNaN: true }).map(turns)),
  afterFinish: fc.boolean(),
});

describe('causes by their weighed evidence', () => {
  test('ranked by prior and weights; named when one weight points and the sum is at least slight; in how sure a word', () => {
    const words = new Set<string>();
    fc.assert(
      fc.property(anyTrial, (trial) => {
        const { evidence } = gotten(findingsOf(...asked(trial)));
        const named = Object.fromEntries(advise(trial).causes.map((each) => [each.cause, each]));
        const scores = (Object.keys(named) as Cause[]).map((cause) => scoreOf(cause, evidence));
        // The order in which they are added may cost a sum its last bit.
        scores.slice(1).forEach((score, i) => {
          expect(score).toBeLessThanOrEqual((scores[i] ?? 0) + 1e-9);
        });
        for (const cause of Object.keys(weighings) as Cause[]) {
          const score = scoreOf(cause, evidence);
          const points = [...evidence].some((each) => weight(cause, each) >= 1);
          if ([0.6, 1.2, 2.5].some((edge) => Math.abs(score - edge) < 1e-9)) continue;
          expect(cause in named, cause).toBe(points && score > 0.6);
          const is = named[cause];
          if (!is) continue;
          expect(is.confidence).toBe(score > 2.5 ? 'likely' : score > 1.2 ? 'possible' : 'slight');
          words.add(is.confidence);
          const weights = (list: readonly Evidence[]) => list.map((each) => weight(cause, each));
          const [pro, contra] = [weights(is.for), weights(is.against)];
          expect(pro).toEqual(pro.filter((each) => each > 0).sort((a, b) => b - a));
          expect(contra).toEqual(contra.filter((each) => each < 0).sort((a, b) => a - b));
          expect(new Set([...is.for, ...is.against])).toEqual(
            new Set([...evidence].filter((each) => weight(cause, each) !== 0)),
          );
        }
      }),
    );
    expect([...words].sort()).toEqual(['likely', 'possible', 'slight']);
  });

  test('at the edges of the words: 2.5 is likely, 1.2 possible, 0.6 slight', () => {
    const confidence = (cause: Cause, told: Partial<TrialFit>) =>
      advise(told).causes.find((each) => each.cause === cause)?.confidence;
    // Stiff all the way: prior 0.5 and weight 2. Tight once a turn: weight 1.2 for a spindle that floats.
    expect(confidence('flanks-tight', { goingOn: ['stiff-all-the-way'] })).toBe('likely');
    expect(confidence('spindle-float', { goingOn: ['tight-once-a-turn'] })).toBe('possible');
  });

  test('acted on are the likeliest and those within one of it, three at most', () => {
    fc.assert(
      fc.property(anyTrial, (trial) => {
        const { evidence } = gotten(findingsOf(...asked(trial)));
        const { causes, remedies } = advise(trial);
        const best = causes[0] ? scoreOf(causes[0].cause, evidence) : 0;
        const close = causes
          .map(({ cause }) => cause)
          .filter((cause) => scoreOf(cause, evidence) >= best - 1 - 1e-9)
          .slice(0, 3);
        for (const { against } of remedies) for (const cause of against) expect(close).toContain(cause);
        if (causes.length === 0) expect(remedies.filter(({ against }) => against.length > 0)).toEqual([]);
      }),
    );
    const many = advise({ goingOn: ['stops-dead'], seated: 'gap-all-round' });
    expect(new Set(many.remedies.flatMap(({ against }) => against)).size).toBeGreaterThan(1);
  });
});

describe('what would tell the first two apart', () => {
  test('is still open, differs by at least one, the most telling first, and favours the one it weighs more for', () => {
    let told = 0;
    fc.assert(
      fc.property(anyTrial, (trial) => {
        const { open } = gotten(findingsOf(...asked(trial)));
        const { causes, tellApart, ask } = advise(trial);
        const [first, second] = causes.map(({ cause }) => cause);
        if (!first || !second) {
          expect(tellApart).toEqual([]);
          return;
        }
        const lead = (evidence: Evidence) => weight(first, evidence) - weight(second, evidence);
        const telling = open
          .flatMap((field) => evidenceOfField[field])
          .filter((each) => Math.abs(lead(each)) >= 1);
        expect(new Set(tellApart.map(({ evidence }) => evidence))).toEqual(new Set(telling));
        const leads = tellApart.map(({ evidence }) => Math.abs(lead(evidence)));
        expect(leads).toEqual([...leads].sort((a, b) => b - a));
        for (const { field, evidence, favours } of tellApart) {
          expect(evidenceOfField[field]).toContain(evidence);
          expect(favours).toBe(lead(evidence) > 0 ? first : second);
          told++;
        }
        expect(ask).toEqual([...new Set(tellApart.map(({ field }) => field))]);
      }),
    );
    expect(told).toBeGreaterThan(0);
    expect(advise({})).toMatchObject({ causes: [], tellApart: [], ask: [] });
  });
});

describe('what cannot all be true', () => {
  const flags = (told: Partial<TrialFit>, known: Partial<KnownJoint> = {}) =>
    advise(told, known).disagreements;
  const tight = { goingOn: ['stiff-all-the-way'] } as const;
  const open = { pair: pairOf(0.3) };

  test.each<[string, readonly Disagreement[], Partial<TrialFit>, Partial<KnownJoint>?]>([
    ['tight, and open by its sizes', ['tight-but-sizes-open'], tight, open],
    ['drags, and open by its sizes', ['tight-but-sizes-open'], { goingOn: ['drags-more-each-turn'] }, open],
    ['tight, and slack by its sizes', ['tight-but-sizes-open'], tight, { pair: pairOf(0.6) }],
    ['tight by its sizes too', [], tight, { pair: pairOf(0.1) }],
    ['tight, and open but for a tapered tenon', [], tight, { ...open, tenonTaper: mm(2) }],
    ['tight, and fuzz explains it', [], { ...tight, threads: ['furry'] }, open],
    ['tight, and grit explains it', [], { goingOn: ['stiff-all-the-way', 'gritty'] }, open],
    ['tight, and the finish explains it', [], { ...tight, afterFinish: true }, open],
    ['free, and tight by its sizes', ['loose-but-sizes-tight'], { goingOn: ['free'] }, { pair: pairOf(0) }],
    ['rattles, and right by its sizes', [], { goingOn: ['rattles-sideways'] }, open],
    ['tight, with much play', ['tight-but-play-large'], { ...tight, endPlay: mm(0.46 * t) }],
    ['tight, with the play it should have', [], { ...tight, endPlay: mm(0.44 * t) }],
    ['loose, without play', ['loose-but-no-play'], { goingOn: ['end-play'], endPlay: mm(0) }],
    ['loose, with play', [], { goingOn: ['end-play'], endPlay: mm(0.4 * t) }],
    ['gritty says nothing of the fit', [], { goingOn: ['gritty'], endPlay: mm(0) }],
    ['play and sizes 0.21 mm apart', ['sizes-and-play-differ'], { endPlay: mm(0.51 * t) }, open],
    ['play and sizes 0.19 mm apart', [], { endPlay: mm(0.49 * t) }, open],
    ['no play, and sizes below nothing: not apart', [], { endPlay: mm(0) }, { pair: pairOf(-0.5) }],
  ])('%s', (_, expected, told, known) => {
    expect(flags(told, known)).toEqual(expected);
  });

  test('sizes that are a party to it are not calculated from; where play and feeling differ they are', () => {
    const measureAgain = (told: Partial<TrialFit>, known: Partial<KnownJoint> = {}) =>
      advise(told, known).remedies.some(({ remedy }) => remedy === 'measure-again');
    expect(measureAgain(tight, open)).toBe(true);
    expect(measureAgain({ goingOn: ['free'] }, { pair: pairOf(0) })).toBe(true);
    expect(measureAgain({ ...tight, endPlay: mm(0.51 * t) }, open)).toBe(true);
    expect(measureAgain({ ...tight, endPlay: mm(0.46 * t) })).toBe(false);
    expect(measureAgain({ goingOn: ['end-play'], endPlay: mm(0) })).toBe(false);
  });
});

test('advice carries the target, the fit now, and what the remedies make of it; a bad number is refused', () => {
  const advice = advise({ goingOn: ['stiff-all-the-way'] }, { pair: pairOf(0) });
  expect(advice.target.wanted).toBe(0.3);
  expect(advice.before.clearance).toBeCloseTo(0, 9);
  expect(advice.after.clearance).toBeCloseTo(0.3, 9);
  expect(refusalOf(adviceFor(...asked({ endPlay: mm(-1) })))).toMatchObject({ field: 'endPlay' });
  const noPair = { ...pairOf(0), pitch: mm(Number.NaN) };
  expect(refusalOf(adviceFor(...asked({}, { pair: noPair })))).toMatchObject({ field: 'pitch' });
});

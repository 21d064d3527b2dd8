import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { goingOn, marks, marksAt, seated, threads } from '../../../src/domain/box/trial-words.ts';
import { type Advice, adviceFor } from '../../../src/domain/joint/advice.ts';
import { benchOrder, type Cause, remediesAgainst } from '../../../src/domain/joint/advice-table.ts';
import { weighings } from '../../../src/domain/joint/cause-weights.ts';
import { deepenForClearance } from '../../../src/domain/joint/correction.ts';
import {
  type Evidence,
  evidenceOfField,
  type KnownJoint,
  type TrialFit,
} from '../../../src/domain/joint/trial-evidence.ts';
import { mm, turns } from '../../../src/domain/units/brands.ts';
import { draws } from './draws.ts';
import { nothingKnown, nothingTold } from './nothing-told.ts';
import { numbersOf } from './numbers.ts';
import { gotten, refusalOf } from './results.ts';

const advise = (told: Partial<TrialFit>, known: Partial<KnownJoint> = {}): Advice =>
  gotten(adviceFor({ ...nothingTold, ...told }, { ...nothingKnown, ...known }));
const first = (advice: Advice): Cause | undefined => advice.causes[0]?.cause;
const named = (advice: Advice): readonly Cause[] => advice.causes.map(({ cause }) => cause);
const remedy = (advice: Advice, key: string) => advice.remedies.find((each) => each.remedy === key);

const cut = { depth: mm(1.633), tipFlat: mm(0.2) };
/** A pair whose flanks clear by 0.35 mm. */
const right = {
  pitch: mm(2.54),
  recess: { ...cut, diameter: mm(40) },
  tenon: { ...cut, diameter: mm(42.4747) },
};

describe('each symptom points to its mechanism', () => {
  test.each<[Cause, Partial<TrialFit>, Partial<KnownJoint>?]>([
    ['flanks-tight', { goingOn: ['stiff-all-the-way'], marks: { on: 'flank', at: 'all-along' } }],
    ['flanks-tight', { goingOn: ['drags-more-each-turn'] }],
    ['crests-rub', { goingOn: ['stiff-all-the-way'], marks: { on: 'crest', at: 'all-along' } }],
    ['tapered-bore', { goingOn: ['drags-more-each-turn'] }, { boreTaper: mm(0.2) }],
    ['tapered-tenon', { goingOn: ['drags-more-each-turn'] }, { tenonTaper: mm(0.2), boreTaper: mm(0) }],
    ['bottoming', { goingOn: ['stops-dead'], seated: 'gap-all-round' }, { bottomGap: mm(0.1) }],
    ['shallow-relief', { goingOn: ['stops-dead'], turnsOn: turns(2.8) }, { bottomGap: mm(2) }],
    ['last-thread-run-out', { goingOn: ['stops-dead'], seated: 'open-one-side', turnsOn: turns(2.8) }],
    ['dent-or-burr', { goingOn: ['tight-once-a-turn'] }],
    ['eccentric', { goingOn: ['tight-once-a-turn'], seated: 'proud-outside' }],
    ['oval-wood', { goingOn: ['tight-twice-a-turn'] }],
    ['wall-squeezed', { goingOn: ['tight-four-times-a-turn'] }],
    ['slipped', { threads: ['thin-or-double-cut'] }],
    ['rechuck-tilt', { seated: 'open-one-side' }],
    ['shoulder-not-flat', { seated: 'rocks' }],
    ['shoulder-struck', { threads: ['shoulder-hit'] }],
    ['fuzz-or-chips', { goingOn: ['gritty'], threads: ['furry'] }],
    ['finish-film', { goingOn: ['stiff-all-the-way'], afterFinish: true }, { pair: right }],
    ['flanks-loose', { goingOn: ['rattles-sideways', 'end-play'] }],
    ['low-engagement', { goingOn: ['jumps-a-thread'] }],
    ['no-lead-in', { goingOn: ['will-not-start'] }],
    ['cross-started', { threads: ['cross-threaded'] }],
    ['weak-wood', { threads: ['torn'] }],
    ['hot-cut', { threads: ['burnt'] }],
  ])('%s', (cause, told, known) => {
    expect(first(advise(told, known))).toBe(cause);
  });

  test('every cause has a way to be named, and a remedy', () => {
    for (const cause of Object.keys(weighings) as Cause[]) {
      expect(Math.max(...Object.values(weighings[cause].weights)), cause).toBeGreaterThanOrEqual(1);
      expect(remediesAgainst[cause], cause).not.toEqual([]);
    }
  });

  test('every word of a trial fit weighs somewhere, but for those that say all is well', () => {
    const words: readonly Evidence[] = [
      ...goingOn,
      ...seated,
      ...threads,
      ...marks.map((on) => `marks-on-${on}` as const),
      ...marksAt.map((at) => `marks-at-${at}` as const),
    ];
    const weighed = new Set(Object.values(weighings).flatMap(({ weights }) => Object.keys(weights)));
    expect(words.filter((word) => !weighed.has(word))).toEqual(['sound']);
    const fields = Object.values(evidenceOfField).flat();
    expect(fields.filter((each) => !weighed.has(each))).toEqual([]);
  });

  test('nothing told, no cause named', () => {
    const advice = advise({ threads: ['sound'], seated: 'flush' });
    expect(advice.causes).toEqual([]);
    expect(advice.remedies).toEqual([]);
  });
});

describe('what geometry cannot do is not said', () => {
  test('lean is never blamed for a lid that drags more each turn', () => {
    fc.assert(
      fc.property(
        fc.subarray([...goingOn]),
        fc.option(fc.constantFrom(...seated)),
        fc.subarray([...threads]),
        fc.option(fc.record({ on: fc.constantFrom(...marks), at: fc.constantFrom(...marksAt) })),
        fc.constantFrom(null, 0, 0.2),
        (words, sits, state, rubs, taper) => {
          const advice = advise(
            {
              goingOn: [...new Set([...words, 'drags-more-each-turn' as const])],
              seated: sits,
              threads: state,
              marks: rubs,
            },
            { pair: right, boreTaper: taper === null ? null : mm(taper) },
          );
          expect(named(advice)).not.toContain('lean-mismatch');
        },
      ),
    );
  });

  test('a parallel bore and tenon clear taper, and leave give and creep', () => {
    const advice = advise({ goingOn: ['drags-more-each-turn'] }, { boreTaper: mm(0), tenonTaper: mm(0) });
    expect(named(advice)).not.toContain('tapered-bore');
    expect(named(advice)).not.toContain('tapered-tenon');
    expect(named(advice).indexOf('gives-under-load')).toBeLessThan(named(advice).indexOf('creep'));
    expect(named(advice)).toContain('creep');
  });
});

describe('remedies', () => {
  test('come in the order of the bench', () => {
    const advice = advise({ goingOn: ['stiff-all-the-way'] }, { pair: right });
    const order = advice.remedies.map((each) => benchOrder.indexOf(each.remedy));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    const keys = advise({
      goingOn: ['stiff-all-the-way'],
      marks: { on: 'flank', at: 'all-along' },
    }).remedies.map((each) => each.remedy);
    expect(keys).toEqual(['brush-out', 'on-and-off-by-hand', 'wax', 'same-setting-again', 'deepen']);
  });

  test('deepen the tenon by half of what the clearance lacks, on the dial', () => {
    const tight = { ...right, tenon: { ...right.tenon, depth: mm(right.tenon.depth - 0.15) } };
    const advice = advise(
      { goingOn: ['stiff-all-the-way'], marks: { on: 'flank', at: 'all-along' } },
      { pair: tight, dial: { travelPerTurn: mm(1.27), marksPerTurn: 50 } },
    );
    const [amount] = remedy(advice, 'deepen')?.amounts ?? [];
    const exact = gotten(deepenForClearance(advice.before.clearance ?? mm(9), mm(0.3)));
    expect(amount).toMatchObject({ part: 'tenon', basis: 'sizes' });
    expect(Math.abs((amount?.by ?? 0) - exact)).toBeLessThanOrEqual(0.025 + 1e-9);
    expect(amount?.dial?.marks).toBe(Math.round((2 * 50 * (amount?.by ?? 0)) / 1.27) / 2);
    expect(advice.before.clearance).toBeCloseTo(0.05, 2);
    expect(advice.after.clearance).toBeCloseTo((advice.before.clearance ?? 0) + 2 * (amount?.by ?? 0), 9);
    expect(advice.after.recessCrestGap).toBeGreaterThan(
      advice.before.recessCrestGap ?? Number.POSITIVE_INFINITY,
    );
    expect(advice.after.tenonCrestGap).toBe(advice.before.tenonCrestGap);
  });

  test('2 thou steps for who thinks in inches; the recess when it is the part on the jig', () => {
    const advice = advise(
      { goingOn: ['stiff-all-the-way'], endPlay: mm(0.03) },
      { unit: 'inch', onJig: 'recess' },
    );
    const [amount] = remedy(advice, 'deepen')?.amounts ?? [];
    expect(amount).toMatchObject({ part: 'recess', basis: 'play' });
    expect(((amount?.by ?? 0) / 0.0508) % 1).toBeCloseTo(0, 9);
  });

  test('with nothing measured, one step by feel', () => {
    const advice = advise({ goingOn: ['stiff-all-the-way'] });
    expect(remedy(advice, 'deepen')?.amounts).toEqual([
      { part: 'tenon', by: 0.05, basis: 'feel', atLeast: false, dial: null },
    ]);
    expect(advice.before.clearance).toBeNull();
  });

  test('no play felt and nothing measured: what it needs at least, never more than the wanted clearance', () => {
    const advice = advise({ goingOn: ['stiff-all-the-way'], endPlay: mm(0) });
    expect(remedy(advice, 'deepen')?.amounts).toMatchObject([{ by: 0.15, basis: 'play', atLeast: true }]);
  });

  test('two tries tell how much more', () => {
    const tries = { deepened: mm(0.06), turnsBefore: turns(1), turnsAfter: turns(2.5) };
    const advice = advise({ goingOn: ['stiff-all-the-way'] }, { tries });
    const [amount] = remedy(advice, 'deepen')?.amounts ?? [];
    expect(amount).toMatchObject({ basis: 'two-tries', atLeast: false });
    expect(amount?.by).toBeCloseTo(0.2, 9);
  });

  test('crest rub is eased at the crests, and the flanks are left alone', () => {
    const rubs = { ...right, tenon: { ...right.tenon, diameter: mm(43.3), depth: mm(1.633 + 0.41265) } };
    const advice = advise(
      { goingOn: ['stiff-all-the-way'], marks: { on: 'crest', at: 'all-along' } },
      { pair: rubs },
    );
    expect(first(advice)).toBe('crests-rub');
    expect(remedy(advice, 'ease-crests')?.amounts).toMatchObject([{ part: 'tenon', basis: 'sizes' }]);
    expect(advice.after.tenonCrestGap).toBeGreaterThanOrEqual(advice.target.crestGap);
    expect(advice.after.clearance).toBe(advice.before.clearance);
  });

  test('a loose pair is not cut deeper', () => {
    const advice = advise({ goingOn: ['rattles-sideways', 'end-play'], endPlay: mm(0.4) }, { pair: right });
    expect(remedy(advice, 'deepen')).toBeUndefined();
    expect(remedy(advice, 'new-tenon')).toBeDefined();
  });
});

describe('it says what it does not know', () => {
  test('what would tell two causes apart, and which of them it would favour', () => {
    const advice = advise({ goingOn: ['drags-more-each-turn'] });
    const [one, two] = advice.causes;
    expect(advice.tellApart.length).toBeGreaterThan(0);
    for (const { favours } of advice.tellApart) expect([one?.cause, two?.cause]).toContain(favours);
    expect(advice.ask).toContain('bore-ends');
    const answered = advise({ goingOn: ['drags-more-each-turn'] }, { boreTaper: mm(0) });
    expect(answered.ask).not.toContain('bore-ends');
  });

  test('numbers and symptoms that disagree are flagged, and the sizes not calculated from', () => {
    const advice = advise({ goingOn: ['stiff-all-the-way'] }, { pair: right });
    expect(advice.disagreements).toContain('tight-but-sizes-open');
    expect(remedy(advice, 'measure-again')).toBeDefined();
    for (const each of advice.remedies)
      expect(each.amounts.filter(({ basis }) => basis === 'sizes')).toEqual([]);
  });

  test.each<[string, Partial<TrialFit>, Partial<KnownJoint>]>([
    ['tight-but-play-large', { goingOn: ['stiff-all-the-way'], endPlay: mm(0.5) }, {}],
    ['loose-but-no-play', { goingOn: ['rattles-sideways'], endPlay: mm(0) }, {}],
    [
      'loose-but-sizes-tight',
      { goingOn: ['rattles-sideways'] },
      { pair: { ...right, tenon: { ...right.tenon, diameter: mm(42.8) } } },
    ],
    ['sizes-and-play-differ', { goingOn: ['gritty'], endPlay: mm(0.02) }, { pair: right }],
  ])('%s', (flag, told, known) => {
    expect(advise(told, known).disagreements).toContain(flag);
  });

  test('no flag when all agree', () => {
    const tight = { ...right, tenon: { ...right.tenon, diameter: mm(42.8) } };
    expect(advise({ goingOn: ['stiff-all-the-way'] }, { pair: tight }).disagreements).toEqual([]);
  });
});

describe('degenerate input', () => {
  test.each<[string, Partial<TrialFit>, Partial<KnownJoint>]>([
    ['endPlay', { endPlay: mm(Number.NaN) }, {}],
    ['turnsOn', { turnsOn: turns(-1) }, {}],
    ['wantedClearance', {}, { wantedClearance: mm(0) }],
    [
      'turnsBefore',
      {},
      { tries: { deepened: mm(0.1), turnsBefore: turns(Number.NaN), turnsAfter: turns(2) } },
    ],
    ['boreTaper', {}, { boreTaper: mm(Number.POSITIVE_INFINITY) }],
    ['travelPerTurn', { goingOn: ['stiff-all-the-way'] }, { dial: { travelPerTurn: mm(0) } }],
  ])('%s is refused', (field, told, known) => {
    const refusal = refusalOf(adviceFor({ ...nothingTold, ...told }, { ...nothingKnown, ...known }));
    expect(refusal).toMatchObject({ field });
  });

  test('no NaN comes out, whatever goes in', () => {
    const any = fc.oneof(fc.double(), fc.double({ min: -1, max: 60, noNaN: true })).map(mm);
    const small = fc.oneof({ weight: 4, arbitrary: fc.double({ min: 0, max: 2, noNaN: true }).map(mm) }, any);
    const piece = fc.record({
      diameter: fc.double({ min: 20, max: 60, noNaN: true }).map(mm),
      depth: small,
      tipFlat: small,
    });
    const told = fc.record({
      goingOn: fc.subarray([...goingOn]),
      seated: fc.option(fc.constantFrom(...seated)),
      threads: fc.subarray([...threads]),
      marks: fc.option(fc.record({ on: fc.constantFrom(...marks), at: fc.constantFrom(...marksAt) })),
      endPlay: fc.option(small),
      turnsOn: fc.option(fc.oneof(fc.double({ min: 0, max: 4, noNaN: true }), fc.double()).map(turns)),
      afterFinish: fc.boolean(),
    });
    const known = fc.record({
      pair: fc.option(
        fc.record({ pitch: fc.constantFrom(mm(2.54), mm(Number.NaN)), recess: piece, tenon: piece }),
      ),
      wantedClearance: fc.oneof({ weight: 9, arbitrary: fc.constant(mm(0.3)) }, any),
      threads: fc.oneof({ weight: 9, arbitrary: fc.constant(3) }, fc.double()),
      boreTaper: fc.option(small),
      outOfRound: fc.option(small),
      tenonTaper: fc.option(small),
      bottomGap: fc.option(small),
      film: fc.option(small),
      wall: fc.option(fc.record({ wall: small, least: small })),
      tries: fc.option(
        fc.record({ deepened: small, turnsBefore: small, turnsAfter: small }),
      ) as fc.Arbitrary<never>,
      onJig: fc.constantFrom(null, 'tenon' as const, 'recess' as const),
      dial: fc.option(fc.record({ travelPerTurn: small })),
      unit: fc.constantFrom('metric' as const, 'inch' as const),
    });
    let answered = 0;
    fc.assert(
      fc.property(told, known, (trial, joint) => {
        const advice = adviceFor(trial, joint);
        if (advice.ok) answered++;
        expect(numbersOf(advice).filter((value) => !Number.isFinite(value))).toEqual([]);
      }),
      { numRuns: 20 * draws },
    );
    expect(answered).toBeGreaterThan(draws);
  }, 60_000);
});

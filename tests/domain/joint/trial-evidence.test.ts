import { describe, expect, test } from 'vitest';
import { type Fit, fitOf } from '../../../src/domain/joint/fit.ts';
import {
  type Evidence,
  type Field,
  findingsOf,
  type KnownJoint,
  type Measured,
  type TrialFit,
} from '../../../src/domain/joint/trial-evidence.ts';
import { mm, turns } from '../../../src/domain/units/brands.ts';
import { cut, pairOf, t } from './clearing-pair.ts';
import { nothingKnown, nothingTold } from './nothing-told.ts';
import { type At, testRefusedByName } from './refused-by-name.ts';
import { gotten, refusalOf } from './results.ts';

const found = (told: Partial<TrialFit>, known: Partial<KnownJoint> = {}) =>
  gotten(findingsOf({ ...nothingTold, ...told }, { ...nothingKnown, ...known }));
const evidence = (told: Partial<TrialFit>, known: Partial<KnownJoint> = {}): readonly Evidence[] => [
  ...found(told, known).evidence,
];

describe('what is told is evidence in its own words', () => {
  test('taps, marks and the finish', () => {
    expect(
      evidence({
        goingOn: ['gritty', 'stops-dead'],
        seated: 'rocks',
        threads: ['furry'],
        marks: { on: 'flank', at: 'start' },
        afterFinish: true,
      }),
    ).toEqual(['gritty', 'stops-dead', 'rocks', 'furry', 'marks-on-flank', 'marks-at-start', 'after-finish']);
    expect(evidence({})).toEqual([]);
  });
});

describe('what is measured becomes a word: wanted 0.3 mm, so right from 0.15 to 0.45', () => {
  test.each<[number, Measured]>([
    [0.14, 'sizes-flanks-tight'],
    [0.16, 'sizes-flanks-right'],
    [0.44, 'sizes-flanks-right'],
    [0.46, 'sizes-flanks-loose'],
  ])('sizes with %s mm of clearance: %s', (clearance, word) => {
    expect(evidence({}, { pair: pairOf(clearance) })).toEqual([word, 'sizes-crests-clear']);
  });

  test.each<[number, Measured]>([
    [0.14, 'play-none'],
    [0.16, 'play-right'],
    [0.44, 'play-right'],
    [0.46, 'play-large'],
  ])('end play of %s mm of clearance: %s', (clearance, word) => {
    expect(evidence({ endPlay: mm(clearance * t) })).toEqual([word]);
  });

  test('crests cross under 0.02 mm of gap on either part; half of a taper is taken off', () => {
    const pair = pairOf(0.3);
    const { tenonCrestGap, recessCrestGap } = gotten(fitOf(pair));
    const crests = (known: Partial<KnownJoint>) => evidence({}, { pair, ...known })[1];
    expect(crests({ tenonTaper: mm(2 * (tenonCrestGap - 0.021)) })).toBe('sizes-crests-clear');
    expect(crests({ tenonTaper: mm(2 * (tenonCrestGap - 0.019)) })).toBe('sizes-crests-cross');
    expect(crests({ boreTaper: mm(2 * (recessCrestGap - 0.021)) })).toBe('sizes-crests-clear');
    expect(crests({ boreTaper: mm(-2 * (recessCrestGap - 0.019)) })).toBe('sizes-crests-cross');
  });

  test('under 45 per cent of 0.75 H threads hardly engage', () => {
    const at = (height: number) => {
      const pair = { ...pairOf(0.3), tenon: { ...cut, diameter: mm(40 + 2 * height) } };
      return evidence({}, { pair }).includes('sizes-engagement-low');
    };
    const full = (0.75 * 2.54) / (2 * t);
    expect(at(0.44 * full)).toBe(true);
    expect(at(0.46 * full)).toBe(false);
  });

  test.each<[Partial<KnownJoint>, Measured]>([
    [{ boreTaper: mm(0.07) }, 'bore-narrows'],
    [{ boreTaper: mm(0.06) }, 'bore-parallel'],
    [{ boreTaper: mm(-0.06) }, 'bore-parallel'],
    [{ boreTaper: mm(-0.07) }, 'bore-opens'],
    [{ tenonTaper: mm(0.07) }, 'tenon-thick-at-shoulder'],
    [{ tenonTaper: mm(0.05) }, 'tenon-parallel'],
    [{ tenonTaper: mm(-0.07) }, 'tenon-thin-at-shoulder'],
    [{ outOfRound: mm(0.11) }, 'bore-oval'],
    [{ outOfRound: mm(0.1) }, 'bore-round'],
    [{ bottomGap: mm(0.29) }, 'floor-near'],
    [{ bottomGap: mm(0.3) }, 'floor-clear'],
    [{ wall: { wall: mm(2.9), least: mm(3) } }, 'wall-thin'],
    [{ wall: { wall: mm(3), least: mm(3) } }, 'wall-stout'],
  ])('%o: %s', (known, word) => {
    expect(evidence({}, known)).toEqual([word]);
  });

  test.each<[number, Measured]>([
    [0.9, 'stops-early'],
    [1, 'stops-midway'],
    [2.25, 'stops-midway'],
    [2.3, 'stops-late'],
  ])('of three threads, after %s turns: %s', (count, word) => {
    expect(evidence({ turnsOn: turns(count) })).toEqual([word]);
  });

  test('a deepening that gained no turn', () => {
    const tries = (turnsAfter: number) => ({
      tries: { deepened: mm(0.05), turnsBefore: turns(1), turnsAfter: turns(turnsAfter) },
    });
    expect(evidence({}, tries(1))).toEqual(['deepening-gained-nothing']);
    expect(evidence({}, tries(1.5))).toEqual([]);
  });
});

describe('the clearance that the rest is calculated from', () => {
  const clearance = (told: Partial<TrialFit>, known: Partial<KnownJoint>) => {
    const { best, clearanceBySizes, clearanceByPlay } = found(told, known);
    return { best, clearanceBySizes, clearanceByPlay };
  };
  const near = (value: number) => expect.closeTo(value, 9);
  const pair = pairOf(0.2);

  test('sizes, until play is felt', () => {
    expect(clearance({}, { pair })).toEqual({
      best: { clearance: near(0.2), basis: 'sizes' },
      clearanceBySizes: near(0.2),
      clearanceByPlay: null,
    });
    expect(clearance({ endPlay: mm(0.1) }, { pair }).best).toEqual({
      clearance: near(0.1 / t),
      basis: 'play',
    });
    expect(clearance({}, {}).best).toBeNull();
  });

  test('play too small to feel says that there is none; how far below nothing the sizes know', () => {
    expect(clearance({ endPlay: mm(0.02) }, { pair: pairOf(-0.1) }).best).toEqual({
      clearance: near(-0.1),
      basis: 'sizes',
    });
    expect(clearance({ endPlay: mm(0.02) }, { pair }).best).toEqual({
      clearance: near(0.02 / t),
      basis: 'no-play',
    });
    expect(clearance({ endPlay: mm(0.02) }, {}).best?.basis).toBe('no-play');
    expect(clearance({ endPlay: mm(0.03) }, { pair: pairOf(-0.1) }).best?.basis).toBe('play');
  });

  test('a finish takes eight times its thickness off the sizes, and hides them when nobody knows it', () => {
    expect(clearance({ afterFinish: true }, { pair, film: mm(0.02) }).clearanceBySizes).toEqual(near(0.04));
    expect(clearance({ afterFinish: true }, { pair, film: null }).best).toBeNull();
    expect(clearance({ afterFinish: true }, { pair }).clearanceBySizes).toBeNull();
    expect(clearance({}, { pair, film: mm(0.02) }).clearanceBySizes).toEqual(near(0.2));
  });

  test('the state of the fit: no play below nothing, crest gaps where they are tightest', () => {
    const fit: Fit = gotten(fitOf(pair));
    const { state } = found({}, { pair, boreTaper: mm(0.1), tenonTaper: mm(-0.06), bottomGap: mm(1) });
    expect(state).toEqual({
      clearance: near(0.2),
      endPlay: near(0.2 * t),
      tenonCrestGap: near(fit.tenonCrestGap - 0.03),
      recessCrestGap: near(fit.recessCrestGap - 0.05),
      bottomGap: 1,
    });
    expect(found({}, { pair: pairOf(-0.1) }).state.endPlay).toBe(0);
    expect(found({}, {}).state).toEqual({
      clearance: null,
      endPlay: null,
      tenonCrestGap: null,
      recessCrestGap: null,
      bottomGap: null,
    });
  });
});

test('what is not told or measured yet is open, in the order in which it is asked', () => {
  const all: readonly Field[] = [
    'marks',
    'seated',
    'end-play',
    'turns-on',
    'sizes',
    'bore-ends',
    'bore-across',
    'tenon-ends',
    'bottom-gap',
    'wall',
  ];
  expect(found({}).open).toEqual(all);
  const told: readonly (readonly [Field, Partial<TrialFit>, Partial<KnownJoint>?])[] = [
    ['marks', { marks: { on: 'crest', at: 'start' } }],
    ['seated', { seated: 'flush' }],
    ['end-play', { endPlay: mm(0) }],
    ['turns-on', { turnsOn: turns(0) }],
    ['sizes', {}, { pair: pairOf(0.2) }],
    ['bore-ends', {}, { boreTaper: mm(0) }],
    ['bore-across', {}, { outOfRound: mm(0) }],
    ['tenon-ends', {}, { tenonTaper: mm(0) }],
    ['bottom-gap', {}, { bottomGap: mm(0) }],
    ['wall', {}, { wall: { wall: mm(5), least: mm(3) } }],
  ];
  for (const [field, trial, known] of told)
    expect(found(trial, known).open).toEqual(all.filter((each) => each !== field));
});

describe('a number of a trial that is out of range or none is refused by name', () => {
  test('threads are counted in turns', () => {
    expect(refusalOf(findingsOf(nothingTold, { ...nothingKnown, threads: 60 }))).toMatchObject({
      field: 'threads',
      quantity: 'turns',
    });
  });

  const known = (at: At): KnownJoint => ({
    ...nothingKnown,
    wantedClearance: mm(at('wantedClearance')),
    threads: at('threads'),
    boreTaper: mm(at('boreTaper')),
    outOfRound: mm(at('outOfRound')),
    tenonTaper: mm(at('tenonTaper')),
    bottomGap: mm(at('bottomGap')),
    film: mm(at('film')),
    wall: { wall: mm(at('wall')), least: mm(at('leastWall')) },
    tries: {
      deepened: mm(at('deepened')),
      turnsBefore: turns(at('turnsBefore')),
      turnsAfter: turns(at('turnsAfter')),
    },
  });
  testRefusedByName([
    {
      name: 'findingsOf',
      good: {
        endPlay: 0.1,
        turnsOn: 2,
        wantedClearance: 0.3,
        threads: 3,
        boreTaper: 0.1,
        outOfRound: 0.1,
        tenonTaper: 0.1,
        bottomGap: 1,
        film: 0.02,
        wall: 5,
        leastWall: 3,
        deepened: 0.05,
        turnsBefore: 1,
        turnsAfter: 2,
      },
      bad: { boreTaper: 6, tenonTaper: -6, bottomGap: -21, wall: -51 },
      ask: (at) =>
        findingsOf({ ...nothingTold, endPlay: mm(at('endPlay')), turnsOn: turns(at('turnsOn')) }, known(at)),
    },
  ]);
});

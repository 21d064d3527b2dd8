import { describe, expect, test } from 'vitest';
import type { MoveKind } from '../../../src/domain/diagnosis/view.ts';
import { seededRandom } from '../../../src/domain/random.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import type { AdvisedMove } from './adviser.ts';
import { faultsOf, feelOf, isInBand, isSound } from './feel.ts';
import { atMost, isAbove, isBelow } from './limits.ts';
import { make } from './moves.ts';
import { play } from './play.ts';
import { seeing } from './seeing-adviser.ts';
import { alwaysDeepens, plainMove, silent, waxOnly } from './simple-advisers.ts';
import { playAll, share } from './tally.ts';
import { answer, tell } from './telling.ts';
import { type TrueCause, trueCauses } from './truth.ts';
import { EVERYDAY, WORSE } from './turner.ts';
import { copyOf, idealFit, type Piece, SLOPE, type Workpiece } from './workpiece.ts';
import { type Bench, boxOf } from './workshop.ts';

const faultless = (diameter: number, depth: number, tip: number): Piece => ({
  diameter,
  depth,
  tip,
  shift: 0,
  raised: 0,
  taper: 0,
  creep: 0,
  spring: 0,
  slip: 0,
  offCentre: 0,
  tilt: 0,
  lean: 0,
  wobble: 0,
  fuzz: 0,
  film: 0,
  oval: { amplitude: 0, phase: 0 },
  pinched: {
    two: { amplitude: 0, phase: 0 },
    three: { amplitude: 0, phase: 0 },
    four: { amplitude: 0, phase: 0 },
  },
  weak: 0,
  burnt: false,
});

const WANTED = 0.3;
const DEPTH = (2.54 - 0.2 - 0.45) / (2 * SLOPE);
const TENON = 50 + (2.54 - 0.9) / SLOPE - WANTED;

/** A joint of 50 mm, ten to the inch, in which nothing went wrong. */
const sound = (): Workpiece => ({
  pitch: 2.54,
  turns: 2.5,
  shoulder: 60,
  drag: 1,
  recess: faultless(50, DEPTH, 0.2),
  tenon: faultless(TENON, DEPTH, 0.2),
  floor: 0.5,
  reliefShort: 0,
  lastThread: 0,
  hump: 0,
  struck: 0,
  noLeadIn: 0,
  crossed: 0,
  chips: 0,
  dent: 0,
  meets: 0,
  meant: {
    recess: { diameter: 50, depth: DEPTH },
    tenon: { diameter: TENON, depth: DEPTH },
    tip: 0.2,
  },
});

const HAND = { low: 0.12, top: 0.48, dislikes: 0.015, strength: 0.35, jumpsBelow: 42 };

/** The same joint on the bench of a plain turner, in a record that holds its true sizes. */
const benchWith = (upset: (work: Workpiece) => void): Bench => {
  const drawn = boxOf(1, 0, EVERYDAY);
  const work = sound();
  upset(work);
  return {
    ...drawn,
    work,
    turner: { ...drawn.turner, hand: HAND },
    record: {
      ...drawn.record,
      joint: {
        ...drawn.record.joint,
        wanted: mm(WANTED),
        depth: { recess: mm(DEPTH), tenon: mm(DEPTH) },
        tenon: mm(TENON),
      },
      bench: { ...drawn.record.bench, onJig: 'tenon', holds: true, finished: false },
    },
  };
};

const rightOf = (bench: Bench, times: number): number =>
  Array.from({ length: times }, (_, i) => tell(bench, seededRandom(5, i))).filter(({ right }) => right)
    .length;

describe('the joint of this workshop', () => {
  test('without a fault it is sound, in the band, and its play is what the ideal fit gives', () => {
    const feel = feelOf(sound(), HAND);
    expect(isSound(feel)).toBe(true);
    expect(isInBand(feel, HAND)).toBe(true);
    expect(feel.home).toBe(true);
    expect(feel.free).toBeCloseTo(WANTED, 9);
    expect(feel.endPlay).toBeCloseTo(idealFit(sound()).endPlay, 9);
  });

  test('a deeper groove gives room of twice its depth, and takes its share of the crest', () => {
    const work = sound();
    work.tenon.depth += 0.1;
    const [before, after] = [feelOf(sound(), HAND), feelOf(work, HAND)];
    expect(after.free - before.free).toBeCloseTo(0.2, 9);
    expect(before.crest.tenon - after.crest.tenon).toBeCloseTo(0.2 * SLOPE, 9);
  });

  test('the less room, the more drag, until the hand gives up before the lid is home', () => {
    const feels = [0, 0.15, 0.3, 0.6].map((less) => {
      const work = sound();
      work.tenon.depth -= less / 2;
      return feelOf(work, HAND);
    });
    const stiff = feels.map(({ severity }) => severity.stiff);
    expect(stiff).toEqual([...stiff].sort((a, b) => a - b));
    expect(feels.map(({ home }) => home)).toEqual([true, true, true, false]);
  });

  test('two oval pieces bind twice a turn; an oval lid on a round tenon is only stiff', () => {
    const two = sound();
    two.recess.oval.amplitude = 0.1;
    two.tenon.oval.amplitude = 0.1;
    const { severity } = feelOf(two, HAND);
    expect(severity.twice).toBeGreaterThan(1);
    expect(severity.twice).toBeGreaterThan(Math.max(severity.once, severity.four));
    const one = sound();
    one.recess.oval.amplitude = 0.2;
    expect(feelOf(one, HAND).severity.twice).toBeLessThan(feelOf(one, HAND).severity.stiff);
  });

  test('creep and a tapered bore are felt late; a lean is felt all the way and leaves no taper', () => {
    const late = (upset: (work: Workpiece) => void) => {
      const work = sound();
      upset(work);
      const { severity } = feelOf(work, HAND);
      return severity.late - severity.stiff;
    };
    expect(
      late((work) => {
        work.tenon.creep = 0.15;
      }),
    ).toBeGreaterThan(0);
    expect(
      late((work) => {
        work.recess.taper = 1.1;
      }),
    ).toBeGreaterThan(0);
    expect(
      late((work) => {
        work.tenon.lean = 6;
      }),
    ).toBeLessThan(0);
  });

  test('crests turned down leave the flanks where they are', () => {
    const bench = benchWith(() => {});
    const eased = make(
      bench,
      plainMove('ease-crests', { part: 'tenon', by: mm(0.1) }),
      seededRandom(1),
    ).bench;
    expect(idealFit(eased.work).clearance).toBeCloseTo(WANTED, 9);
    expect(feelOf(eased.work, HAND).crest.tenon).toBeGreaterThan(feelOf(bench.work, HAND).crest.tenon);
    expect(feelOf(eased.work, HAND).engagement).toBeLessThan(feelOf(bench.work, HAND).engagement);
  });
});

const UPSET: readonly (readonly [TrueCause, (work: Workpiece) => void])[] = [
  ['too-tight', ({ tenon }) => Object.assign(tenon, { diameter: tenon.diameter + 0.4 })],
  ['too-loose', ({ recess }) => Object.assign(recess, { depth: recess.depth + 0.25 })],
  ['gave-under-load', ({ tenon }) => Object.assign(tenon, { spring: 0.15 })],
  ['crests-rub', ({ tenon }) => Object.assign(tenon, { raised: 0.45 })],
  ['tapered-bore', ({ recess }) => Object.assign(recess, { taper: 1.2 })],
  ['tapered-tenon', ({ tenon }) => Object.assign(tenon, { taper: 1.2 })],
  ['lean', ({ tenon }) => Object.assign(tenon, { lean: 6 })],
  ['creep', ({ tenon }) => Object.assign(tenon, { creep: 0.2 })],
  ['slipped', ({ tenon }) => Object.assign(tenon, { slip: 0.45 })],
  ['tilted', ({ tenon }) => Object.assign(tenon, { tilt: 0.6 })],
  ['off-centre', ({ tenon }) => Object.assign(tenon, { offCentre: 0.6 })],
  ['spindle-float', ({ tenon }) => Object.assign(tenon, { wobble: 0.2 })],
  ['oval', ({ tenon, recess }) => [tenon, recess].map(({ oval }) => Object.assign(oval, { amplitude: 0.1 }))],
  ['pinched', ({ tenon }) => Object.assign(tenon.pinched.four, { amplitude: 0.2 })],
  ['bottoms', (work) => Object.assign(work, { floor: -0.3 })],
  ['relief-short', (work) => Object.assign(work, { reliefShort: 0.3 })],
  ['last-thread', (work) => Object.assign(work, { lastThread: 0.3 })],
  ['shoulder-hump', (work) => Object.assign(work, { hump: 0.2 })],
  ['shoulder-struck', (work) => Object.assign(work, { struck: 0.3 })],
  ['fuzz-or-chips', (work) => Object.assign(work, { chips: 1.2 })],
  ['dent', (work) => Object.assign(work, { dent: 0.15 })],
  ['film', ({ tenon, recess }) => [tenon, recess].map((piece) => Object.assign(piece, { film: 0.04 }))],
  ['no-lead-in', (work) => Object.assign(work, { noLeadIn: 0.4 })],
  ['cross-started', (work) => Object.assign(work, { crossed: 1 })],
  ['weak-wood', ({ tenon }) => Object.assign(tenon, { weak: 0.9 })],
  [
    'low-engagement',
    ({ tenon, recess }) => {
      Object.assign(tenon, { diameter: tenon.diameter - 0.7, depth: tenon.depth - 0.35 });
      Object.assign(recess, { diameter: recess.diameter + 0.7, depth: recess.depth - 0.35 });
    },
  ],
];

describe('truth by taking away', () => {
  test.each(UPSET)('%s alone is the first true cause', (cause, upset) => {
    const work = sound();
    upset(work);
    expect(faultsOf(feelOf(work, HAND))).toBeGreaterThan(0);
    expect(trueCauses(work, HAND)[0]).toBe(cause);
  });

  test('a joint without a fault has none, and one with two has both', () => {
    expect(trueCauses(sound(), HAND)).toEqual([]);
    const work = sound();
    work.hump = 0.2;
    work.floor = -0.2;
    expect([...trueCauses(work, HAND)].sort()).toEqual(['bottoms']);
    work.floor = 0.5;
    work.noLeadIn = 0.4;
    expect([...trueCauses(work, HAND)].sort()).toEqual(['no-lead-in', 'shoulder-hump']);
  });

  test('taking a cause away changes nothing on the bench itself', () => {
    const { work, turner } = boxOf(3, 4, EVERYDAY);
    const before = copyOf(work);
    trueCauses(work, turner.hand);
    expect(work).toEqual(before);
  });
});

const mends = (kind: MoveKind, more: Partial<AdvisedMove>, upset: (work: Workpiece) => void) =>
  [kind, more, upset] as const;

describe('moves', () => {
  test.each([
    mends('clear-floor', { by: mm(1) }, (work) => Object.assign(work, { floor: -0.3 })),
    mends('chamfer-start', {}, (work) => Object.assign(work, { noLeadIn: 0.5 })),
    mends('face-shoulder', { part: 'tenon', by: mm(0.25) }, (work) => Object.assign(work, { hump: 0.2 })),
    mends('deepen', { part: 'tenon', by: mm(0.1) }, ({ tenon }) =>
      Object.assign(tenon, { depth: tenon.depth - 0.13 }),
    ),
    mends('ease-crests', { part: 'tenon', by: mm(0.25) }, ({ tenon }) =>
      Object.assign(tenon, { raised: 0.45 }),
    ),
    mends('brush-out', {}, (work) => Object.assign(work, { chips: 1.2 })),
    mends('slacken-jaws', { part: 'tenon' }, ({ tenon }) =>
      Object.assign(tenon.pinched.four, { amplitude: 0.2 }),
    ),
  ])('%s against what it is for: the turner calls far more lids right', (kind, more, upset) => {
    const bench = benchWith(upset);
    const before = rightOf(bench, 100);
    const after = Array.from({ length: 100 }, (_, i) => {
      const made = make(bench, plainMove(kind, more), seededRandom(9, i));
      return tell(made.bench, seededRandom(11, i)).right;
    }).filter(Boolean).length;
    expect(before).toBeLessThan(10);
    expect(after).toBeGreaterThan(60);
  });

  test('the record holds what was meant, and the bench what came of it', () => {
    const bench: Bench = benchWith(() => {});
    const tried = { ...bench, record: { ...bench.record, trials: [tell(bench, seededRandom(1))] } };
    const { bench: after } = make(
      tried,
      plainMove('deepen', { part: 'tenon', by: mm(0.1) }),
      seededRandom(2),
    );
    expect(after.record.joint.depth.tenon).toBeCloseTo(DEPTH + 0.1, 12);
    expect(after.work.tenon.depth).not.toBe(after.record.joint.depth.tenon);
    expect(after.record.trials[0]?.moves).toEqual([
      { kind: 'deepen', part: 'tenon', by: 0.1, size: null, depth: null },
    ]);
    expect(bench.work.tenon.depth).toBe(DEPTH);
  });

  test.each([
    ['crest-too-thin', plainMove('deepen', { part: 'tenon', by: mm(0.4) }), {}],
    ['cut-too-loose', plainMove('deepen', { part: 'tenon', by: mm(0.2) }), {}],
    ['too-little-engaged', plainMove('ease-crests', { part: 'tenon', by: mm(0.9) }), {}],
    ['unusable-tenon', plainMove('new-tenon', { part: 'tenon', size: mm(51), depth: mm(1) }), {}],
    ['unusable-tenon', plainMove('new-tenon', { part: 'tenon', size: mm(TENON), depth: mm(2.1) }), {}],
    ['cut-without-setting', plainMove('deepen', { part: 'recess', by: mm(0.05) }), {}],
    ['cut-without-setting', plainMove('same-setting-again', { part: 'tenon' }), { holds: false }],
    [
      'cut-without-setting',
      plainMove('harden-and-recut', { part: 'tenon', reset: true }),
      { finished: true },
    ],
  ] as const)('ruin is seen: %s', (ruin, move, state) => {
    const bench = benchWith(() => {});
    bench.record = { ...bench.record, bench: { ...bench.record.bench, ...state } };
    expect(make(bench, move, seededRandom(3)).ruin).toBe(ruin);
  });

  test('a new tenon is needless where the old one was in the band or had crest left to be cut deeper', () => {
    const again = plainMove('new-tenon', { part: 'tenon', size: mm(TENON), depth: mm(DEPTH) });
    const isNeedless = (upset: (work: Workpiece) => void) =>
      make(benchWith(upset), again, seededRandom(4)).needless;
    expect(isNeedless(() => {})).toBe(true);
    expect(isNeedless(({ tenon }) => Object.assign(tenon, { diameter: tenon.diameter + 0.3 }))).toBe(true);
    expect(isNeedless(({ tenon }) => Object.assign(tenon, { diameter: tenon.diameter - 0.5 }))).toBe(false);
    expect(isNeedless(({ tenon }) => Object.assign(tenon, { slip: 0.5 }))).toBe(false);
  });
});

describe('the simulated workshop', () => {
  test('the same seed gives the same boxes and the same plays, another seed others', () => {
    expect(boxOf(5, 7, EVERYDAY).work).toEqual(boxOf(5, 7, EVERYDAY).work);
    expect(boxOf(5, 7, EVERYDAY).work).not.toEqual(boxOf(6, 7, EVERYDAY).work);
    const once = () => ({
      ...play(waxOnly, { seed: 5, index: 7, manners: EVERYDAY, way: 'as advised' }),
      milliseconds: [],
    });
    expect(once()).toEqual(once());
  });

  test('boxes are of all kinds: pitches of both kinds, bores 15 to 150 mm, most with one upset and a quarter with two', () => {
    const boxes = Array.from({ length: 400 }, (_, i) => boxOf(8, i, EVERYDAY));
    const bores = boxes.map(({ work }) => work.meant.recess.diameter);
    expect(Math.min(...bores)).toBeLessThan(22);
    expect(Math.max(...bores)).toBeGreaterThan(120);
    expect(new Set(boxes.map(({ work }) => work.pitch)).size).toBe(9);
    const two = boxes.filter(({ upsets }) => upsets.length === 2).length;
    expect(two / 400).toBeGreaterThan(0.2);
    expect(two / 400).toBeLessThan(0.35);
    expect(new Set(boxes.flatMap(({ upsets }) => upsets)).size).toBeGreaterThan(24);
    for (const { work, turner } of boxes) expect(faultsOf(feelOf(work, turner.hand))).toBeGreaterThan(0);
  });

  test('what is told and answered is in bounds, and has no number that is none', () => {
    for (let index = 0; index < 150; index++) {
      const bench: Bench = boxOf(12, index, WORSE);
      const random = seededRandom(12, index);
      const told = tell(bench, random);
      const record = { ...bench.record, trials: [told] };
      const said = [
        answer('end-play', { ...bench, record }, random),
        answer('crest-flat-tenon', { ...bench, record }, random),
      ];
      for (const view of [record, ...said]) {
        if (view === null) continue;
        const trial = view.trials[0];
        for (const value of [trial?.endPlay, trial?.turnsOn, trial?.crestFlat?.width])
          if (value !== null && value !== undefined) expect(value).toBeGreaterThanOrEqual(0);
        expect(trial?.bottomGap).not.toBeNaN();
      }
      if (!told.right)
        expect(
          told.goingOn.length > 0 ||
            told.threads.some((word) => word !== 'sound') ||
            (told.seated !== null && told.seated !== 'flush'),
        ).toBe(true);
    }
  });

  test('an adviser that always deepens ruins most parts, in every way that cutting can', () => {
    const { ruined, ruins } = playAll(alwaysDeepens, { boxes: 120, seed: 21, manners: EVERYDAY });
    expect(share(ruined)).toBeGreaterThan(0.6);
    expect(ruins['crest-too-thin']).toBeGreaterThan(10);
    expect(ruins['cut-too-loose']).toBeGreaterThan(10);
    expect(ruins['cut-without-setting']).toBeGreaterThan(10);
  });

  test('who does nothing, or only waxes, ruins nothing and gets few lids right', () => {
    const nothing = playAll(silent, { boxes: 120, seed: 22, manners: EVERYDAY });
    const wax = playAll(waxOnly, { boxes: 120, seed: 22, manners: EVERYDAY });
    expect([nothing.ruined.hits, wax.ruined.hits]).toEqual([0, 0]);
    expect(nothing.rightAfter[5]?.hits).toBeLessThan(24);
    expect(wax.rightAfter[5]?.hits).toBeLessThan(48);
  });

  test('who sees the truth ruins nothing, and sets right more than nine in ten of what can be set right', () => {
    const seen = playAll(seeing, { boxes: 60, seed: 23, manners: EVERYDAY });
    expect(seen.ruined.hits).toBe(0);
    expect(seen.needless).toBe(0);
    expect(seen.cutsWithoutSetting).toBe(0);
    expect(seen.firstTrue.hits).toBe(seen.firstTrue.of);
    expect(seen.rightAfter[2]?.hits).toBeGreaterThan(51);
    expect(seen.rightAfter[5]?.hits).toBeGreaterThan(53);
  }, 60_000);
});

describe('limits that allow for the luck of the draw', () => {
  test('the binomial sum agrees with values worked out by hand', () => {
    expect(atMost(0, 3, 0.5)).toBeCloseTo(0.125, 12);
    expect(atMost(1, 3, 0.5)).toBeCloseTo(0.5, 12);
    expect(atMost(2, 10, 0.1)).toBeCloseTo(0.9 ** 10 + 10 * 0.1 * 0.9 ** 9 + 45 * 0.01 * 0.9 ** 8, 12);
  });

  test('a share just at the limit passes, one far from it does not', () => {
    expect(isBelow({ hits: 156, of: 300 }, 0.53)).toBe(false);
    expect(isBelow({ hits: 130, of: 300 }, 0.53)).toBe(true);
    expect(isAbove({ hits: 0, of: 40 }, 0.01)).toBe(false);
    expect(isAbove({ hits: 2, of: 40 }, 0.01)).toBe(false);
    expect(isAbove({ hits: 4, of: 40 }, 0.01)).toBe(true);
  });
});

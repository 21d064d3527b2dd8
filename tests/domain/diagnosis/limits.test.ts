import { describe, expect, test } from 'vitest';
import { diagnoseWithin } from '../../../src/domain/diagnosis/diagnose.ts';
import { factsOf } from '../../../src/domain/diagnosis/facts.ts';
import { jointNumbers } from '../../../src/domain/diagnosis/joint-numbers.ts';
import { barredBy, LIMITS, type Limit, type Question } from '../../../src/domain/diagnosis/limits.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import { randomView } from './random-view.ts';
import { soundView } from './sound-view.ts';

const without = (why: string): readonly Limit[] => LIMITS.filter((limit) => limit.why !== why);

const view = soundView();
const box = jointNumbers(view);
const facts: Question['facts'] = {
  ...factsOf(view, box),
  felt: 0,
  crest: { recess: 0.6, tenon: 0.6 },
  stiff: true,
  floor: 2,
};
const now: Question['now'] = {
  box,
  joints: [],
  minutes: new Float64Array(0),
  free: new Float64Array(0),
  canCut: true,
  isLikelySound: true,
  inBand: 0,
  tightFlanks: 1,
  couldDeepen: 0,
  onCrests: 1,
  looser: 0,
  jumpsOrSlipped: 0,
  floorHit: 0,
};

type Changes = {
  readonly move: Partial<Question['move']>;
  readonly outcome?: Partial<Question['outcome']>;
  readonly now?: Partial<Question['now']>;
  readonly facts?: Partial<Question['facts']>;
};

const question = (changes: Changes): Question => {
  const move = {
    kind: 'deepen' as const,
    part: 'tenon' as const,
    by: mm(0.05),
    size: null,
    depth: null,
    reset: false,
    ...changes.move,
  };
  return {
    move,
    outcome: {
      move,
      cost: 4,
      off: new Float64Array(0),
      harm: new Float64Array(0),
      right: new Uint8Array(0),
      thinCrest: 0,
      spent: 0,
      looser: 0,
      floorHit: 0,
      ...changes.outcome,
    },
    now: { ...now, ...changes.now },
    facts: { ...facts, ...changes.facts },
  };
};

const remake = {
  kind: 'new-tenon',
  by: null,
  size: view.joint.tenon,
  depth: view.joint.plannedDepth,
} as const;
const ease = { kind: 'ease-crests' } as const;
const leave = { kind: 'leave-it', part: null, by: null } as const;
const { wanted } = view.joint;

/** For each limit a move that only this limit bars. */
const ONLY: Readonly<Record<string, Changes>> = {
  finished: { move: {}, facts: { finished: true } },
  'no-setting': { move: {}, facts: { bench: { ...view.bench, holds: false } } },
  'not-on-jig': { move: { part: 'recess' } },
  'crest-by-sizes': { move: {}, facts: { depth: { recess: 0, tenon: (2.54 - 0.2 - 0.2) / 1.1547 } } },
  'crest-likely-thin': { move: {}, outcome: { thinCrest: 0.04 } },
  'crest-seen-thin': { move: {}, facts: { crest: { recess: 0.17, tenon: 0.17 } } },
  'crest-unsure': {
    move: {},
    facts: {
      crest: { recess: null, tenon: null },
      depth: { recess: 0, tenon: (2.54 - 0.2 - 0.27) / 1.1547 },
      box: { ...box, tipSd: 0.08 },
    },
  },
  'rubbed-enough': {
    move: { kind: 'rub-flanks', by: mm(0.01) },
    facts: { rubbed: { recess: 0, tenon: 0.05 } },
  },
  'crest-for-picking-up': {
    move: { reset: true },
    facts: { bench: { ...view.bench, holds: false }, crest: { recess: 0.3, tenon: 0.3 } },
  },
  'play-not-felt': { move: {}, facts: { felt: null } },
  'too-loose-after': { move: { by: mm(0.1) }, facts: { felt: 0.75 * wanted, stiff: false } },
  'play-enough': { move: { by: mm(0.05) }, facts: { felt: 0.85 * wanted, stiff: false } },
  'said-loose': { move: {}, facts: { saidLoose: true } },
  'stiff-with-play': { move: {}, facts: { felt: 0.6 * wanted } },
  'likely-looser': { move: {}, outcome: { looser: 0.01 } },
  'too-much-at-once': { move: { by: mm(0.1) }, now: { tightFlanks: 0.8 } },
  'in-band': { move: remake, now: { inBand: 0.3 } },
  'felt-in-band': { move: remake, facts: { felt: wanted } },
  'new-tenon-play-not-felt': { move: remake, facts: { felt: null } },
  'crest-not-seen': { move: remake, facts: { crest: { recess: null, tenon: null } } },
  'slip-or-blunt': { move: remake, facts: { slipOrBlunt: true } },
  'deepen-instead': { move: remake, now: { couldDeepen: 0.35 } },
  'new-one-unmeasured': { move: remake, facts: { unmeasured: true } },
  'new-tenon-too-small': { move: { ...remake, size: mm(view.joint.bore + 0.5) } },
  'new-crest-by-sizes': {
    move: { ...remake, depth: mm((2.54 - 0.2 - 0.1) / 1.1547) },
    facts: { crest: { recess: 2, tenon: 2 } },
  },
  'new-crest-by-seen': { move: remake, facts: { crest: { recess: 0.1, tenon: 0.1 } } },
  'new-one-likely-weak': { move: remake, outcome: { spent: 0.05 } },
  'no-crest-contact': { move: ease, now: { onCrests: 0.2 } },
  'eased-twice': { move: ease, facts: { eased: { recess: 0, tenon: 2 } } },
  'engagement-after-easing': { move: ease, facts: { easedBy: { recess: 0.5, tenon: 0.5 } } },
  floor: { move: { kind: 'face-shoulder', part: null, by: mm(0.2) }, facts: { floor: 0.25 } },
  'fault-likelier': { move: leave, now: { isLikelySound: false }, facts: { onlyLoose: true, felt: wanted } },
  'not-to-be-left': { move: leave, facts: { onlyLoose: true, felt: 2 * wanted } },
};

describe('a hard limit', () => {
  test.each(LIMITS.map(({ why }) => why))('%s bars what no other limit bars', (why) => {
    const of = question(ONLY[why] as Changes);
    expect(barredBy(of, LIMITS)).toBe(why);
    expect(barredBy(of, without(why))).toBeNull();
  });

  test('the moves of this test are barred by nothing while nothing speaks against them', () => {
    for (const move of [{}, remake, ease, { kind: 'face-shoulder', part: null, by: mm(0.2) } as const])
      expect(barredBy(question({ move }), LIMITS)).toBeNull();
  });
});

/** The limits that the moves advised for a view break, when only `limits` are kept to. */
const brokenIn = (number: number, limits: readonly Limit[]): readonly string[] => {
  const barred = new Map<string, Set<string>>();
  const keyOf = ({ kind, part, by, size, depth, reset }: Question['move']) =>
    JSON.stringify([kind, part, by, size, depth, reset]);
  // Limits that let everything through, but note what they would have barred. The facts of an imagined answer are not those of the bench.
  const watching = LIMITS.map(
    (limit): Limit => ({
      ...limit,
      bars: (of) => {
        if (of.facts.imagined || !limit.bars(of)) return false;
        const key = keyOf(of.move);
        barred.set(key, (barred.get(key) ?? new Set()).add(limit.why));
        return false;
      },
    }),
  );
  const found = diagnoseWithin(randomView(number), [...watching, ...limits]);
  if (!found.ok) return [];
  return [found.value.move, found.value.next].flatMap((move) =>
    move ? [...(barred.get(keyOf(move)) ?? [])] : [],
  );
};

/** Limits that hardly ever bar a move that no other limit bars; the test above shows that they do. */
const SELDOM = [
  'new-crest-by-sizes',
  'new-tenon-too-small',
  'crest-by-sizes',
  'stiff-with-play',
  'eased-twice',
  'rubbed-enough',
  'crest-for-picking-up',
];

describe('advice', { timeout: 120_000 }, () => {
  const views = Array.from({ length: 150 }, (_, i) => i + 1);

  test('breaks no limit', () => {
    expect(
      views.flatMap((number) => brokenIn(number, LIMITS).map((why) => `view ${number}: ${why}`)),
    ).toEqual([]);
  });

  test('would break nearly every one of them, were there none', () => {
    // Leaving it comes first wherever it may, so its own limits stay.
    const leaving = LIMITS.filter(({ why }) => why === 'fault-likelier' || why === 'not-to-be-left');
    const broken = new Set(views.flatMap((number) => brokenIn(number, leaving)));
    const never = LIMITS.filter((limit) => !leaving.includes(limit))
      .map(({ why }) => why)
      .filter((why) => !broken.has(why));
    expect(never.filter((why) => !SELDOM.includes(why))).toEqual([]);
  });
});

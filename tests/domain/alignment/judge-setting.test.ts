import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MeasuredAngle } from '../../../src/domain/alignment/gauge.ts';
import {
  judgeLean,
  judgeReading,
  judgeSeat,
  judgeTilt,
  type OtherPiece,
  type Question,
} from '../../../src/domain/alignment/judge-setting.ts';
import type { AlignedJoint } from '../../../src/domain/alignment/tolerance.ts';
import { leanLimits, squareLimits } from '../../../src/domain/alignment/tolerance.ts';
import { sidesTouched, type Together, together } from '../../../src/domain/alignment/walls.ts';
import type { Result } from '../../../src/domain/result.ts';
import {
  degrees,
  degreesFromRad,
  mm,
  type Radians,
  rad,
  radFromDegrees,
} from '../../../src/domain/units/brands.ts';

const value = <T>(answer: Result<T>): T => {
  if (!answer.ok) throw new Error(`refused: ${JSON.stringify(answer.error)}`);
  return answer.value;
};
const inRad = (angle: number): Radians => radFromDegrees(degrees(angle));
const measured = (angle: number, doubt = 0.02): MeasuredAngle => ({
  angle: inRad(angle),
  uncertainty: inRad(doubt),
});
const length = (value: number) => ({ mm: mm(value), text: `${value} mm` });

/** A 10 tpi jar lid: allowance 2.474 mm, clearance 0.2 mm, so the pair may mismatch by one degree. */
const jar: AlignedJoint = {
  pitch: mm(2.54),
  hand: 'right',
  opening: mm(50),
  tenon: mm(52.474),
  depth: mm(1.639),
  clearance: mm(0.2),
  threads: 3,
  cutterRadius: mm(15),
  shoulder: mm(60),
};
const unknown: OtherPiece = { known: 'nothing' };
const ask = (angle: number, more: Partial<Question> = {}): Question => ({
  joint: jar,
  part: 'tenon',
  measured: measured(angle),
  other: unknown,
  together: 'doubles',
  ...more,
});
const recess = (angle: number, sameWay: boolean | null): OtherPiece => ({
  known: 'measured',
  measured: measured(angle),
  sameWay,
});

describe('which wall', () => {
  test.each([
    ['same', 'cancels'],
    ['other', 'doubles'],
    [null, 'worst-case'],
  ] as const)('dial the %s way: %s', (dial, expected) => expect(together(dial)).toBe(expected));

  test('the sides touched follow from where the jig stands and from the dial', () => {
    expect(sidesTouched({ jigSide: 'front', recessDial: 'same' })).toEqual({ tenon: 1, recess: -1 });
    expect(sidesTouched({ jigSide: 'front', recessDial: 'other' })).toEqual({ tenon: 1, recess: 1 });
    expect(sidesTouched({ jigSide: 'behind', recessDial: 'same' })).toEqual({ tenon: -1, recess: 1 });
    expect(sidesTouched({ jigSide: 'behind', recessDial: 'other' })).toEqual({ tenon: -1, recess: -1 });
    expect(sidesTouched({ jigSide: null, recessDial: 'same' })).toBeUndefined();
  });
});

describe('a lean', () => {
  test.each([
    [0.1, 'well-inside'],
    [0.4, 'inside'],
    [0.5, 'at-the-edge'],
    [0.7, 'outside'],
  ])('of %s degrees on one piece, cut on the same side as the other will be: %s', (angle, grade) => {
    expect(value(judgeLean(ask(angle))).grade).toBe(grade);
  });

  test.each([
    ['doubles', 'same-setting', 1.4, 'outside'],
    ['cancels', 'same-setting', 0, 'well-inside'],
    ['worst-case', 'same-setting', 1.4, 'outside'],
  ] as const)('0.7 degrees kept for both %s', (how, known, mismatch, grade) => {
    const judgement = value(judgeLean(ask(0.7, { other: { known }, together: how })));
    expect(degreesFromRad(judgement.counted.angle)).toBeCloseTo(mismatch, 9);
    expect(judgement.grade).toBe(grade);
  });

  test.each([
    ['doubles', true, 1.3],
    ['doubles', false, 0.1],
    ['doubles', null, 1.3],
    ['cancels', true, 0.1],
    ['cancels', false, 1.3],
    ['cancels', null, 1.3],
    ['worst-case', true, 1.3],
    ['worst-case', false, 1.3],
    ['worst-case', null, 1.3],
  ] as const)(
    '0.7 on the tenon and 0.6 on the recess, %s, open the same way: %s',
    (how, sameWay, mismatch) => {
      const judgement = value(judgeLean(ask(0.7, { other: recess(0.6, sameWay), together: how })));
      expect(degreesFromRad(judgement.counted.angle)).toBeCloseTo(mismatch, 9);
      expect(degreesFromRad(judgement.counted.uncertainty)).toBeCloseTo(Math.hypot(0.02, 0.02), 9);
      expect(judgement.together).toBe(how);
    },
  );

  test('says what it does if left, in thous, and never opens the shoulder', () => {
    const judgement = value(judgeLean(ask(1, { other: { known: 'same-setting' } })));
    // 4/3 x 1.237 mm x 2 degrees = 0.0576 mm: two thou at the tip, and as much play lost of 0.115.
    expect(judgement.ifLeft.tipGap).toBeCloseTo(2 * 0.0254, 9);
    expect(judgement.ifLeft.playLost).toBeCloseTo(2 * 0.0254, 9);
    expect(judgement.ifLeft.playLeft).toBeCloseTo(2 * 0.0254, 9);
    expect(judgement.ifLeft.shoulderGap).toBe(0);
    expect(judgement.ifLeft.binds).toBe(false);
    expect(value(judgeLean(ask(2.1, { other: { known: 'same-setting' } }))).ifLeft.binds).toBe(true);
  });

  test('a bank card over 80 mm is half a degree', () => {
    const reading = { kind: 'gap', gap: length(0.76), over: length(80), plane: 'lean' } as const;
    const { joint, part, other } = ask(0);
    const judgement = value(judgeReading(reading, { joint, part, other, together: 'doubles' }));
    expect(degreesFromRad(judgement.measured.angle)).toBeCloseTo(0.544, 3);
    expect(judgement.grade).toBe('at-the-edge');
    expect(judgement.gap).toBeCloseTo(0.75, 9);
    expect(judgement.limitGap).toBeCloseTo(0.7, 9);
    const loose = { ...joint, clearance: mm(0.35) };
    expect(value(judgeReading(reading, { joint: loose, part, other, together: 'doubles' })).grade).toBe(
      'inside',
    );
  });

  test('what cannot be felt is never outside, however tight the joint', () => {
    const needleCase = { ...jar, pitch: mm(1.27), tenon: mm(51), depth: mm(0.8), clearance: mm(0.05) };
    const limit = degreesFromRad(value(leanLimits(needleCase)).each);
    const judgement = value(
      judgeLean(ask(limit + 0.2, { joint: needleCase, measured: measured(limit + 0.2, 0.001) })),
    );
    expect(judgement.grade).toBe('at-the-edge');
  });
});

describe('a tilt', () => {
  test('thins the ridge of its own piece only', () => {
    const judgement = value(judgeTilt(ask(3, { part: 'recess' })));
    expect(judgement.grade).toBe('outside');
    expect(judgement.ifLeft.ridgeThinner).toBeGreaterThan(0.2);
    expect(judgement.ifLeft.playLost).toBe(0);
    expect(value(judgeTilt(ask(3, { part: 'tenon' }))).grade).toBe('inside');
  });

  test('is judged alike for both hands, since its sense is not known', () => {
    const left = { ...jar, hand: 'left' } as const;
    const of = (joint: AlignedJoint) => value(judgeTilt(ask(1.5, { part: 'recess', joint })));
    expect(of(left).limit).toBeCloseTo(of(jar).limit, 12);
    expect(of(left).ifLeft).toEqual(of(jar).ifLeft);
  });
});

describe('a seat after re-chucking', () => {
  const flush = degreesFromRad(value(squareLimits(jar)).flush);

  test('adds to that of the other piece', () => {
    expect(value(judgeSeat(ask(flush / 8, { measured: measured(flush / 8, 0.001) }))).grade).toBe(
      'well-inside',
    );
    const both = value(
      judgeSeat(ask(flush, { measured: measured(flush, 0.001), other: recess(flush, null) })),
    );
    expect(both.grade).toBe('outside');
    // 60 mm x the freedom again: the rim opens by as much as the second error.
    expect(both.ifLeft.shoulderGap).toBeCloseTo(0.1, 9);
  });

  test('a lean known of the pair takes freedom away', () => {
    const leaning = value(judgeSeat(ask(0.05, { mismatch: inRad(1) })));
    expect(leaning.limit).toBeCloseTo(0.75 * value(judgeSeat(ask(0.05))).limit, 3);
  });

  test('beyond the freedom by less than a paper at the rim is at the edge', () => {
    const slightly = flush / 2 + 0.01;
    expect(value(judgeSeat(ask(slightly, { measured: measured(slightly, 0.001) }))).grade).toBe(
      'at-the-edge',
    );
  });
});

describe('a reading', () => {
  const { joint, part, other } = ask(0);
  const question = { joint, part, other, together: 'doubles' as Together };
  test('without its plane is judged both ways and the worse counts', () => {
    const gap = { kind: 'gap', gap: length(2), over: length(80), plane: 'either' } as const;
    expect(value(judgeReading(gap, question)).aspect).toBe('lean');
  });
  test('nothing goes in: well inside', () => {
    const gap = { kind: 'gap', gap: length(0), over: length(80), plane: 'either' } as const;
    expect(value(judgeReading(gap, question)).grade).toBe('well-inside');
  });
  test('a sweep of half a millimetre on a 100 mm arm is 0.14 degrees', () => {
    const sweep = { kind: 'sweep', difference: length(0.5), radius: length(100), plane: 'lean' } as const;
    expect(degreesFromRad(value(judgeReading(sweep, question)).measured.angle)).toBeCloseTo(0.1432, 3);
  });
  test('paper under the chuck is a seat', () => {
    const gap = { kind: 'gap', gap: length(0.1), over: length(50), plane: 'either' } as const;
    const judgement = value(judgeReading(gap, question, 'seat'));
    expect(judgement.aspect).toBe('seat');
    expect(degreesFromRad(judgement.measured.angle)).toBeCloseTo(0.115, 3);
  });
});

describe('laws', () => {
  const ORDER = ['well-inside', 'inside', 'at-the-edge', 'outside'];
  const jointOf = fc
    .record({
      pitch: fc.double({ min: 1, max: 4, noNaN: true }),
      opening: fc.double({ min: 15, max: 150, noNaN: true }),
      clearance: fc.double({ min: 0.02, max: 0.6, noNaN: true }),
      cutter: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
      hand: fc.constantFrom('right' as const, 'left' as const),
    })
    .map(
      ({ pitch, opening, clearance, cutter, hand }): AlignedJoint => ({
        pitch: mm(pitch),
        hand,
        opening: mm(opening),
        tenon: mm(opening + 0.95 * pitch),
        depth: mm(0.62 * pitch),
        clearance: mm(clearance),
        threads: 3,
        cutterRadius: mm(3 + (cutter * opening) / 2 / 1.3),
        shoulder: mm(opening + 10),
      }),
    )
    .filter((joint) => joint.cutterRadius < 0.85 * (joint.opening / 2));
  const angleOf = fc.double({ min: 0, max: 6, noNaN: true });
  const how = fc.constantFrom<Together>('cancels', 'doubles', 'worst-case');

  test('a greater angle is never graded better', () => {
    fc.assert(
      fc.property(
        jointOf,
        angleOf,
        angleOf,
        how,
        fc.constantFrom(judgeLean, judgeTilt, judgeSeat),
        (joint, a, b, way, judge) => {
          const [less, more] = a < b ? [a, b] : [b, a];
          const grade = (angle: number) =>
            ORDER.indexOf(value(judge(ask(angle, { joint, together: way }))).grade);
          expect(grade(less)).toBeLessThanOrEqual(grade(more));
        },
      ),
    );
  });

  test('not knowing is never graded better than knowing', () => {
    fc.assert(
      fc.property(
        jointOf,
        angleOf,
        angleOf,
        fc.constantFrom<Together>('cancels', 'doubles'),
        fc.boolean(),
        (joint, a, b, way, sameWay) => {
          const known = value(judgeLean(ask(a, { joint, together: way, other: recess(b, sameWay) })));
          const worst = value(judgeLean(ask(a, { joint, together: 'worst-case', other: recess(b, null) })));
          expect(ORDER.indexOf(worst.grade)).toBeGreaterThanOrEqual(ORDER.indexOf(known.grade));
        },
      ),
    );
  });

  test('no NaN and no throw for any numbers', () => {
    const any = fc.oneof(
      fc.double(),
      fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, -0, 1e308, -1),
      fc.double({ min: -1, max: 60, noNaN: true }),
    );
    const clean = (thing: unknown): boolean =>
      typeof thing === 'number'
        ? Number.isFinite(thing)
        : typeof thing !== 'object' || thing === null || Object.values(thing).every(clean);
    fc.assert(
      fc.property(fc.array(any, { minLength: 12, maxLength: 12 }), how, (numbers, way) => {
        const n = (at: number) => numbers[at] ?? 0;
        const joint: AlignedJoint = {
          pitch: mm(n(0)),
          hand: 'right',
          opening: mm(n(1)),
          tenon: mm(n(2)),
          depth: mm(n(3)),
          clearance: mm(n(4)),
          threads: n(5),
          cutterRadius: mm(n(6)),
          shoulder: mm(n(7)),
        };
        for (const asked of [joint, jar]) {
          const question: Question = {
            joint: asked,
            part: 'recess',
            together: way,
            mismatch: rad(n(8)),
            measured: { angle: rad(n(9)), uncertainty: rad(n(10)) },
            other: {
              known: 'measured',
              measured: { angle: rad(n(11)), uncertainty: rad(n(10)) },
              sameWay: null,
            },
          };
          for (const judge of [judgeLean, judgeTilt, judgeSeat]) {
            const answer = judge(question);
            if (answer.ok) expect(clean(answer.value)).toBe(true);
            else expect(answer.error.field).toMatch(/./);
          }
        }
      }),
      { numRuns: 600 },
    );
  }, 30_000);
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axialPlay } from '../../../src/domain/alignment/play.ts';
import { fitOf } from '../../../src/domain/joint/fit.ts';
import { mm, rad } from '../../../src/domain/units/brands.ts';
import {
  type Groove,
  grooveOf,
  mate,
  outlineOf,
  type ThreadedPiece,
} from '../../../src/ui/drawings/joint-section/thread-profile.ts';

const A = Math.PI / 6;
const P = 2.54;
const recess: ThreadedPiece = { diameter: 40, depth: 1.5953, tipFlat: 0.2 };
const tenon: ThreadedPiece = { diameter: 42.4747, depth: 1.5953, tipFlat: 0.2 };
const female = (more: Partial<ThreadedPiece> = {}) => grooveOf('recess', { ...recess, ...more }, P, A);
const male = (more: Partial<ThreadedPiece> = {}) => grooveOf('tenon', { ...tenon, ...more }, P, A);

/** Half angles of the drawn walls against the radius: toward +z and toward -z. */
const drawnAngles = ({ points: [a, b, c, d] }: Groove) => ({
  behind: Math.atan(Math.abs((b[0] - a[0]) / (b[1] - a[1]))),
  ahead: Math.atan(Math.abs((d[0] - c[0]) / (d[1] - c[1]))),
});

const sizes = fc.record({
  pitch: fc.double({ min: 1.2, max: 3.2, noNaN: true }),
  diameter: fc.double({ min: 20, max: 90, noNaN: true }),
  height: fc.double({ min: 0.3, max: 0.45, noNaN: true }),
  tip: fc.double({ min: 0, max: 0.12, noNaN: true }),
  leans: fc.tuple(
    fc.double({ min: -0.05, max: 0.05, noNaN: true }),
    fc.double({ min: -0.05, max: 0.05, noNaN: true }),
  ),
});

describe('a groove', () => {
  it('stands on its flank angle, goes to its depth and has the tip’s flat at the root', () => {
    for (const groove of [female(), male()]) {
      expect(drawnAngles(groove).ahead).toBeCloseTo(A, 10);
      expect(drawnAngles(groove).behind).toBeCloseTo(A, 10);
      expect(groove.points[2][0] - groove.points[1][0]).toBeCloseTo(0.2, 10);
    }
    expect(female().root).toBeCloseTo(20 + 1.5953, 10);
    expect(female().crest).toBeCloseTo(20, 10);
    expect(male().root).toBeCloseTo(42.4747 / 2 - 1.5953, 10);
    expect(male().crest).toBeCloseTo(42.4747 / 2, 10);
  });

  it('leaves the crest flat P - f - 2 d tan A', () => {
    const { points } = male();
    expect(P - (points[3][0] - points[0][0])).toBeCloseTo(P - 0.2 - 2 * 1.5953 * Math.tan(A), 10);
  });

  it('leans in a tenon: the wall further into the piece opens to the half angle plus the lean', () => {
    const { ahead, behind } = drawnAngles(male({ lean: 0.04 }));
    // Into the tenon is out of the recess: toward -z.
    expect(behind).toBeCloseTo(A + 0.04, 10);
    expect(ahead).toBeCloseTo(A - 0.04, 10);
  });

  it('leans the other way about in a recess, whose groove opens inward', () => {
    const { ahead, behind } = drawnAngles(female({ lean: 0.04 }));
    expect(ahead).toBeCloseTo(A - 0.04, 10);
    expect(behind).toBeCloseTo(A + 0.04, 10);
  });

  it('carries its middle along with the lean: ds/dr of the bisector', () => {
    const bisector = (groove: Groove, far: number, near: number): number => {
      const middle = (r: number) => (groove.ahead(r) - groove.behind(r)) / 2;
      return (middle(far) - middle(near)) / (far - near);
    };
    expect(bisector(female({ lean: 0.03, tipFlat: 0 }), 21.5, 20)).toBeCloseTo(0.03, 1);
    expect(Math.sign(bisector(female({ lean: 0.03, tipFlat: 0 }), 21.5, 20))).toBe(1);
    // s of the tenon runs the other way along z.
    expect(Math.sign(bisector(male({ lean: 0.03, tipFlat: 0 }), 21.2, 19.8))).toBe(-1);
  });

  it('reaches its depth with the leading corner of the tip', () => {
    for (const lean of [-0.1, 0.1]) {
      const [, b, c] = male({ lean, tipFlat: 0.4 }).points;
      const root = male().root;
      expect(Math.min(b[1], c[1])).toBeCloseTo(root, 10);
      expect(Math.max(b[1], c[1])).toBeCloseTo(root + 0.4 * Math.sin(0.1), 10);
    }
  });

  it('takes the crest down with it when cut past the V', () => {
    const groove = male({ depth: 3 });
    expect(groove.points[3][0] - groove.points[0][0]).toBeCloseTo(P, 9);
    expect(groove.crest).toBeLessThan(42.4747 / 2);
    expect(groove.root).toBeCloseTo(42.4747 / 2 - 3, 10);
  });

  it('swells with its wood, across the axis only', () => {
    const [still, moved] = [male(), male({ strain: 0.01 })];
    expect(moved.crest).toBeCloseTo(still.crest * 1.01, 10);
    expect(moved.root).toBeCloseTo(still.root * 1.01, 10);
    moved.points.forEach(([z], i) => {
      expect(z).toBeCloseTo(still.points[i]?.[0] ?? Number.NaN, 10);
    });
  });
});

describe('a mated pair', () => {
  it('shows the crest gaps Dr/2 + df - Dt/2 and Dr/2 - Dt/2 + dm', () => {
    const fit = mate(female({ depth: 1.7 }), male(), P, 'centred');
    expect(fit.tenonCrestGap).toBeCloseTo(20 + 1.7 - 42.4747 / 2, 10);
    expect(fit.recessCrestGap).toBeCloseTo(20 - 42.4747 / 2 + 1.5953, 10);
  });

  it('shows the play that the fit reckons, whatever the sizes', () => {
    fc.assert(
      fc.property(sizes, ({ pitch, diameter, height, tip }) => {
        const piece = { depth: 1.3 * height * pitch, tipFlat: tip * pitch };
        const pair = {
          recess: { ...piece, diameter },
          tenon: { ...piece, diameter: diameter + 2 * height * pitch },
        };
        const drawn = mate(
          grooveOf('recess', pair.recess, pitch, A),
          grooveOf('tenon', pair.tenon, pitch, A),
          pitch,
          'home',
        );
        const brand = (p: typeof pair.recess) => ({
          diameter: mm(p.diameter),
          depth: mm(p.depth),
          tipFlat: mm(p.tipFlat),
        });
        const fit = fitOf({ pitch: mm(pitch), recess: brand(pair.recess), tenon: brand(pair.tenon) });
        fc.pre(fit.ok && piece.depth < (pitch - piece.tipFlat) / (2 * Math.tan(A)));
        if (fit.ok) expect(drawn.play).toBeCloseTo(fit.value.endPlay, 9);
      }),
    );
  });

  it('shows the play that is left when both lean, whatever the leans', () => {
    fc.assert(
      fc.property(sizes, ({ leans: [leanOfRecess, leanOfTenon], tip }) => {
        const f = { ...recess, tipFlat: tip * P, lean: leanOfRecess };
        const m = { ...tenon, depth: 1.4, tipFlat: tip * P, lean: leanOfTenon };
        const drawn = mate(
          grooveOf('recess', { ...f, depth: 1.4 }, P, A),
          grooveOf('tenon', m, P, A),
          P,
          'centred',
        );
        const brand = (p: typeof f) => ({
          diameter: mm(p.diameter),
          depth: mm(1.4),
          tipFlat: mm(p.tipFlat),
          lean: rad(p.lean),
        });
        const play = axialPlay({ pitch: mm(P), recess: brand(f), tenon: brand(m) });
        if (play.ok) expect(drawn.play).toBeCloseTo(play.value, 9);
        expect(play.ok).toBe(true);
      }),
    );
  });

  it('cancels equal and opposite leans, and doubles equal ones', () => {
    const eaten = (f: number, m: number) =>
      mate(female(), male(), P, 'home').play - mate(female({ lean: f }), male({ lean: m }), P, 'home').play;
    // First order: (4/3) he |lean + lean|, and the corners of both tips, f tan A each; what is left is of second order.
    const corners = 0.2 * Math.tan(A) * 0.03;
    const gap = (4 / 3) * ((42.4747 - 40) / 2) * 0.03;
    expect(Math.abs(eaten(0.03, -0.03) - 2 * corners)).toBeLessThan(0.004);
    expect(Math.abs(eaten(0.03, 0) - gap - corners)).toBeLessThan(0.004);
    expect(Math.abs(eaten(0.03, 0.03) - 2 * gap - 2 * corners)).toBeLessThan(0.004);
  });

  it('pulled home bears on one flank; centred shares the play', () => {
    const home = mate(female(), male(), P, 'home');
    expect(home.gapAhead).toBeCloseTo(0, 12);
    expect(home.gapBehind).toBeCloseTo(home.play, 12);
    const centred = mate(female(), male(), P, 'centred');
    expect(centred.gapAhead).toBeCloseTo(centred.play / 2, 12);
    expect(centred.shift).toBeCloseTo(0, 12);
  });

  it('overlaps on both flanks when it cannot go together', () => {
    const fit = mate(female(), male({ diameter: 43 }), P, 'home');
    expect(fit.play).toBeLessThan(0);
    expect(fit.gapAhead).toBeCloseTo(fit.gapBehind, 12);
  });
});

describe('an outline', () => {
  it('repeats the groove at every pitch, never running back on itself', () => {
    const outline = outlineOf(male(), P, 4, 0.3);
    expect(outline).toHaveLength(16);
    for (let i = 1; i < outline.length; i++)
      expect(outline[i]?.[0]).toBeGreaterThanOrEqual(outline[i - 1]?.[0] ?? 0);
    expect((outline[4]?.[0] ?? 0) - (outline[0]?.[0] ?? 0)).toBeCloseTo(P, 12);
    expect(((outline[1]?.[0] ?? 0) + (outline[2]?.[0] ?? 0)) / 2).toBeCloseTo(P / 2 + 0.3, 12);
  });
});

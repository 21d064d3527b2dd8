// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { FEATURES, featureAt } from '../../../src/ui/drawings/box-section/box-features.ts';
import {
  type BoxSizes,
  type Point,
  recessHalf,
  tenonHalf,
} from '../../../src/ui/drawings/box-section/box-profile.ts';
import { BoxSection } from '../../../src/ui/drawings/box-section/box-section.tsx';

afterEach(cleanup);

const box: BoxSizes = {
  outside: 58,
  lidHeight: 24,
  baseHeight: 44,
  recessIn: 'lid',
  opening: 34,
  floor: 6,
  pitch: 2.54,
  depth: 1.6,
  recess: 40,
  recessDepth: 15.5,
  recessReliefDiameter: 43.7,
  recessChamferDiameter: 43.2,
  tenon: 42.5,
  tenonLength: 11.6,
  tenonReliefDiameter: 38.8,
  tenonChamferDiameter: 39.3,
  reliefWidth: 4,
  insert: 50,
};

const toSegment = ([px, py]: Point, [ax, ay]: Point, [bx, by]: Point): number => {
  const length2 = (bx - ax) ** 2 + (by - ay) ** 2;
  const t = length2 ? Math.max(0, Math.min(1, ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / length2)) : 0;
  return Math.hypot(px - ax - t * (bx - ax), py - ay - t * (by - ay));
};
const toOutline = (point: Point, outline: readonly Point[]): number =>
  Math.min(...outline.slice(1).map((end, i) => toSegment(point, outline[i] ?? end, end)));

describe('the box to scale', () => {
  it.each(['lid', 'base'] as const)('points at places that lie on the wood, recess in the %s', (recessIn) => {
    const sized = { ...box, recessIn };
    for (const feature of FEATURES) {
      const found = featureAt(sized, feature);
      if (!found) throw new Error(`${feature} is nowhere`);
      const outline = found.piece === 'recess' ? recessHalf(sized, 0) : tenonHalf(sized, 0);
      // The joint of an insert runs inside the wood; a thread's face is cut away where a groove is.
      const near = feature === 'insert' ? box.outside : box.depth;
      expect(toOutline(found.at, outline), feature).toBeLessThanOrEqual(near);
    }
  });

  it('has no place for an insert that is not there', () => {
    expect(featureAt({ ...box, insert: null }, 'insert')).toBeNull();
  });

  it('keeps the sizes: widest, deepest, tallest', () => {
    const [recess, tenon] = [recessHalf(box, 0), tenonHalf(box, 0)];
    const far = (points: readonly Point[], i: 0 | 1) => Math.max(...points.map((p) => p[i]));
    expect(far(recess, 0)).toBe(29);
    expect(far(recess, 1)).toBe(24);
    expect(far(tenon, 1)).toBe(11.6);
    expect(Math.min(...tenon.map(([, s]) => s))).toBe(-44);
    expect(Math.min(...recess.filter(([, s]) => s > 0 && s < 11).map(([r]) => r))).toBe(20);
  });

  it('cuts whole grooves to depth, between chamfer and relief, half a turn apart on the two sides', () => {
    const roots = (turn: 0 | 0.5) =>
      recessHalf(box, turn).filter(([r, s]) => r === 20 + 1.6 && s > 0 && s < 11.5);
    const [one, other] = [roots(0), roots(0.5)];
    expect(one.length).toBeGreaterThanOrEqual(3);
    for (const [, s] of [...one, ...other]) {
      expect(s).toBeGreaterThan(1.6);
      expect(s).toBeLessThan(11.5);
    }
    expect(Math.abs((one.at(-1)?.[1] ?? 0) - (other.at(-1)?.[1] ?? 0))).toBeCloseTo(2.54 / 2, 9);
  });

  it('leaves the floor that was asked for', () => {
    expect(recessHalf(box, 0)[0]).toEqual([0, 24 - 6]);
    expect(tenonHalf(box, 0)[0]).toEqual([0, -(44 - 6)]);
    // A lid no deeper than its recess is not hollowed further.
    expect(recessHalf({ ...box, lidHeight: 20 }, 0)[0]).toEqual([0, 15.5]);
  });
});

describe('its drawing', () => {
  const letters = { recess: 'a', tenon: 'b', insert: 'c', tenonChamfer: 'd' };

  it('is one picture, named, with the letters it is given', () => {
    render(<BoxSection box={box} letters={letters} label="Lid over base, lettered" />);
    const svg = screen.getByRole('img', { name: 'Lid over base, lettered' });
    expect([...svg.querySelectorAll('text')].map((t) => t.textContent).sort()).toEqual(['a', 'b', 'c', 'd']);
  });

  it('puts the lid above the base, clear of it, whichever piece has the recess', () => {
    for (const recessIn of ['lid', 'base'] as const) {
      const { container } = render(<BoxSection box={{ ...box, recessIn }} label="box" />);
      const heights = (name: string): number[] =>
        [...(container.querySelector(name)?.getAttribute('d') ?? '').matchAll(/ (-?[\d.]+)/g)].map((m) =>
          Number(m[1]),
        );
      const [recess, tenon] = [heights('.recess'), heights('.tenon')];
      const [lid, base] = recessIn === 'lid' ? [recess, tenon] : [tenon, recess];
      expect(Math.max(...lid)).toBeLessThan(Math.min(...base));
      cleanup();
    }
  });

  it('draws no ring and no letter for an insert that is not there', () => {
    const { container } = render(<BoxSection box={{ ...box, insert: null }} letters={letters} label="box" />);
    expect(container.querySelector('.insert')).toBeNull();
    expect(screen.queryByText('c')).toBeNull();
  });
});

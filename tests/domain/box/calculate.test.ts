import { describe, expect, it } from 'vitest';
import { ASSUMED } from '../../../src/domain/box/assumed.ts';
import { type CalculatedBox, calculate, type Sized } from '../../../src/domain/box/calculate.ts';
import type { Given } from '../../../src/domain/box/given.ts';
import { passesTo } from '../../../src/domain/box/pair.ts';
import type { Box, Plan, Rig } from '../../../src/domain/box/records.ts';
import { UNKNOWN_RIG } from '../../../src/domain/box/unknown-rig.ts';
import type { Refusal } from '../../../src/domain/result.ts';
import { MM_PER_INCH, mm } from '../../../src/domain/units/brands.ts';

const length = (value: number, text = `${value} mm`) => ({ mm: mm(value), text });
const PLAN: Plan = {
  route: 'recess-first',
  recessIn: 'lid',
  lid: { wood: 'Cherry, black', grain: 'end' },
  base: { wood: 'Cherry, black', grain: 'end' },
  insert: null,
  pitch: length(2.54, '10 tpi'),
  opening: length(50),
  outside: null,
  aim: { by: 'fit', clearance: length(0.35) },
  threads: 3,
  passes: 'two-thirds',
};
const KNOWN: Rig = {
  ...UNKNOWN_RIG,
  cutterRadius: length(12.7),
  tipFlat: length(0.2),
  aheadOfTooth: length(2),
  travelPerTurn: length(1.27),
  marksPerTurn: 50,
};
const given = (rig: Rig = KNOWN, offset: number | null = null): Given => ({
  rig,
  caliper: { name: 'Caliper', insideMinusOutside: offset === null ? null : length(offset) },
  ownWoods: new Map(),
});
const box = (part: Partial<Sized> = {}): Sized => ({
  plan: PLAN,
  bore: [],
  tenon: [],
  cuts: [],
  trials: [],
  ...part,
});
const calculated = (part: Partial<Sized> = {}, withGiven = given()): CalculatedBox => {
  const found = calculate(box(part), withGiven);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
};
const refusal = (part: Partial<Sized>, withGiven = given()): Refusal => {
  const found = calculate(box(part), withGiven);
  if (found.ok) throw new Error('not refused');
  return found.error;
};
const boreAt = (value: number): Box['bore'] => [
  { id: 'b', seq: 1, where: 'mouth', along: length(value), across: null, overCrests: false },
];
const tenonAt = (id: string, where: 'end' | 'shoulder', value: number): Box['tenon'][number] => ({
  id,
  seq: 1 + Number(id),
  where,
  diameter: length(value),
  overCrests: false,
});
const cutTo = (...depths: number[]): Box['cuts'] =>
  depths.map((depth, i) => ({
    id: String(i),
    seq: 10 + i,
    part: 'recess',
    runId: null,
    at: i,
    depth: length(depth),
    correction: false,
  }));

describe('what stands in for the unknown', () => {
  it('a rig that knows nothing is calculated with usual figures, and every one is named', () => {
    const { assumed, input } = calculated({}, given(UNKNOWN_RIG));
    expect(assumed.map(({ what }) => what).sort()).toEqual(['aheadOfTooth', 'cutterRadius', 'tipFlat']);
    expect(input.cutter.tipFlat).toBe(ASSUMED.tipFlat);
    expect(input.dial).toBeNull();
  });

  it('a rig that knows everything needs none', () => {
    expect(calculated().assumed).toEqual([]);
  });

  it('a plan told in turns of an unknown dial says that the turn was guessed', () => {
    const plan: Plan = { ...PLAN, aim: { by: 'depth', dialTurns: 1.25 } };
    const found = calculated({ plan }, given({ ...KNOWN, travelPerTurn: null }));
    expect(found.assumed.map(({ what }) => what)).toEqual(['travelPerTurn']);
    expect(found.plan.sizes.depth).toBeCloseTo(1.25 * ASSUMED.travelPerTurn, 9);
  });

  it('a wood that no table has is named once, though both pieces are of it', () => {
    const use = { wood: 'Hedge pear', grain: 'end' } as const;
    expect(calculated({ plan: { ...PLAN, lid: use, base: use } }).assumed).toEqual([
      { what: 'wood', wood: 'Hedge pear' },
    ]);
  });

  it('an unknown cutter is no reason to refuse a needle case', () => {
    const plan = { ...PLAN, opening: length(14), pitch: length(1.27, '20 tpi') };
    expect(calculated({ plan }, given(UNKNOWN_RIG)).input.cutter.radius).toBeLessThan(7);
    expect(refusal({ plan }).field).toBe('recess');
  });
});

describe('the thread is calculated in the wood that carries it', () => {
  it('a ring stands for its piece', () => {
    const side = { wood: 'Beech, American', grain: 'side' } as const;
    const plan: Plan = { ...PLAN, lid: side, insert: { wood: 'Cherry, black', grain: 'end', in: 'lid' } };
    expect(calculated({ plan }).input.woodOfRecess.grain).toBe('end');
    expect(calculated({ plan: { ...plan, insert: null } }).input.woodOfRecess.grain).toBe('side');
    expect(calculated({ plan: { ...plan, recessIn: 'base', insert: null } }).input.woodOfTenon.grain).toBe(
      'side',
    );
  });
});

describe('room for lean', () => {
  const leanOf = (route: Plan['route'], recessDial: Rig['recessDial']) =>
    calculated({ plan: { ...PLAN, route } }, given({ ...KNOWN, recessDial })).plan.clearance.budget.mismatch;

  it('is kept unless both threads are cut in one setting, on opposite walls', () => {
    expect(leanOf('both-turned', 'same')).toBe(0);
    const kept = leanOf('both-turned', 'other');
    expect(kept).toBeCloseTo(0.35 / 4, 9);
    expect(leanOf('recess-first', 'same')).toBe(kept);
    expect(leanOf('both-turned', null)).toBe(kept);
  });
});

describe('what is measured takes the place of what was planned', () => {
  it('the tenon moves with the bore', () => {
    const planned = calculated();
    const measured = calculated({ bore: boreAt(50.2) });
    expect(planned.isBoreMeasured).toBe(false);
    expect(measured.target.tenon - planned.target.tenon).toBeCloseTo(0.2, 3);
  });

  it('inside jaws that read over make the bore, and so the tenon, smaller by as much', () => {
    const plain = calculated({ bore: boreAt(50) });
    const over = calculated({ bore: boreAt(50) }, given(KNOWN, 0.05));
    expect(plain.target.tenon - over.target.tenon).toBeCloseTo(0.05, 3);
    expect(plain.target.fromZero - over.target.fromZero).toBeCloseTo(0.05, 9);
  });

  it('a recess cut shallower than planned makes the tenon smaller by twice the depth missing', () => {
    const { depth } = calculated().plan.sizes;
    const cut = calculated({ cuts: cutTo(1, depth - 0.1) });
    expect(cut.recessCutTo).toBeCloseTo(depth - 0.1, 9);
    expect(calculated().target.tenon - cut.target.tenon).toBeCloseTo(0.2, 6);
    expect(cut.target.tenon).toBe(cut.pair.tenon.diameter);
  });

  it('between its passes the recess is still taken for what is planned', () => {
    expect(calculated({ cuts: cutTo(1) }).recessCutTo).toBeNull();
  });

  it('a tenon is what was read last at each place', () => {
    const { target } = calculated();
    const over = target.tenon + 0.4;
    const first = [tenonAt('1', 'end', over)];
    expect(calculated({ tenon: first }).check?.size).toBe('over');
    const again = [...first, tenonAt('2', 'end', target.tenon)];
    expect(calculated({ tenon: again }).check?.size).toBe('right');
    expect(calculated({ tenon: again }).tenon?.taper).toBeNull();
    const both = [...again, tenonAt('3', 'shoulder', target.tenon + 0.06)];
    expect(calculated({ tenon: both }).tenon?.taper).toBeCloseTo(0.06, 9);
  });

  it('a tenon over size can be cut deeper by half of it, in the passes of the plan', () => {
    const found = calculated({ tenon: [tenonAt('1', 'end', calculated().target.tenon + 0.2)] });
    const depth = found.check?.depth ?? mm(0);
    const passes = passesTo(found, depth);
    expect(depth - found.plan.sizes.depth).toBeCloseTo(0.1, 9);
    expect(passes.ok && passes.value.map((pass) => pass.depth / depth)).toEqual([
      expect.closeTo(2 / 3, 9),
      1,
    ]);
    expect(passes.ok && passes.value.at(-1)?.dial?.turns).toBeCloseTo(depth / 1.27, 9);
  });
});

describe('common practice (no source)', () => {
  it('1 1/2 turns of a cross-screw of 20 to the inch are 0.075 in', () => {
    const plan: Plan = { ...PLAN, aim: { by: 'depth', dialTurns: 1.5 }, pitch: length(3.175, '8 tpi') };
    expect(calculated({ plan }).plan.sizes.depth / MM_PER_INCH).toBeCloseTo(0.075, 9);
  });
});

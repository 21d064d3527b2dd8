import { afterEach, describe, expect, test } from 'vitest';
import { planInputOf } from '../../src/domain/box/plan-input.ts';
import { planJoint } from '../../src/domain/joint/plan.ts';
import { checkEvent, checkRecord } from '../../src/domain/log/validate.ts';
import { foldRun, type RunState } from '../../src/domain/setup/fold.ts';
import { carriedOver, movementsBetween } from '../../src/domain/setup/inherit.ts';
import { stretchFromNow } from '../../src/domain/setup/stretch.ts';
import { readLength } from '../../src/domain/units/read-quantity.ts';
import { DEMO_SEED, generateDemo } from './generate.ts';
import { PEAR, type RigId } from './rigs.ts';
import { SCENARIO } from './scenario.ts';
import { boxesOf, foldedRuns, NOW, RIGS, rowsOf, runsOf } from './workshop.ts';

const demo = generateDemo(DEMO_SEED, NOW);
const boxes = boxesOf(demo);
const runs = foldedRuns(demo.events);
const inOrder = [...boxes.values()];
const open = inOrder.filter((box) => box.closing === null);

describe('the demo log', () => {
  test('is the same, byte for byte, for the same seed and time, and another for another seed', () => {
    const text = JSON.stringify(demo);
    expect(JSON.stringify(generateDemo(DEMO_SEED, NOW))).toBe(text);
    expect(JSON.stringify(generateDemo(DEMO_SEED + 1, NOW))).not.toBe(text);
  });

  test('made on another day tells the same boxes, later', () => {
    const later = boxesOf(generateDemo(DEMO_SEED, NOW + 11 * 86_400_000));
    for (const [id, box] of boxes)
      expect(later.get(id)).toMatchObject({ plan: box.plan, bore: box.bore, tenon: box.tenon });
  });

  test.each([1, 2, 3])('is whole for seed %i too', (seed) => {
    const other = generateDemo(seed, NOW);
    const folded = [...foldedRuns(other.events).values()];
    expect(folded.filter((run) => run.stray.length > 0 || run.contested || run.readOnly)).toEqual([]);
    for (const record of other.records) expect(checkRecord(record)).toEqual({ ok: true, value: record });
  });

  test('holds some hundred and twenty boxes over two years, numbered, and one of them still on the lathe', () => {
    expect(inOrder.map((box) => box.number)).toEqual(Array.from({ length: SCENARIO.boxes }, (_, i) => i + 1));
    expect(open.map((box) => box.number)).toEqual([SCENARIO.boxes]);
    const days = inOrder.map((box) => box.startedOn);
    expect([...days].sort()).toEqual(days);
    expect(days[0] && days[0] < '2024-08-01').toBe(true);
    expect(days.at(-1)).toBe('2026-07-01');
    const { rows } = rowsOf(boxes, demo.events);
    expect(rows.filter((row) => row.firstTry !== 'unknown').length).toBeGreaterThanOrEqual(120);
  });

  test('stops in the middle of the last set-up, moments ago', () => {
    const [box] = open;
    const run = runs.get(box?.setUps.at(-1)?.runId ?? '');
    expect(run).toMatchObject({ part: 'tenon', closed: null });
    expect(run?.now).not.toBeNull();
    expect(run?.timeline.length).toBeGreaterThan(3);
    expect(Math.max(...demo.events.map((e) => e.at))).toBe(NOW - 45_000);
    expect(box).toMatchObject({ trials: [], seats: [], lidChecks: [] });
    expect(box?.cuts.map((cut) => cut.part)).toEqual(box?.cuts.map(() => 'recess'));
    expect(box?.tenon).toHaveLength(1);
  });

  test('lies in the past, all of it', () => {
    const times = [...JSON.stringify(demo).matchAll(/"(?:at|savedAt|since)":(-?\d+)/g)].map((m) =>
      Number(m[1]),
    );
    expect(times.length).toBeGreaterThan(3000);
    expect(Math.max(...times)).toBeLessThanOrEqual(NOW);
    expect(Math.min(...times)).toBeGreaterThan(NOW - 735 * 86_400_000);
  });

  test('passes the checks that a foreign log must pass', () => {
    for (const record of demo.records) expect(checkRecord(record)).toEqual({ ok: true, value: record });
    for (const event of demo.events) expect(checkEvent(event)).toEqual({ ok: true, value: event });
  });

  test('keeps lengths as somebody typed them', () => {
    const lengths = [...JSON.stringify(demo).matchAll(/\{"mm":([^,]+),"text":"([^"]+ (?:in|mm))"\}/g)];
    expect(lengths.length).toBeGreaterThan(1000);
    for (const [, mm, text] of lengths)
      expect(readLength('x', text ?? '', 'in')).toMatchObject({ value: { mm: Number(mm) } });
  });

  test('stays small', () => {
    expect(JSON.stringify(demo).length).toBeLessThan(2_700_000);
  });
});

describe('its boxes', () => {
  const family = (name: string) => inOrder.filter((box) => box.name.startsWith(name));
  const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

  test.each(SCENARIO.kinds)('of the kind $name have proportions of their own', (kind) => {
    const found = family(kind.name);
    expect(found.length).toBeGreaterThan(15);
    for (const { plan } of found) {
      const ratio = (plan.outside?.mm ?? 0) / plan.opening.mm;
      expect(ratio).toBeGreaterThan(kind.outsidePerOpening[0] - 0.01);
      expect(ratio).toBeLessThan(kind.outsidePerOpening[1] + 0.01);
    }
    expect(new Set(found.map(({ plan }) => plan.opening.text)).size).toBeGreaterThan(found.length / 3);
    expect(new Set(found.map(({ plan }) => plan.outside?.text)).size).toBeGreaterThan(found.length / 2);
    expect(new Set(found.map(({ plan }) => plan.threads)).size).toBe(kind.threads.length);
    const depths = found.flatMap(({ cuts }) =>
      cuts.filter((cut) => !cut.correction).map(({ depth }) => depth.mm),
    );
    expect(spread(depths)).toBeGreaterThan(0.1);
  });

  test('can each be drawn and made: no plan is refused, no wall is thin, no clearance is left to the default', () => {
    const ownWoods = new Map([['hedge-pear', PEAR]]);
    for (const box of inOrder) {
      const planned = planJoint(
        planInputOf(box.plan, RIGS[box.rigId as RigId], ownWoods, box.plan.opening.mm).input,
      );
      if (!planned.ok) throw new Error(`${box.name}: ${JSON.stringify(planned.error)}`);
      expect(planned.value.wall.wall).toBeGreaterThanOrEqual(planned.value.wall.least);
      expect(box.plan.aim).not.toMatchObject({ by: 'fit', clearance: null });
    }
  });
});

describe('its photos', () => {
  const refs = inOrder.flatMap((box) => box.photos);

  test('are each shown by one box, and none is shown without its bytes', () => {
    expect(refs.map(({ id }) => id).sort()).toEqual(demo.photos.map(({ id }) => id).sort());
    expect(new Set(refs.map(({ id }) => id)).size).toBe(refs.length);
  });

  test('show two boxes of every family, taken before they were closed', () => {
    for (const { name } of SCENARIO.kinds)
      expect(inOrder.filter((box) => box.name.startsWith(name) && box.photos.length > 0)).toHaveLength(2);
    for (const { closing, photos } of inOrder)
      for (const [i, { at }] of photos.entries()) {
        expect(at).toBeGreaterThan(photos[i - 1]?.at ?? 0);
        expect(at).toBeLessThan(closing?.at ?? 0);
      }
  });
});

describe('its set-ups', () => {
  test('fold without a stray, a quarrel or a stranger', () => {
    expect(runs.size).toBeGreaterThan(230);
    const odd = [...runs.values()].filter((run) => run.stray.length > 0 || run.contested || run.readOnly);
    expect(odd).toEqual([]);
  });

  test('are numbered from 1 without a gap, in the order of their times', () => {
    for (const events of runsOf(demo.events).values()) {
      expect(events.map((e) => e.n)).toEqual(events.map((_, i) => i + 1));
      for (const [i, event] of events.entries())
        expect(event.at).toBeGreaterThanOrEqual(events[i - 1]?.at ?? 0);
    }
  });

  test('never cut with a hold point open, and never miss one', () => {
    for (const run of runs.values()) {
      if (run.closed === 'cut') expect([run.withheldBy, run.now]).toEqual([[], null]);
      for (const { step, status } of run.steps)
        if (step.hold) expect(status === 'skipped' || status === 'failed').toBe(false);
    }
  });

  test('tick what the fold says is next, or the step just failed, and a stretch only where one is', () => {
    let stretches = 0;
    for (const events of runsOf(demo.events).values())
      for (const [i, event] of events.entries()) {
        if (event.kind !== 'ticked') continue;
        const before = foldRun(events.slice(0, i)) as RunState;
        const again = before.steps.find((s) => s.step.key === event.steps[0])?.status === 'failed';
        if (event.steps.length > 1) expect(event.steps).toEqual(stretchFromNow(before));
        else if (!again) expect(event.steps[0]).toBe(before.now);
        stretches += event.steps.length > 1 ? 1 : 0;
      }
    expect(stretches).toBeGreaterThan(20);
  });

  test('belong to their boxes, and the cuts to them', () => {
    const named = inOrder.flatMap((box) => box.setUps.map((ref) => ref.runId));
    expect([...named].sort()).toEqual([...runs.keys()].sort());
    for (const [id, box] of boxes) {
      for (const { runId, part } of box.setUps) expect(runs.get(runId)).toMatchObject({ boxId: id, part });
      for (const cut of box.cuts) {
        const run = runs.get(cut.runId ?? '');
        expect(run).toMatchObject({ boxId: id, part: cut.part });
        expect(cut.at).toBeGreaterThan(run?.startedAt ?? Number.POSITIVE_INFINITY);
      }
    }
  });

  test('of the tenon carry over what the recess left standing', () => {
    let carried = 0;
    for (const box of inOrder) {
      const recess = runs.get(box.setUps.findLast((ref) => ref.part === 'recess')?.runId ?? '');
      const first = box.setUps.find((ref) => ref.part === 'tenon')?.runId ?? '';
      const started = demo.events.find((e) => e.runId === first && e.kind === 'started');
      if (!recess || started?.kind !== 'started') continue;
      const banjos = RIGS[box.rigId as keyof typeof RIGS].banjos;
      const expected = carriedOver(recess, started.procedure, movementsBetween(box.plan.route, banjos));
      expect(started.inherited).toEqual(expected);
      carried += expected.length;
    }
    expect(carried).toBeGreaterThan(100);
  });

  test('show every kind of thing that happens', () => {
    const kinds = new Set(demo.events.map((e) => e.kind));
    expect([...kinds].sort()).toEqual(
      ['closed', 'moved', 'paused', 'read', 'resumed', 'started', 'ticked', 'undone'].sort(),
    );
    const states = [...runs.values()];
    expect(states.some((run) => run.closed === 'abandoned')).toBe(true);
    expect(states.some((run) => run.groove)).toBe(true);
    expect(states.some((run) => run.steps.some((s) => s.timeUnknown))).toBe(true);
    expect(states.some((run) => run.steps.some((s) => s.status === 'failed'))).toBe(true);
    expect(states.some((run) => !run.total.exact)).toBe(true);
  });
});

describe('its calendar', () => {
  const zone = process.env.TZ;
  afterEach(() => {
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
  });

  test.each(['UTC', 'Pacific/Kiritimati', 'America/Los_Angeles', 'Asia/Kathmandu'])(
    'does not depend on the machine standing in %s',
    (name) => {
      process.env.TZ = name;
      expect(JSON.stringify(generateDemo(DEMO_SEED, NOW))).toBe(JSON.stringify(demo));
    },
  );
});

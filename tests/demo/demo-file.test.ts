// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { afterEach, describe, expect, test } from 'vitest';
import { demoLog } from '../../src/app/demo-log.ts';
import { sha256 } from '../../src/domain/sha256.ts';
import { MADE_FOR, makeDemo, textOf } from './demo-file.ts';
import { DEMO_SEED, generateDemo } from './generate.ts';
import { boxesOf } from './workshop.ts';

const carried = readFileSync(`${import.meta.dirname}/../../shared/demo-log.json`, 'utf8');
const file = await makeDemo();

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

describe('the demo that the app carries', () => {
  test('is what the generator makes; else: node tests/tools/make-demo.mjs', () => {
    expect(carried === textOf(file)).toBe(true);
  });

  test('weighs little', () => {
    expect(gzipSync(carried, { level: 9 }).length).toBeLessThan(150_000);
  });

  test('comes out of the file as it was made', () => {
    process.env.TZ = 'UTC';
    const made = generateDemo(DEMO_SEED, MADE_FOR);
    const { records, events } = demoLog(file, MADE_FOR);
    expect(new Map(records.map((each) => [each.id, each]))).toEqual(
      new Map(made.records.map((each) => [each.id, each])),
    );
    expect(events).toEqual(made.events);
  });

  test('has the bytes of every photo that a box shows, whole, and no others', async () => {
    const log = demoLog(file, MADE_FOR);
    const shown = [...boxesOf(log).values()].flatMap(({ photos }) => photos.map(({ id }) => id));
    expect(shown.length).toBeGreaterThan(6);
    expect(log.photos.map(({ full }) => full.id).sort()).toEqual([...shown].sort());
    for (const { full, thumbnail } of log.photos) {
      expect([full.id, full.bytes]).toEqual([thumbnail.id, thumbnail.bytes]);
      expect(sha256(full.bytes)).toBe(full.sha256);
      // The signature of a PNG and the width in its header (W3C, Portable Network Graphics, 5.2 and 11.2.2).
      const view = new DataView(full.bytes);
      expect([view.getUint32(0), view.getUint32(4)]).toEqual([0x89504e47, 0x0d0a1a0a]);
      expect([view.getUint32(16), view.getUint32(20)]).toEqual([full.width, full.height]);
      expect(full.bytes.byteLength).toBeLessThan(6_000);
    }
    expect(new Set(log.photos.map(({ full }) => full.sha256)).size).toBe(log.photos.length);
  });
});

describe('opened', () => {
  const HOURS = 3_600_000;
  const zones = ['UTC', 'Pacific/Kiritimati', 'America/Los_Angeles', 'Asia/Kathmandu', 'Australia/Lord_Howe'];
  const moments = [Date.UTC(2026, 6, 1, 12), Date.UTC(2027, 0, 15, 0, 3), Date.UTC(2031, 9, 30, 23, 59)];

  test.each(zones.flatMap((name) => moments.map((now) => [name, new Date(now).toISOString()] as const)))(
    'in %s at %s, was made in the shop hours and on the days of the clock on the wall',
    (timeZone, iso) => {
      process.env.TZ = timeZone;
      const now = Date.parse(iso);
      const day = new Intl.DateTimeFormat('sv-SE', { timeZone, dateStyle: 'short' });
      const hour = new Intl.DateTimeFormat('en-GB', { timeZone, hour: 'numeric', hourCycle: 'h23' });
      const boxes = [...boxesOf(demoLog(file, now)).values()];
      for (const box of boxes) {
        const first = box.cuts[0]?.at ?? 0;
        expect(box.startedOn).toBe(day.format(first));
        if (box.closing === null) continue;
        expect(Number(hour.format(first))).toBeGreaterThanOrEqual(9);
        expect(Number(hour.format(first))).toBeLessThanOrEqual(18);
        expect(first).toBeLessThan(now - 24 * HOURS);
        expect(first).toBeGreaterThan(now - 733 * 24 * HOURS);
        for (const later of box.lidChecks) expect(later.on).toBe(day.format(later.at));
      }
      expect(boxes.filter(({ closing }) => closing === null)).toHaveLength(1);
    },
  );

  test('at another moment, stops as long before it', () => {
    const last = (now: number) => Math.max(...demoLog(file, now).events.map(({ at }) => at)) - now;
    expect(last(MADE_FOR + 12_345_678)).toBe(last(MADE_FOR));
    expect(last(MADE_FOR)).toBe(-45_000);
  });
});

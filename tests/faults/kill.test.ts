import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { foldRun } from '../../src/domain/setup/fold.ts';
import { planBox, startSetUp } from '../browser/at-the-lathe.ts';
import { hasStarted, isReadyForOffline } from '../browser/page-state.ts';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { openKillablePhone } from './killable-phone.ts';

/** The long attack: KILLS=200 npx vitest run --config tests/browser/vitest.config.ts faults/kill */
const KILLS = Number(process.env.KILLS ?? 30);
const SEED = Number(process.env.SEED ?? 1);

/** mulberry32: small, seeded, good enough to vary moments. */
const seeded = (seed: number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** Every set-up event as it lies in the store. */
const stored = (page: Page): Promise<SetUpEvent[]> =>
  page.evaluate(
    () =>
      new Promise<SetUpEvent[]>((resolve, reject) => {
        const open = indexedDB.open('lidwright');
        open.onerror = () => reject(open.error);
        open.onsuccess = () => {
          const all = open.result.transaction('events').objectStore('events').getAll();
          all.onsuccess = () => {
            open.result.close();
            resolve(all.result);
          };
        };
      }),
  );

const stepNow = (page: Page) => page.locator('main[data-step]').getAttribute('data-step');
const button = (page: Page, name: 'Pass' | 'Undo') => page.getByRole('button', { name, exact: true });

/** Forward, and back again before the end: the set-up never runs out of taps. */
const nextTap = (events: readonly SetUpEvent[], forward: boolean): 'Pass' | 'Undo' => {
  const settled = foldRun(events)?.steps.filter((step) => step.status === 'passed').length ?? 0;
  if (settled === 0) return 'Pass';
  return settled > 9 ? 'Undo' : forward ? 'Pass' : 'Undo';
};

test(
  `after each of ${KILLS} kills every acknowledged tap is there, as it was, and at most the one in flight besides`,
  async () => {
    const server = await serve({ port: 5334 });
    const first = await openPhone();
    await first.page.goto(server.url);
    await isReadyForOffline(first.page);
    await planBox(first.page);
    await startSetUp(first.page, server.url);
    const url = first.page.url();
    await first.context.close();
    await server.stop();

    const random = seeded(SEED);
    const sessions = new Set<string>();
    let acknowledged: SetUpEvent[] = [];
    let inFlight = 0;
    for (let kill = 0; kill < KILLS; kill += 1) {
      const phone = await openKillablePhone(first.profile);
      const { page } = phone;
      await page.goto(url);
      await hasStarted(page);
      await page.locator('main[data-step]').waitFor();

      const found = await stored(page);
      expect(found.slice(0, acknowledged.length), `kill ${kill}, seed ${SEED}`).toEqual(acknowledged);
      const extra = found.length - acknowledged.length;
      if (kill > 0) {
        expect(extra, `kill ${kill}, seed ${SEED}`).toBeLessThanOrEqual(1);
        inFlight += extra;
      }
      acknowledged = found;

      // One tap that is acknowledged, then one that the kill may or may not catch.
      const tapAndWait = nextTap(acknowledged, random() < 0.7);
      const before = await stepNow(page);
      await button(page, tapAndWait).click();
      await page.locator(`main[data-step]:not([data-step="${before}"])`).waitFor();
      acknowledged = await stored(page);
      expect(acknowledged).toHaveLength(found.length + 1);
      sessions.add(acknowledged.at(-1)?.session ?? '');
      await page.waitForTimeout(400);

      const last = button(page, nextTap(acknowledged, random() < 0.7));
      const place = await last.boundingBox();
      if (!place) throw new Error('the button is not on screen');
      await page.mouse.move(place.x + place.width / 2, place.y + place.height / 2);
      await page.mouse.down();
      const tapping = page.mouse.up().catch(() => {});
      await new Promise((resolve) => setTimeout(resolve, random() * 60));
      expect(await phone.kill()).toBe('SIGKILL');
      await tapping;
    }
    console.log(`${KILLS} kills: ${acknowledged.length} events, ${inFlight} taps in flight had got through`);
    // Every kill was a new page load, and the time away is marked as not exactly known.
    expect(sessions.size).toBe(KILLS);
    const run = foldRun(acknowledged);
    expect(run?.stray).toEqual([]);
    expect(run?.contested).toBe(false);
    expect(run?.timeline.filter(({ gap }) => !gap.exact).length).toBeGreaterThan(0);
    expect(run?.total.exact).toBe(false);
  },
  KILLS * 60_000,
);

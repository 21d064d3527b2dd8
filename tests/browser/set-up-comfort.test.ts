import { mkdir } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../src/domain/setup/default-procedures.ts';
import type { Happening } from '../../src/domain/setup/events.ts';
import { MOVEMENTS } from '../../src/domain/setup/procedure.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { typeSize } from '../../src/platform/look.ts';
import { openPhone } from '../tools/browser.mjs';
import { planBox, startSetUp } from './at-the-lathe.ts';
import { keepSettings, openRun, pass, plantRun, runIdOf, serveBuilt } from './set-up-in-store.ts';
import { faultsOnScreen, lowContrast, smallestType } from './set-up-measure.ts';

/** SHOTS=folder keeps a picture of every screen; LONG=1 tries every distance, and each step failed and asked why. */
const SHOTS = process.env.SHOTS;
const LONG = process.env.LONG === '1';
/** The longest words of each kind stand for the rest. */
const inShort =
  /^true-bar (?!bar)|(?<!(seat-chuck|lock-post|board)) (why|failed)$|^re-opened by (?!chuck|post)/;

const length = (value: number, text: string) => ({ mm: mm(value), text });
const gap = (value: number, text: string): Happening => ({
  kind: 'read',
  step: 'gap',
  reading: { kind: 'gap', gap: length(value, text), over: length(203.2, '8.000 in'), plane: 'either' },
});

const longCount: Happening = { kind: 'read', step: 'dry-run', reading: { kind: 'turns', turns: 12.75 } };
const toTheCut = async (page: Page, part = 'recess') => {
  await page.evaluate((part) => {
    location.hash = `#/bench/cut-${part}`;
  }, part);
  await page.locator('.cutting .go').waitFor();
};

/** Size of glass and the distances promised on it, cm. */
const GLASS = [
  { width: 320, height: 640, distances: LONG ? [40, 70] : [70] },
  { width: 390, height: 844, distances: LONG ? [40, 70, 100] : [100] },
  ...(LONG ? [{ width: 360, height: 640, distances: [70] }] : []),
  { width: 844, height: 390, distances: LONG ? [40, 70, 100] : [70] },
];

let server: Awaited<ReturnType<typeof serveBuilt>>;
let phone: Awaited<ReturnType<typeof openPhone>>;
const runs: Record<string, string> = {};

const tap = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const before = (procedure: keyof typeof DEFAULT_PROCEDURES, key: string): Happening[] => {
  const keys = DEFAULT_PROCEDURES[procedure].steps.map((step) => step.key);
  return keys
    .slice(0, keys.indexOf(key))
    .filter((k) => k !== 'pick-up')
    .map((k) => pass(k));
};
const through = (procedure: keyof typeof DEFAULT_PROCEDURES): Happening[] => [
  ...before(procedure, 'clear'),
  pass('clear'),
];

interface Screen {
  readonly name: string;
  readonly events: readonly Happening[];
  readonly open?: (page: Page) => Promise<void>;
}
const fail = (step: string): Happening => ({ kind: 'ticked', steps: [step], verdict: 'fail' });
const skip = (step: string): Happening => ({ kind: 'ticked', steps: [step], verdict: 'skip' });

const screensOf = (procedure: keyof typeof DEFAULT_PROCEDURES): Screen[] => [
  ...DEFAULT_PROCEDURES[procedure].steps.flatMap(({ key }): Screen[] =>
    key === 'pick-up'
      ? [
          {
            name: `${procedure} pick-up`,
            events: [
              ...through(procedure),
              { kind: 'moved', what: 'cutter-changed', groove: true },
              pass('isolate'),
              pass('cutter'),
            ],
          },
        ]
      : [
          { name: `${procedure} ${key}`, events: before(procedure, key) },
          {
            name: `${procedure} ${key} failed`,
            events: [...before(procedure, key), fail(key)],
            open: async (page) => {
              // With the last step failed too, nothing is left but the list of what forbids the cut.
              const { steps } = DEFAULT_PROCEDURES[procedure];
              const isLast = key === steps.at(-1)?.key;
              if (!isLast) await tap(page, /All steps/);
              const at = isLast ? 0 : steps.findIndex((step) => step.key === key);
              await page.locator('.list button').nth(at).click();
            },
          },
          {
            name: `${procedure} ${key} why`,
            events: before(procedure, key),
            open: async (page) => {
              await page.locator('button.sentence').click();
              await page.locator('.panel').waitFor();
            },
          },
        ],
  ),
];

const OTHERS: Screen[] = [
  ...MOVEMENTS.map(
    (what): Screen => ({
      name: `re-opened by ${what}`,
      events: [...through('board-and-cone'), { kind: 'moved', what }],
    }),
  ),
  { name: 'what moved', events: [], open: (page) => tap(page, /moved/) },
  { name: 'paused', events: [pass('isolate'), { kind: 'paused' }] },
  { name: 'ready', events: through('board-and-cone') },
  {
    name: 'withheld',
    events: [...before('board-and-cone', 'clear'), skip('clear'), skip('isolate'), skip('shake')],
  },
  { name: 'cut', events: [...through('board-and-cone'), longCount], open: (page) => toTheCut(page) },
  { name: 'cut, not counted', events: through('board-and-cone'), open: (page) => toTheCut(page) },
  {
    name: 'cut, what moved',
    events: through('board-and-cone'),
    open: async (page) => {
      await toTheCut(page);
      await page.locator('.cutting .moved').click();
    },
  },
  { name: 'closed', events: [...through('board-and-cone'), { kind: 'closed', how: 'cut' }] },
  { name: 'all steps', events: before('board-and-cone', 'shake'), open: (page) => tap(page, /All steps/) },
  {
    name: 'reading form',
    events: before('board-and-cone', 'gap'),
    open: async (page) => {
      await tap(page, 'Reading');
      await page.locator('form.reading').waitFor();
    },
  },
  {
    name: 'turns form',
    events: before('board-and-cone', 'dry-run'),
    open: async (page) => {
      await tap(page, 'Other');
      await page.locator('form.reading').waitFor();
    },
  },
  {
    name: 'turns noted',
    events: [...before('board-and-cone', 'dry-run'), longCount],
  },
  {
    name: 'sweep form',
    events: before('true-bar', 'bar-slide'),
    open: async (page) => {
      await tap(page, 'Reading');
      await page.locator('form.reading').waitFor();
    },
  },
  {
    name: 'verdict',
    events: [
      ...before('board-and-cone', 'gap'),
      gap(0.1016, '0.004 in'),
      gap(0.762, '0.030 in'),
      gap(2.54, '100 thou'),
    ],
    open: async (page) => {
      await tap(page, 'Verdict');
      await page.locator('h2.grade').waitFor();
    },
  },
];

beforeAll(async () => {
  server = await serveBuilt(5370);
  phone = await openPhone();
  const { page } = phone;
  await page.goto(server.url);
  await planBox(page);
  await startSetUp(page, server.url);
  runs['board-and-cone'] = runIdOf(page);
  // The other procedure, and a tenon that takes over what the recess's set-up left: both from the same start.
  await page.evaluate(
    (procedure) =>
      new Promise<void>((resolve) => {
        const open = indexedDB.open('lidwright');
        open.onsuccess = () => {
          const tx = open.result.transaction(['events', 'records'], 'readwrite');
          const store = tx.objectStore('events');
          const records = tx.objectStore('records');
          const kept = records.getAll();
          kept.onsuccess = () => {
            const box = kept.result.find(({ kind }) => kind === 'box');
            records.put({
              ...box,
              body: {
                ...box.body,
                setUps: [...box.body.setUps, { part: 'tenon', runId: 'tenon', seq: 1000 }],
              },
            });
          };
          const all = store.getAll();
          all.onsuccess = () => {
            const [started] = all.result;
            store.put({ ...started, runId: 'true-bar', procedureId: 'true-bar', procedure });
            store.put({
              ...started,
              runId: 'tenon',
              part: 'tenon',
              fromRun: started.runId,
              inherited: ['board', 'cone', 'square-banjo', 'lock-post', 'gap', 'banjo-back'].map((key) => ({
                key,
                since: started.at,
              })),
            });
          };
          tx.oncomplete = () => {
            open.result.close();
            resolve();
          };
        };
      }),
    DEFAULT_PROCEDURES['true-bar'],
  );
  runs['true-bar'] = 'true-bar';
  runs.tenon = 'tenon';
  if (SHOTS) await mkdir(SHOTS, { recursive: true });
});
afterAll(async () => {
  await phone.context.close();
  await server.stop();
});

const show = async (run: string, { events, open }: Screen) => {
  const { page } = phone;
  const id = runs[run] ?? '';
  await plantRun(page, id, events);
  await page.evaluate(() => {
    location.hash = '#/boxes';
  });
  await page.locator('nav.places').waitFor();
  await page.evaluate((run) => {
    location.hash = `#/set-up/${run}`;
  }, id);
  await page.locator('main.set-up:not([aria-busy])').waitFor();
  // The run is read again behind what this tab knew of it: planted events are news to it.
  await page.waitForTimeout(80);
  await open?.(page);
  // The planned turns and a drawing come a moment later.
  await page.waitForTimeout(80);
  return page;
};

describe.each(GLASS.flatMap((glass) => glass.distances.map((distanceCm) => ({ ...glass, distanceCm }))))(
  '$width x $height at $distanceCm cm',
  ({ width, height, distanceCm }) => {
    beforeAll(async () => {
      await phone.page.setViewportSize({ width, height });
    });

    test.each([
      ['board-and-cone', 'in', screensOf('board-and-cone')],
      ['true-bar', 'mm', screensOf('true-bar')],
      ['board-and-cone', 'mm', OTHERS.filter(({ name }) => name !== 'sweep form')],
      [
        'board-and-cone',
        'in',
        OTHERS.filter(({ name }) => /form|verdict|noted/.test(name) && name !== 'sweep form'),
      ],
      ['true-bar', 'in', OTHERS.filter(({ name }) => name === 'sweep form')],
      [
        'tenon',
        'in',
        [
          { name: 'tenon start', events: [] },
          {
            name: 'tenon cut, not counted',
            events: through('board-and-cone'),
            open: (page: Page) => toTheCut(page, 'tenon'),
          },
          { name: 'tenon all steps', events: [], open: (page: Page) => tap(page, /All steps/) },
        ],
      ],
    ] as const)(
      '%s, %s: nothing cut off, overlapping or scrolling; type as large as promised, and standing out 7:1',
      async (run, unit, screens) => {
        await keepSettings(phone.page, { distanceCm, unit, sound: false, vibration: false });
        await openRun(phone.page, server.url, runs[run] ?? '');
        // On a stand the glass holds type for 70 cm, and no more.
        const legible = Math.min(distanceCm, width > height ? 70 : 100);
        const least = typeSize(16, legible * 10, 160 / 25.4) - 0.1;
        const faults: string[] = [];
        for (const screen of screens.filter(({ name }) => LONG || !inShort.test(name))) {
          const page = await show(run, screen);
          for (const fault of await faultsOnScreen(page)) faults.push(`${screen.name}: ${fault}`);
          for (const text of await lowContrast(page)) faults.push(`${screen.name}: ${text}`);
          const smallest = await smallestType(page);
          if (smallest.px < least)
            faults.push(
              `${screen.name}: “${smallest.what}” is ${smallest.px.toFixed(1)} px, not ${least.toFixed(1)}`,
            );
          if (SHOTS)
            await page.screenshot({
              path: `${SHOTS}/${width}-${distanceCm}-${unit}-${screen.name.replaceAll(' ', '-')}.png`,
            });
        }
        expect(faults).toEqual([]);
      },
      240_000,
    );
  },
);

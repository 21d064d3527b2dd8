// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import {
  closeBox,
  IN_LINE,
  recordLidCheck,
  recordSeat,
  reopenBox,
  takeBackSeat,
} from '../../src/app/after-fit.ts';
import { boxById, runsOf } from '../../src/app/boxes.ts';
import { recordPass, takeBackPass } from '../../src/app/cutting.ts';
import { openRun, record, run, runById } from '../../src/app/set-up-run.ts';
import { startBox } from '../../src/app/start-box.ts';
import { startSetUp } from '../../src/app/start-set-up.ts';
import { RIGHT, recordTrial, takeBackTrial } from '../../src/app/trials.ts';
import { openTrial } from '../../src/domain/box/open-trial.ts';
import type { Box } from '../../src/domain/box/records.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { eventsOfRun } from '../../src/storage/events.ts';
import { commitUnheard } from '../storage/commit-unheard.ts';
import { freshPhone, PLAN } from './faulty-store.ts';

beforeEach(freshPhone);
afterEach(() => vi.restoreAllMocks());

const onHand = async () => {
  const found = await boxById('box-1');
  if (!found) throw new Error('no box');
  return found;
};
const begun = async () => {
  await startSetUp('run-1', await onHand(), 'recess');
  const found = await runById('run-1');
  if (!found) throw new Error('no run');
  return found;
};
const kinds = async (id: string) => (await eventsOfRun('mine', id)).map(({ kind }) => kind);
const pass = async (id: string, isLast: boolean) =>
  recordPass('box-1', {
    id,
    part: 'recess',
    run: (await runById('run-1')) ?? (await begun()),
    depth: { mm: mm(1), text: '1 mm' },
    correction: false,
    isLast,
  });

type Stage = readonly [name: string, act: () => Promise<boolean>, count: (box: Box) => number];
const STAGES: readonly Stage[] = [
  ['a trial fit', () => recordTrial('box-1', 'it', RIGHT), ({ trials }) => trials.length],
  ['a seating', () => recordSeat('box-1', 'it', IN_LINE), ({ seats }) => seats.length],
  ['a lid check', () => recordLidCheck('box-1', 'it', 'free'), ({ lidChecks }) => lidChecks.length],
  ['a pass', () => pass('it', false), ({ cuts }) => cuts.length],
  ['the last pass, which closes its set-up', () => pass('it', true), ({ cuts }) => cuts.length],
  [
    'a set-up',
    async () => startSetUp('it', await onHand(), 'tenon'),
    ({ setUps }) => setUps.filter(({ part }) => part === 'tenon').length,
  ],
];

describe('what a stage records', () => {
  beforeEach(async () => {
    await begun();
  });

  test.each(STAGES)(
    '%s stands once, whatever the store answered and however often it was tapped',
    async (_, act, count) => {
      // Both tries of the first tap are committed, or rather the first is and the second finds it, and neither is heard.
      commitUnheard(2);
      await act();
      vi.restoreAllMocks();
      expect(await act()).toBe(true);
      expect(await act()).toBe(true);
      expect(count((await onHand()).box)).toBe(1);
    },
  );

  test('saved again after a later entry, it keeps its place among them, with the answers as they are now', async () => {
    await recordTrial('box-1', 'it', RIGHT);
    await recordSeat('box-1', 'later', IN_LINE);
    await recordTrial('box-1', 'it', { ...RIGHT, right: false });
    const { setUps, trials, seats } = (await onHand()).box;
    expect([...setUps, ...trials, ...seats].map(({ seq }) => seq)).toEqual([1, 2, 3]);
    expect(trials[0]?.right).toBe(false);
  });

  test('the close that comes with the last pass is there once, and goes when the pass is taken back', async () => {
    commitUnheard(2);
    await pass('last', true);
    vi.restoreAllMocks();
    await pass('last', true);
    expect(await kinds('run-1')).toEqual(['started', 'closed']);
    const { box } = await onHand();
    const [cut] = box.cuts;
    const closed = (await runsOf(box)).get('run-1');
    if (!cut || !closed) throw new Error('no pass');
    expect(closed.closed).toBe('cut');
    expect(await takeBackPass('box-1', box.cuts, cut, closed)).toBe(true);
    expect((await runById('run-1'))?.closed).toBeNull();
    expect((await onHand()).box.cuts).toEqual([]);
  });

  test('a trial and a seating are taken back; a closed box is opened again', async () => {
    await recordTrial('box-1', 'tight', { ...RIGHT, right: false });
    expect(openTrial((await onHand()).box)?.id).toBe('tight');
    await takeBackTrial('box-1', 'tight');
    await recordSeat('box-1', 'seat', IN_LINE);
    await takeBackSeat('box-1', 'seat');
    await closeBox('box-1', {
      outcome: 'kept',
      scrapReason: null,
      hardener: 'none',
      hardenerBeforePass: null,
      outsideTurned: null,
      note: '',
    });
    expect((await onHand()).box).toMatchObject({ trials: [], seats: [], closing: { outcome: 'kept' } });
    await reopenBox('box-1');
    expect((await onHand()).box.closing).toBeNull();
  });
});

describe('an event of a set-up', () => {
  test('on its way when another set-up is opened, it stands in its own and not in that one', async () => {
    await begun();
    await startBox('box-2', PLAN);
    const other = await boxById('box-2');
    if (!other) throw new Error('no box');
    await startSetUp('run-2', other, 'recess');
    await openRun('run-1');
    const moving = record({ kind: 'moved', what: 'dial-knocked' });
    await openRun('run-2');
    expect(await moving).toBe(true);
    expect(run.value?.timeline.map(({ event }) => event.kind)).toEqual(['started']);
    expect(await kinds('run-1')).toEqual(['started', 'moved']);
    expect(await kinds('run-2')).toEqual(['started']);
    expect(await record({ kind: 'ticked', steps: ['isolate'], verdict: 'pass' })).toBe(true);
    expect(run.value?.runId).toBe('run-2');
  });

  test('while one is on its way in another set-up, a tap in this one is not lost', async () => {
    const first = await begun();
    await startSetUp('run-2', await onHand(), 'tenon');
    await openRun('run-2');
    const both = [record({ kind: 'moved', what: 'dial-knocked' }, first), record({ kind: 'paused' })];
    expect(await Promise.all(both)).toEqual([true, true]);
    expect(await kinds('run-2')).toEqual(['started', 'paused']);
  });

  test('committed unheard, it stands once', async () => {
    await begun();
    await openRun('run-1');
    commitUnheard(1);
    expect(await record({ kind: 'paused' })).toBe(true);
    expect(await kinds('run-1')).toEqual(['started', 'paused']);
  });
});

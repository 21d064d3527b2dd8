// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { boxById } from '../../src/app/boxes.ts';
import { changeSettings, openSession } from '../../src/app/session.ts';
import { startBox } from '../../src/app/start-box.ts';
import { startSetUp } from '../../src/app/start-set-up.ts';
import type { Plan } from '../../src/domain/log/records.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { forget } from '../../src/storage/connection.ts';
import { eventsOfRun } from '../../src/storage/events.ts';
import { SetUp } from '../../src/ui/set-up/set-up.tsx';

const length = (value: number, text: string) => ({ mm: mm(value), text });
const PLAN: Plan = {
  route: 'recess-first',
  recessIn: 'lid',
  lid: { wood: 'Apple', grain: 'end' },
  base: { wood: 'Apple', grain: 'end' },
  insert: null,
  pitch: length(2.54, '10 tpi'),
  opening: length(50, '50 mm'),
  outside: null,
  aim: { by: 'fit', clearance: null },
  threads: 3,
  passes: 'two-thirds',
};

let runId = '';

beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  forget();
  await openSession();
  await changeSettings({ sound: false, vibration: false });
  const boxId = await startBox(PLAN);
  const onHand = await boxById(boxId ?? '');
  if (!onHand) throw new Error('no box');
  runId = (await startSetUp(onHand, 'recess')) ?? '';
  render(<SetUp runId={runId} />);
  await sentence('Off at the wall. Spindle still. Cutter out.');
});
afterEach(cleanup);

const sentence = (text: string) => waitFor(() => screen.getByRole('heading', { level: 1, name: text }));
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
/** Longer than the time for which a verdict ignores a second tap. */
const later = () => new Promise((resolve) => setTimeout(resolve, 360));
const kinds = async () => (await eventsOfRun('mine', runId)).map((event) => event.kind);
const ticks = async () =>
  (await eventsOfRun('mine', runId)).filter((e): e is SetUpEvent & { kind: 'ticked' } => e.kind === 'ticked');

/** Passes steps until the given sentence is on screen. */
const passUntil = async (wanted: string) => {
  for (let i = 0; i < 20 && !screen.queryByRole('heading', { level: 1, name: wanted }); i++) {
    const before = screen.getByRole('heading', { level: 1 }).textContent;
    press('Pass');
    await waitFor(() => expect(screen.getByRole('heading', { level: 1 }).textContent).not.toBe(before));
    await later();
  }
  await sentence(wanted);
};

describe('a set-up on screen', () => {
  it('a pass is on disk before the next step comes up', async () => {
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    expect(await ticks()).toMatchObject([{ steps: ['isolate'], verdict: 'pass' }]);
  });

  it('a second tap within 350 ms is the same tap', async () => {
    press('Pass');
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    press('Pass');
    await later();
    expect(await ticks()).toHaveLength(1);
  });

  it('undo takes the tap back at once, and the step is asked again', async () => {
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    press('Undo');
    await sentence('Off at the wall. Spindle still. Cutter out.');
    expect(await kinds()).toEqual(['started', 'ticked', 'undone']);
  });

  it('done at once ticks the stretch up to the next hold point, never past it', async () => {
    await passUntil('Board flat to the faceplate, edge down on the bed.');
    press('All 3 done');
    await sentence('Collar down. Lock the post.');
    expect((await ticks()).at(-1)).toMatchObject({ steps: ['board', 'cone', 'square-banjo'], verdict: 'pass' });
    expect(screen.queryByRole('button', { name: /done/ })).toBeNull();
  });

  it('a failed step stays in hand until it is put right or left', async () => {
    press('Fail');
    await waitFor(() => screen.getByText('Failed. Put it right, then Pass.'));
    await sentence('Off at the wall. Spindle still. Cutter out.');
    press('Leave it, go on');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
  });

  it('with a hold point skipped the cut is withheld, and the step can be gone back to', async () => {
    press('Skip');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    await later();
    await passUntil('Don’t switch on.');
    expect(screen.queryByRole('link', { name: 'To the cut' })).toBeNull();
    press(/Off at the wall/);
    await sentence('Off at the wall. Spindle still. Cutter out.');
    press('Pass');
    await sentence('Set. Nothing more to check.');
    expect(screen.getByRole('link', { name: 'To the cut' }).getAttribute('href')).toBe('#/bench/cut-recess');
  }, 20_000);

  it('something moved: stop first, then what, then exactly its steps again', async () => {
    await passUntil('Push and pull at the chuck, one finger. Nothing gives.');
    press('Something moved');
    await sentence('Stop. Off at the wall.');
    press('Dial or cross-slide');
    await sentence('Off at the wall. Spindle still. Cutter out.');
    expect(screen.getByText('Lost its setting: dial or cross-slide')).toBeTruthy();
    press('Pass');
    // Nothing but the plug was settled and lost: the dial is not set yet at this point.
    await sentence('Push and pull at the chuck, one finger. Nothing gives.');
  }, 20_000);

  it('every step with how it stands is one tap away', async () => {
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    press(/All steps/);
    const rows = within(await waitFor(() => screen.getByRole('list', { name: 'All steps' }))).getAllByRole('button');
    expect(rows).toHaveLength(15);
    expect(rows[0]?.textContent).toMatch(/set since/);
    expect(rows.find((row) => /old groove/.test(row.textContent ?? ''))?.textContent).toMatch(/not needed/);
  });

  it('no clock on a hold point; a running one on other steps', async () => {
    expect(screen.queryByText(/\d:\d\d/)).toBeNull();
    await passUntil('Board flat to the faceplate, edge down on the bed.');
    expect(screen.getAllByText(/\d:\d\d/).length).toBeGreaterThan(0);
  });

  it('a reading is kept with its step, in the words it was typed in', async () => {
    await passUntil('Back off the cone. Still no card at any corner?');
    press('Reading');
    fireEvent.input(screen.getByLabelText('Thickest that goes in'), { target: { value: '4 thou' } });
    fireEvent.input(screen.getByLabelText('Over a length of'), { target: { value: '0' } });
    press('Keep it');
    await waitFor(() => screen.getByRole('alert'));
    expect((screen.getByLabelText('Over a length of') as HTMLInputElement).value).toBe('0');
    fireEvent.input(screen.getByLabelText('Over a length of'), { target: { value: '80 mm' } });
    press('Keep it');
    await waitFor(async () =>
      expect((await eventsOfRun('mine', runId)).at(-1)).toMatchObject({
        kind: 'read',
        step: 'gap',
        reading: { kind: 'gap', gap: { text: '4 thou' }, over: { mm: 80 } },
      }),
    );
  }, 20_000);

  it('letters give a verdict; not in a field, not on repeat, not when switched off', async () => {
    fireEvent.keyDown(document.body, { key: 's', repeat: true });
    await changeSettings({ letters: false });
    fireEvent.keyDown(document.body, { key: 's' });
    await changeSettings({ letters: true });
    fireEvent.keyDown(document.body, { key: 's' });
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    expect(await ticks()).toMatchObject([{ steps: ['isolate'], verdict: 'skip' }]);
  });

  it('focus rests on Pass when a step comes up', async () => {
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Pass' }));
  });
});

// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, configure, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { boxById } from '../../src/app/boxes.ts';
import { recordPass } from '../../src/app/cutting.ts';
import { changeRig } from '../../src/app/rigs.ts';
import { changeSettings, openSession } from '../../src/app/session.ts';
import { run } from '../../src/app/set-up-run.ts';
import { startBox } from '../../src/app/start-box.ts';
import { startSetUp } from '../../src/app/start-set-up.ts';
import type { Plan } from '../../src/domain/box/records.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { newId } from '../../src/platform/ids.ts';
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
  const boxId = newId();
  await startBox(boxId, PLAN);
  const onHand = await boxById(boxId);
  if (!onHand) throw new Error('no box');
  runId = newId();
  await startSetUp(runId, onHand, 'recess');
  render(<SetUp runId={runId} />);
  await sentence('Off at the wall. Spindle still. Cutter out.');
});
afterEach(cleanup);
// Parts of the screen come as chunks, and these tests share two cores with many others.
configure({ asyncUtilTimeout: 5_000 });

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
    // Time stands still, however slow the machine.
    const now = vi.spyOn(performance, 'now').mockReturnValue(1000);
    press('Pass');
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    now.mockReturnValue(1349);
    press('Pass');
    now.mockReturnValue(1351);
    press('Pass');
    await sentence('Board flat to the faceplate, edge down on the bed.');
    now.mockRestore();
    expect(await ticks()).toMatchObject([{ steps: ['isolate'] }, { steps: ['protect'] }]);
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
    press('3 steps done');
    await sentence('Collar down. Lock the post.');
    expect((await ticks()).at(-1)).toMatchObject({
      steps: ['board', 'cone', 'square-banjo'],
      verdict: 'pass',
    });
    expect(screen.queryByRole('button', { name: /done/ })).toBeNull();
  });

  it('a failed step stays in hand until it is put right or left', async () => {
    press('Fail');
    await waitFor(() => screen.getByText('Put it right, then Pass.'));
    await sentence('Off at the wall. Spindle still. Cutter out.');
    press('Leave it');
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
    press('Dial, slide');
    await sentence('Off at the wall. Spindle still. Cutter out.');
    expect(screen.getByText('Lost its setting: dial, slide')).toBeTruthy();
    press('Pass');
    // Nothing but the plug was settled and lost: the dial is not set yet at this point.
    await sentence('Push and pull at the chuck, one finger. Nothing gives.');
  }, 20_000);

  it('every step with how it stands is one tap away', async () => {
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    press(/All steps/);
    const rows = within(await waitFor(() => screen.getByRole('list', { name: 'All steps' }))).getAllByRole(
      'button',
    );
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
    await passUntil('Back off the cone. Still no card goes in at any corner.');
    press('Reading');
    await waitFor(() => screen.getByLabelText('Or type it'));
    fireEvent.input(screen.getByLabelText('Or type it'), { target: { value: '4 thou' } });
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

  it('focus rests on Pass; at a hold point just before it, where a pedal does nothing', async () => {
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    expect(document.activeElement?.contains(screen.getByRole('button', { name: 'Pass' }))).toBe(true);
    expect(document.activeElement).not.toBe(screen.getByRole('button', { name: 'Pass' }));
    await later();
    press('Pass');
    await sentence('Board flat to the faceplate, edge down on the bed.');
    await waitFor(() => expect(document.activeElement).toBe(screen.getByRole('button', { name: 'Pass' })));
  });

  it('why, and what a step guards against, is one tap away; verdicts stay', async () => {
    press('Off at the wall. Spindle still. Cutter out.');
    await waitFor(() => screen.getByText(/Your hands go round the cutter next/));
    expect(screen.getByText('Against injury.')).toBeTruthy();
    press('Pass');
    await sentence('Face shield on. Gloves, rings off. Sleeves, hair back.');
    expect(screen.queryByText(/Your hands go round/)).toBeNull();
  }, 20_000);

  it('a length typed for one set-up does not wait in the form of the next box', async () => {
    await passUntil('Back off the cone. Still no card goes in at any corner.');
    press('Reading');
    fireEvent.input(await screen.findByLabelText(/Over a length of/), { target: { value: '123 mm' } });
    await later();
    cleanup();
    const [nextId, nextRun] = [newId(), newId()];
    await startBox(nextId, PLAN);
    const next = await boxById(nextId);
    if (!next) throw new Error('no box');
    await startSetUp(nextRun, next, 'recess');
    render(<SetUp runId={nextRun} />);
    await sentence('Off at the wall. Spindle still. Cutter out.');
    await passUntil('Back off the cone. Still no card goes in at any corner.');
    press('Reading');
    const over = (await screen.findByLabelText(/Over a length of/)) as HTMLInputElement;
    await later();
    expect(over.value).toBe('');
  }, 20_000);

  it('a gauge is one tap; the length is remembered; the tightest reading gives the verdict', async () => {
    await passUntil('Back off the cone. Still no card goes in at any corner.');
    press('Reading');
    await waitFor(() => screen.getByLabelText('Over a length of'));
    press('paper, 0.004 in');
    // No length yet: nothing is kept, and it says what is missing.
    await waitFor(() => screen.getByRole('alert'));
    fireEvent.input(screen.getByLabelText('Over a length of'), { target: { value: '80 mm' } });
    press('paper, 0.004 in');
    await waitFor(() => screen.getByText('Read: 0.004 in over 80 mm.'));
    expect(screen.getByRole('heading', { level: 2 }).textContent).toMatch(/inside|edge|outside/i);
    press('Again');
    await waitFor(() =>
      expect((screen.getByLabelText('Over a length of') as HTMLInputElement).value).toBe('80 mm'),
    );
    press('card, 0.030 in');
    await waitFor(() => screen.getByText('Tightest of 2: 0.030 in over 80 mm.'));
    // Failed and put right: what was read before no longer counts.
    press('Fail');
    await waitFor(() => expect(screen.queryByText(/Tightest of 2/)).toBeNull());
  }, 30_000);

  it('the count that the plan expects is one tap', async () => {
    await passUntil('Power still off. Crank the whole cut. Count the turns.');
    const keys = await waitFor(() => {
      const found = screen.getAllByRole('button', { name: /turns$/ });
      expect(found).toHaveLength(3);
      return found;
    });
    const name = keys[1]?.getAttribute('aria-label') ?? '';
    press(name);
    await waitFor(() => screen.getByText(name));
    expect((await eventsOfRun('mine', runId)).at(-1)).toMatchObject({
      kind: 'read',
      step: 'dry-run',
      reading: { kind: 'turns' },
    });
  }, 30_000);

  it('a movement after a pass was cut asks to pick up the groove too', async () => {
    await passUntil('Set. Nothing more to check.');
    const state = run.value;
    const boxId = state?.boxId ?? '';
    if (!state) throw new Error('no run');
    const depth = length(1, '1 mm');
    expect(
      await recordPass(boxId, {
        id: newId(),
        part: 'recess',
        run: state,
        depth,
        correction: false,
        isLast: false,
      }),
    ).toBe(true);
    press('Something moved');
    await sentence('Stop. Off at the wall.');
    press('Cutter');
    await sentence('Off at the wall. Spindle still. Cutter out.');
    await later();
    await passUntil('Tip in the old groove by hand, bearing on neither side.');
    expect(screen.getByText('Lost its setting: cutter')).toBeTruthy();
  }, 30_000);

  it('the next piece says what still holds and since when; all steps has it too, and pauses', async () => {
    await passUntil('Set. Nothing more to check.');
    const state = run.value;
    const onHand = await boxById(state?.boxId ?? '');
    if (!state || !onHand) throw new Error('no run');
    await recordPass(onHand.id, {
      id: newId(),
      part: 'recess',
      run: state,
      depth: length(1.6, '1.6 mm'),
      correction: false,
      isLast: true,
    });
    await changeRig(onHand.box.rigId, (rig) => ({ ...rig, banjos: 2 }));
    const next = newId();
    await startSetUp(next, (await boxById(onHand.id)) ?? onHand, 'tenon');
    cleanup();
    render(<SetUp runId={next} />);
    await sentence('Off at the wall. Spindle still. Cutter out.');
    press(/Set since .*: post locked, and \d more/);
    const rows = within(await waitFor(() => screen.getByRole('list', { name: 'All steps' }))).getAllByRole(
      'button',
    );
    expect(rows.find((row) => /Lock the post/.test(row.textContent ?? ''))?.textContent).toMatch(/set since/);
    press('Pause');
    await sentence('Paused');
  }, 30_000);
});

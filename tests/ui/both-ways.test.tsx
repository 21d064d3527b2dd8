// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { allBothWays, askedOf, lotOf, takeLot } from '../../src/app/both-ways.ts';
import { beginBothWays } from '../../src/app/both-ways-trial.ts';
import type { Found } from '../../src/app/findings.ts';
import { openSession } from '../../src/app/session.ts';
import { findingsOf } from '../../src/domain/findings/findings.ts';
import { powerTable } from '../../src/domain/findings/trial-power.ts';
import { forget } from '../../src/storage/connection.ts';
import { BothWays } from '../../src/ui/places/findings/both-ways.tsx';

const FOUND: Found = {
  ...findingsOf({
    rows: [],
    steps: [
      { key: 'square-banjo', sentence: 'Banjo against the square. Clamp it.', guards: ['lean'] },
      { key: 'gap', sentence: 'Back off the cone. Still no card?', guards: ['creep'] },
    ],
    leftOut: {},
  }),
  from: '',
  lastAlike: null,
  trials: {},
  power: powerTable(),
};
const plan = async () => {
  fireEvent.click(await screen.findByRole('button', { name: 'Plan a trial' }));
  return screen.findByLabelText(/How many boxes/);
};
const only = async () => {
  const [trial] = await allBothWays();
  if (!trial) throw new Error('no trial');
  return trial.plan;
};

beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  forget();
  await openSession();
});
afterEach(cleanup);

describe('try it both ways', () => {
  it('draws and keeps the lots before the first box, two and two in every four', async () => {
    render(<BothWays found={FOUND} />);
    const boxes = await plan();
    fireEvent.input(boxes, { target: { value: '12' } });
    fireEvent.click(screen.getByRole('button', { name: 'Draw the lots' }));
    await waitFor(() => screen.getByText(/0 of 12 boxes have taken a lot/));
    const { lots, step } = await only();
    expect(step).toBe('square-banjo');
    for (let from = 0; from < 12; from += 4)
      expect([...lots.slice(from, from + 4)].sort()).toEqual(['with', 'with', 'without', 'without']);
  });

  it('refuses too few boxes beside the field, and keeps what was typed', async () => {
    render(<BothWays found={FOUND} />);
    const boxes = await plan();
    fireEvent.input(boxes, { target: { value: '3' } });
    fireEvent.click(screen.getByRole('button', { name: 'Draw the lots' }));
    await waitFor(() => screen.getByRole('alert'));
    expect((boxes as HTMLInputElement).value).toBe('3');
    expect(await allBothWays()).toEqual([]);
  });

  it('a box takes the next lot once, and is told it before and after', async () => {
    await beginBothWays('square-banjo', 'Banjo against the square. Clamp it.', 8);
    const { lots } = await only();
    expect((await askedOf('one'))?.lot).toBe(lots[0]);
    await takeLot('one');
    await takeLot('one');
    await takeLot('two');
    const plan = await only();
    expect(plan.boxes).toEqual(['one', 'two']);
    expect(lotOf(plan, 'two')).toBe(lots[1]);
    expect((await askedOf('one'))?.lot).toBe(lots[0]);
  });

  it('asks no box after the last lot; the result is put away, stays among the earlier ones, and another can begin', async () => {
    await beginBothWays('square-banjo', 'Banjo against the square. Clamp it.', 8);
    for (let i = 0; i < 10; i++) await takeLot(`box ${i}`);
    const [trial] = await allBothWays();
    expect(trial?.plan.boxes).toHaveLength(8);
    expect(await askedOf('another')).toBeNull();
    const result = {
      difference: 0.25,
      z: 0.7,
      p: 0.48,
      with: 4,
      without: 4,
      look: 'end',
      clear: false,
    } as const;
    render(<BothWays found={{ ...FOUND, trials: { [trial?.id ?? '']: result } }} />);
    await waitFor(() => screen.getByText(/At the end \(4 with the step, 4 without\): no clear answer/));
    fireEvent.click(screen.getByRole('button', { name: 'Put the result away' }));
    await waitFor(() => screen.getByRole('heading', { name: 'Earlier trials' }));
    screen.getByRole('button', { name: 'Plan a trial' });
    expect(screen.getByRole('listitem').textContent).toMatch(/Banjo against.*That is no leave to skip it/);
  });

  it('a trial given up half way asks nothing more, and no result is told of it', async () => {
    await beginBothWays('square-banjo', 'Banjo against the square. Clamp it.', 8);
    await takeLot('box 0');
    render(<BothWays found={FOUND} />);
    fireEvent.click(await waitFor(() => screen.getByRole('button', { name: 'Give the trial up' })));
    await waitFor(async () => expect((await only()).givenUp).toBe(true));
    expect(await askedOf('box 0')).toBeNull();
    await waitFor(() => screen.getByRole('button', { name: 'Plan a trial' }));
    expect(screen.queryByRole('heading', { name: 'Earlier trials' })).toBeNull();
  });

  it('says before the lots are drawn what so many boxes can tell', async () => {
    render(<BothWays found={FOUND} />);
    const boxes = await plan();
    screen.getByText(
      /With 40 boxes: 31 chances in 100 of a clear answer.*An unclear answer then says little/,
    );
    fireEvent.input(boxes, { target: { value: '200' } });
    await waitFor(() => screen.getByText(/With 200 boxes: 9\d chances in 100/));
  });
});

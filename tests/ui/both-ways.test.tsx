// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { allBothWays, askedOf, lotOf, takeLot } from '../../src/app/both-ways.ts';
import { beginBothWays } from '../../src/app/both-ways-trial.ts';
import { openSession } from '../../src/app/session.ts';
import type { JointTable } from '../../src/domain/findings/joint-row.ts';
import { forget } from '../../src/storage/connection.ts';
import BothWays from '../../src/ui/places/findings/both-ways.tsx';

const TABLE: JointTable = {
  rows: [],
  steps: [{ key: 'square-banjo', guards: ['lean'] }],
  leftOut: {},
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
    render(<BothWays table={TABLE} />);
    const boxes = await waitFor(() => screen.getByLabelText(/How many boxes/));
    fireEvent.input(boxes, { target: { value: '12' } });
    fireEvent.click(screen.getByRole('button', { name: 'Draw the lots' }));
    await waitFor(() => screen.getByText(/0 of 12 boxes have taken a lot/));
    const { lots, step } = await only();
    expect(step).toBe('square-banjo');
    for (let from = 0; from < 12; from += 4)
      expect([...lots.slice(from, from + 4)].sort()).toEqual(['with', 'with', 'without', 'without']);
  });

  it('refuses too few boxes beside the field, and keeps what was typed', async () => {
    render(<BothWays table={TABLE} />);
    const boxes = await waitFor(() => screen.getByLabelText(/How many boxes/));
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

  it('asks nothing once given up, and no box after the last lot', async () => {
    await beginBothWays('square-banjo', 'Banjo against the square. Clamp it.', 8);
    for (let i = 0; i < 10; i++) await takeLot(`box ${i}`);
    expect((await only()).boxes).toHaveLength(8);
    expect(await askedOf('another')).toBeNull();
    render(<BothWays table={TABLE} />);
    fireEvent.click(await waitFor(() => screen.getByRole('button', { name: 'Give the trial up' })));
    await waitFor(async () => expect((await only()).givenUp).toBe(true));
    expect(await askedOf('box 0')).toBeNull();
  });
});

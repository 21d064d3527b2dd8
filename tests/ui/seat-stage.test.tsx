// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import SeatStage from '../../src/ui/bench/seat/stage.tsx';
import { boxOf, change, length, newBox, show } from './cut-box-on-bench.tsx';

let id = '';
beforeEach(async () => {
  id = await newBox();
});
afterEach(cleanup);

const press = async (name: string | RegExp) => fireEvent.click(await screen.findByRole('button', { name }));
const seats = async () => (await boxOf(id)).seats;
const becomes = (count: number) => waitFor(async () => expect(await seats()).toHaveLength(count));
const degrees = async (typed: string) =>
  fireEvent.input(await screen.findByLabelText('Degrees'), { target: { value: typed } });

describe('the seat', () => {
  it('in line and flush is one tap', async () => {
    await show(id, SeatStage);
    await press('In line and flush: close the box');
    await becomes(1);
    expect((await seats())[0]).toMatchObject({ open: [], papers: 0, degreesToGo: 0, takenFrom: null });
    await waitFor(() => expect(location.hash).toBe('#/bench'));
  });

  it('open on one side: the hours and papers, and where it rests', async () => {
    await show(id, SeatStage);
    fireEvent.click(await screen.findByRole('checkbox', { name: '4 o’clock' }));
    await screen.findByText('Open at 4 o’clock.');
    fireEvent.click(screen.getByRole('checkbox', { name: '3 o’clock' }));
    expect(await screen.findByText('Open at 3 and 4 o’clock.')).toBeTruthy();
    fireEvent.input(await screen.findByLabelText('How many papers go in'), { target: { value: '2' } });
    await press('What comes off?');
    expect(await screen.findByText('Open at 3 and 4 by 2 papers: it rests at 9 and 10.')).toBeTruthy();
    expect((await seats())[0]).toMatchObject({ open: [3, 4], papers: 2, degreesToGo: null });
  });

  it('grain 40 degrees short: what comes off, half of it first, and how far it can go', async () => {
    await show(id, SeatStage);
    await degrees('40');
    fireEvent.click(screen.getByRole('radio', { name: 'The tenon’s shoulder' }));
    await press('What comes off?');
    // Pitch times angle over a turn, 7.5 of the 40 degrees left to burnishing: 0.1 in * 32.5/360 = 0.009 in.
    expect(await screen.findByText('0.009 in')).toBeTruthy();
    expect(
      screen.getByRole('heading', { name: 'Rub off 0.004 in, at most half of it. Try again.' }),
    ).toBeTruthy();
    expect(
      screen.getByText(/can come off before the tenon meets the floor. That is from the plan/),
    ).toBeTruthy();
    expect((await seats())[0]).toMatchObject({ degreesToGo: 40, takenFrom: 'tenon-shoulder' });
  });

  it('so little to go that a step would turn it past: a stroke or two, and no figure', async () => {
    await show(id, SeatStage);
    // 0.014 mm in total, where a hand measures 2 thou off at best.
    await degrees('9.5');
    await press('What comes off?');
    expect(await screen.findByRole('heading', { name: 'Rub off a stroke or two. Try again.' })).toBeTruthy();
    expect(screen.queryByText(/Rub off 0/)).toBeNull();
  });

  it('the gap to the floor that was measured is the room there is, less what was rubbed off since', async () => {
    await change(id, (box) => ({
      ...box,
      trials: [
        {
          id: 'f',
          seq: 1,
          at: 1,
          right: true,
          goingOn: [],
          seated: null,
          threads: [],
          marks: null,
          endPlay: null,
          bottomGap: length(0.7, '0.7 mm'),
          turnsOn: null,
          afterFinish: false,
        },
      ],
    }));
    await show(id, SeatStage);
    await degrees('50');
    await press('What comes off?');
    // 0.7 less the 0.3 mm kept to the floor is 0.016 in.
    expect(
      await screen.findByText(/^In all, 0\.016 in can come off before the tenon meets the floor\.\s*$/),
    ).toBeTruthy();
    await press('Tried it again');
    await degrees('20');
    await press('What comes off?');
    // 30 degrees of a turn of 0.1 in are gone.
    expect(await screen.findByText(/^In all, 0\.007 in can come off/)).toBeTruthy();
  });

  it('gone past by 10 degrees is 350 still to go, for which there is no room; oval parts need only the half turn', async () => {
    await show(id, SeatStage);
    fireEvent.click(await screen.findByRole('radio', { name: 'Gone past' }));
    await degrees('10');
    await press('What comes off?');
    expect((await screen.findByRole('note')).textContent).toMatch(
      /^There is no room to go that far: 2\d\d° at most/,
    );
    expect((await seats())[0]?.degreesToGo).toBe(350);
    fireEvent.click(screen.getByRole('radio', { name: 'Only oval parts, half turn' }));
    // 170 less 7.5 degrees of a turn of 0.1 in.
    expect(await screen.findByText('0.045 in')).toBeTruthy();
  });

  it('degrees beyond a turn are refused beside the field', async () => {
    await show(id, SeatStage);
    await degrees('400');
    await press('What comes off?');
    expect((await screen.findByRole('alert')).textContent).toBe(
      'Degrees: 400° is too large. It can be 0° to 360°.',
    );
    expect(await seats()).toHaveLength(0);
  });

  it('tried again, then taken back', async () => {
    await show(id, SeatStage);
    await degrees('40');
    await press('What comes off?');
    await press('Tried it again');
    expect((await screen.findByRole('listitem')).textContent).toBe('not open; 40° to go');
    await press('Undo: this was not so');
    await becomes(0);
  });
});

describe('two quick taps', () => {
  it('record one seating', async () => {
    await show(id, SeatStage);
    await degrees('20');
    const act = await screen.findByRole('button', { name: 'What comes off?' });
    fireEvent.click(act);
    fireEvent.click(act);
    await becomes(1);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(await seats()).toHaveLength(1);
  });
});

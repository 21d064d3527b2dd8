// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Closing } from '../../src/domain/box/records.ts';
import CloseStage from '../../src/ui/bench/close/stage.tsx';
import LaterOffer from '../../src/ui/bench/later-offer.tsx';
import { boxOf, change, newBox, show } from './cut-box-on-bench.tsx';

let id = '';
beforeEach(async () => {
  id = await newBox();
});
afterEach(cleanup);

const press = async (name: string | RegExp) => fireEvent.click(await screen.findByRole('button', { name }));
const choose = async (name: string) => fireEvent.click(await screen.findByRole('radio', { name }));
const closing = async () => (await boxOf(id)).closing;
const isClosed = () => waitFor(async () => expect(await closing()).not.toBeNull());

describe('the close', () => {
  it('is one tap, nothing else required', async () => {
    await show(id, CloseStage);
    await press('Keep it: close');
    await isClosed();
    expect(await closing()).toMatchObject({
      outcome: 'kept',
      scrapReason: null,
      hardener: 'none',
      hardenerBeforePass: null,
      outsideTurned: null,
      note: '',
    });
    await waitFor(() => expect(location.hash).toBe('#/bench'));
  });

  it('keeps what was told, with the cautions where they count', async () => {
    await show(id, CloseStage);
    await choose('Scrapped');
    await choose('The thread');
    expect(screen.queryByText(/CA fumes/)).toBeNull();
    await choose('Thin CA');
    expect(await screen.findByText(/^CA fumes: open a window/)).toBeTruthy();
    fireEvent.input(screen.getByLabelText('Before pass'), { target: { value: '2' } });
    await choose('After, lid on');
    expect(await screen.findByText(/a step outside is no fault of the thread/)).toBeTruthy();
    fireEvent.input(screen.getByLabelText('Note'), { target: { value: '  chipped on the way out ' } });
    await press('Scrapped: close');
    await isClosed();
    expect(await closing()).toMatchObject({
      outcome: 'scrapped',
      scrapReason: 'thread',
      hardener: 'thin-ca',
      hardenerBeforePass: 2,
      outsideTurned: 'after',
      note: 'chipped on the way out',
    });
  });

  it('warns against reverse with a lid on a right-hand thread', async () => {
    await show(id, CloseStage);
    expect(await screen.findByText(/never run in reverse/)).toBeTruthy();
  });

  it('refuses a pass that is no pass, keeps what was typed and stays open', async () => {
    await show(id, CloseStage);
    await choose('Wax');
    const field = (await screen.findByLabelText('Before pass')) as HTMLInputElement;
    fireEvent.input(field, { target: { value: '0' } });
    await press('Keep it: close');
    expect((await screen.findByRole('alert')).textContent).toBe(
      'Before pass: 0 is too small. It can be 1 to 12.',
    );
    expect(field.value).toBe('0');
    expect(await closing()).toBeNull();
  });

  it('can be taken back', async () => {
    await show(id, CloseStage);
    await press('Keep it: close');
    await press('Back on the lathe');
    await waitFor(async () => expect(await closing()).toBeNull());
  });
});

const DAY_MS = 24 * 60 * 60 * 1000;
const closedFor = (days: number, outcome: Closing['outcome'] = 'kept') =>
  change(id, (box) => ({
    ...box,
    closing: {
      at: Date.now() - days * DAY_MS,
      outcome,
      scrapReason: null,
      hardener: 'none',
      hardenerBeforePass: null,
      outsideTurned: null,
      note: '',
    },
  }));

describe('weeks later', () => {
  it('a box closed five weeks ago is asked about; one tap answers, another takes it back', async () => {
    await closedFor(35);
    render(<LaterOffer />);
    expect(
      await screen.findByText('Box 1 has been closed for 1 month. How does its lid turn now?'),
    ).toBeTruthy();
    await press('Stiff');
    expect((await screen.findByRole('status')).textContent).toMatch(/^Stiff, \d+ \w+ \d{4}/);
    expect((await boxOf(id)).lidChecks).toMatchObject([{ lid: 'stiff' }]);
    await press('Undo');
    await waitFor(async () => expect((await boxOf(id)).lidChecks).toHaveLength(0));
    expect(await screen.findByRole('button', { name: 'Free' })).toBeTruthy();
  });

  it.each([
    ['three weeks', 21, 'kept'],
    ['but scrapped', 60, 'scrapped'],
  ] as const)('nothing is asked of a box closed %s', async (_, days, outcome) => {
    await closedFor(days, outcome);
    const { container } = render(<LaterOffer />);
    await new Promise((resolve) => setTimeout(resolve, 80));
    expect(container.textContent).toBe('');
  });
});

// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, configure, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { late } from '../../src/app/ask.ts';
import { openRun } from '../../src/app/set-up-run.ts';
import { forget } from '../../src/storage/connection.ts';
import { App } from '../../src/ui/shell/app.tsx';
import { route } from '../../src/ui/shell/route.ts';
import { loseStore, openNever } from '../app/faulty-store.ts';
import { newBox } from './cut-box-on-bench.tsx';

beforeEach(async () => {
  await newBox();
  location.hash = '#/bench/set-up-recess';
  await waitFor(() => expect(route.value[1]).toBe('set-up-recess'));
  render(<App />);
});
afterEach(() => {
  vi.restoreAllMocks();
  cleanup();
});

// These tests share two cores with many others.
configure({ asyncUtilTimeout: 5_000 });

const start = () => screen.findByRole<HTMLButtonElement>('button', { name: 'Start the set-up' });

it('a set-up that cannot be started is said, with the way on; the button works again', async () => {
  const button = await start();
  loseStore();
  fireEvent.click(button);
  const alert = await screen.findByRole('alert');
  expect(alert.textContent).toMatch(/^Set-up not started\. The storage did not answer/);
  expect(button.disabled).toBe(false);
  vi.restoreAllMocks();
  fireEvent.click(button);
  await waitFor(() => expect(location.hash).toMatch(/^#\/set-up\//));
  await waitFor(() => expect(screen.queryByRole('alert')).toBeNull());
});

it('a message goes when it is closed', async () => {
  const button = await start();
  loseStore();
  fireEvent.click(button);
  await screen.findByRole('alert');
  fireEvent.click(screen.getByRole('button', { name: 'Close' }));
  await waitFor(() => expect(screen.queryByRole('alert')).toBeNull());
});

it('a set-up whose store does not open: what is waited for, then the step', async () => {
  fireEvent.click(await start());
  await waitFor(() => expect(location.hash).toMatch(/^#\/set-up\//));
  await screen.findByRole('button', { name: 'Pass' });
  cleanup();
  forget();
  openNever();
  // As on a fresh page: no run is in memory.
  openRun('another');
  render(<App />);
  await screen.findByText(/^Reading your log takes longer than it should\./);
  expect(screen.queryByRole('button', { name: 'Pass' })).toBeNull();
  vi.restoreAllMocks();
  // The open that hangs is given up after eight seconds, and the next one is answered.
  await screen.findByRole('button', { name: 'Pass' }, { timeout: 15_000 });
  expect(late.value).toEqual([]);
}, 30_000);

it('a log that cannot be read at all: why, reload, and a copy of everything', async () => {
  late.value = [{ isStuck: true, reason: 'blocked' }];
  await screen.findByText(/^Your log cannot be read\. Another tab holds an older version/);
  screen.getByRole('button', { name: 'Reload' });
  expect(screen.getByRole('link', { name: 'Save a copy of everything' }).getAttribute('href')).toBe(
    './rescue.html',
  );
  late.value = [];
  await waitFor(() => expect(screen.queryByRole('status')).toBeNull());
});

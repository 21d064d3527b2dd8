// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { changeRig, FIRST_RIG_ID } from '../../src/app/rigs.ts';
import Safety from '../../src/ui/shop/safety/safety.tsx';
import { freshLog, seen } from './plan-shop.ts';

beforeEach(() => freshLog('mm'));
afterEach(cleanup);

it('a left-hand rig is warned of running forward with a lid on, not of reverse', async () => {
  await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, hand: 'left' }));
  render(<Safety />);
  await seen(/left-hand thread, never run forward/);
  await waitFor(() => expect(screen.queryByText(/right-hand thread/)).toBeNull());
});

it('a right-hand rig is warned of reverse', async () => {
  render(<Safety />);
  await seen(/right-hand thread, never run in reverse/);
  expect(screen.queryByText(/left-hand thread/)).toBeNull();
});

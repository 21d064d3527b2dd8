// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, configure, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { recordPass } from '../../src/app/cutting.ts';
import { changeSettings } from '../../src/app/session.ts';
import { openRun, record, run } from '../../src/app/set-up-run.ts';
import { newId } from '../../src/platform/ids.ts';
import { SetUp } from '../../src/ui/set-up/set-up.tsx';
import { length, newBox, runOf, setUp } from './cut-box-on-bench.tsx';

let id = '';

beforeEach(async () => {
  id = await newBox();
});
afterEach(cleanup);
// Parts of the screen come as chunks, and these tests share two cores with many others.
configure({ asyncUtilTimeout: 5_000 });

/** Cuts the recess to this depth, moves the banjo and shows the set-up where the groove is picked up. */
const pickUpAfter = async (...depths: readonly number[]): Promise<void> => {
  const runId = await setUp(id, 'recess');
  for (const depth of depths) {
    const now = await runOf(id, 'recess');
    if (!now) throw new Error('no set-up');
    await recordPass(id, {
      id: newId(),
      part: 'recess',
      run: now,
      depth: length(depth, `${depth} mm`),
      correction: false,
      isLast: false,
    });
  }
  await openRun(runId);
  await record({ kind: 'moved', what: 'banjo-moved' });
  while (run.value?.now && run.value.now !== 'pick-up')
    await record({ kind: 'ticked', steps: [run.value.now], verdict: 'pass' });
  render(<SetUp runId={runId} />);
  await screen.findByRole('heading', { level: 1, name: /^Tip in the old groove/ });
  fireEvent.click(screen.getByRole('button', { name: /^Why\?/ }));
};

it('why the groove is picked up: with what the last pass still cuts away', async () => {
  await changeSettings({ unit: 'mm' });
  await pickUpAfter(1.1);
  const note = await screen.findByText(
    /^The next pass cuts away up to 0\.\d\d mm of error along the thread\.$/,
  );
  // Ten to the inch by the usual figures: some 1.6 mm deep in all, so that the pass to come is 0.4 to 0.7 mm deeper.
  const most = Number(/0\.\d\d/.exec(note.textContent ?? '')?.[0]);
  expect(most).toBeGreaterThan(0.4 * Math.tan(Math.PI / 6) - 0.01);
  expect(most).toBeLessThan(0.7 * Math.tan(Math.PI / 6));
});

it('in thou for who thinks in inches, and of all the passes to come', async () => {
  await pickUpAfter(0.3);
  expect(
    await screen.findByText(/^The next 2 passes cut away up to \d\d thou of error along the thread\.$/),
  ).toBeTruthy();
});

it('at full depth nothing is forgiven', async () => {
  await pickUpAfter(1.1, 1.9);
  expect(await screen.findByText('Full depth is cut: any error here thins the thread.')).toBeTruthy();
});

it('at other steps it says nothing', async () => {
  await pickUpAfter(1.1);
  await screen.findByText(/^The next pass/);
  fireEvent.click(screen.getByRole('button', { name: /Back$/ }));
  fireEvent.click(await screen.findByRole('button', { name: 'Pass' }));
  await screen.findByRole('heading', { level: 1, name: /^(?!Tip in the old groove)/ });
  fireEvent.click(screen.getByRole('button', { name: /^Why\?/ }));
  await screen.findByRole('button', { name: /Back$/ });
  expect(screen.queryByText(/of error along the thread/)).toBeNull();
});

// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { boxById } from '../../src/app/boxes.ts';
import { caliperOf } from '../../src/app/instruments.ts';
import type { Plan } from '../../src/domain/box/records.ts';
import BoreStage from '../../src/ui/bench/bore/stage.tsx';
import { useLive } from '../../src/ui/parts/use-live.ts';
import { boxOf, choose, freshLog, newBoxOf, PLAN, press, seen, type } from './plan-shop.ts';

/** The stage as the Bench shows it: drawn again when the box changes. */
const Bench = ({ id }: { id: string }) => {
  const onHand = useLive(boxById, ['box'], id).value;
  return onHand ? <BoreStage onHand={onHand} runs={new Map()} /> : null;
};
const show = async (plan: Plan = PLAN) => {
  const { id } = await newBoxOf(plan);
  render(<Bench id={id} />);
  await waitFor(() => screen.getByRole('textbox', { name: 'Along the rings' }));
  return id;
};
const read = async (along: string) => {
  await type('Along the rings', along);
  await press('Save');
  await seen(new RegExp(`^(At the mouth|By the relief) ${along} mm`));
};
/** The one large number, in mm. */
const answer = () => Number(/([\d.]+) mm/.exec(document.querySelector('.number')?.textContent ?? '')?.[1]);

beforeEach(() => freshLog('mm'));
afterEach(cleanup);

describe('the bore', () => {
  it('one number and one tap give the tenon, its tolerance and the zero', async () => {
    const id = await show();
    await read('50.1');
    await seen('Turn the tenon to');
    await seen(/give or take 0\.09.mm/);
    const plus = Number(/\+ ([\d.]+)/.exec((await seen(/^\+ /)).textContent ?? '')?.[1]);
    expect(answer()).toBeCloseTo(50.1 + plus, 2);
    expect((await boxOf(id)).box.bore).toMatchObject([
      { where: 'mouth', along: { text: '50.1 mm' }, across: null, overCrests: false },
    ]);
    expect(screen.getByRole('link', { name: 'To the set-up' }).getAttribute('href')).toBe(
      '#/bench/set-up-recess',
    );
  });

  it('with both pieces turned first the tenon comes next', async () => {
    await show({ ...PLAN, route: 'both-turned' });
    await read('50');
    const link = await waitFor(() => screen.getByRole('link', { name: 'To the tenon' }));
    expect(link.getAttribute('href')).toBe('#/bench/tenon');
  });

  it('mouth and relief, along and across tell taper and out-of-round', async () => {
    await show();
    await type('Across them', '50.30');
    await read('50.10');
    await seen(/0\.20.mm out of round/);
    await seen(/Taper: not known/);
    await read('50.00');
    await seen(
      /Opens 0\.20.mm toward the mouth\. True it before you thread: bore it 0\.20.mm wider by the relief\./,
    );
    expect(screen.getByRole('button', { name: 'True the bore, then measure' }).className).toBe('main');
    expect(screen.getByRole('link', { name: 'To the set-up' }).className).toBe('act');
  });

  it('a reading out of any range is refused in the user’s unit and stays as typed', async () => {
    const id = await show();
    await type('Along the rings', '3 in');
    await type('Across them', '900');
    await press('Save');
    await seen(/Across them: 900 mm is too large\. It can be 6 mm to 400 mm/);
    expect(screen.getByDisplayValue('900')).toBeTruthy();
    expect((await boxOf(id)).box.bore).toEqual([]);
  });

  it('a reading removed comes back to its place with one tap', async () => {
    const id = await show();
    await read('50.1');
    await read('50.2');
    await read('50.3');
    const readings = async () => (await boxOf(id)).box.bore.map(({ along }) => along.text);
    await press('Remove: By the relief 50.2 mm');
    await seen('Removed: By the relief 50.2 mm.');
    await waitFor(async () => expect(await readings()).toEqual(['50.1 mm', '50.3 mm']));
    await press('Undo');
    await waitFor(async () => expect(await readings()).toEqual(['50.1 mm', '50.2 mm', '50.3 mm']));
  });

  it('over crests is marked, and left out once the plain bore was read', async () => {
    const id = await show();
    await choose('Over finished crests', 'checkbox');
    await read('50.4');
    expect((await boxOf(id)).box.bore[0]?.overCrests).toBe(true);
    const fuzzy = answer();
    await choose('At the mouth');
    await read('50.0');
    await waitFor(() => expect(answer()).toBeCloseTo(fuzzy - 0.4, 2));
  });

  it('a bore far off the plan is asked about', async () => {
    await show();
    await read('52');
    await seen(/2\.00.mm over the opening planned\. Meant so\?/);
  });

  it('the caliper’s offset is found on a ring, kept with it, taken off, and can be forgotten', async () => {
    const id = await show();
    await read('50');
    await seen('Turn the tenon to');
    const before = answer();
    await type('Inside jaws read', '22.05');
    await type('Its true bore', '22');
    await press('Keep the difference');
    await seen(/inside jaws read 0\.05.mm over the outside/);
    await waitFor(() => expect(answer()).toBeCloseTo(before - 0.05, 2));
    const { box } = await boxOf(id);
    const caliper = await caliperOf(box);
    expect(box.instrumentId).toBe(caliper.id);
    expect(caliper.instrument.insideMinusOutside?.mm).toBeCloseTo(0.05, 9);
    await press('Forget it');
    await waitFor(() => expect(answer()).toBeCloseTo(before, 2));
  });

  it('jaws 10 mm apart are a slip of the finger', async () => {
    await show();
    await type('Inside jaws read', '32');
    await type('Its true bore', '22');
    await press('Keep the difference');
    await seen(/Inside jaws read: 32 mm is too large\. It can be 20 mm to 24 mm/);
  });
});

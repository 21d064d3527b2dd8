// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { allBoxes } from '../../src/app/boxes.ts';
import { changeRig, FIRST_RIG_ID } from '../../src/app/rigs.ts';
import NewBox from '../../src/ui/bench/plan/new-box.tsx';
import { choose, freshLog, length, newBoxOf, PLAN, press, seen, type } from './plan-shop.ts';

const begin = async () => {
  render(<NewBox />);
  await waitFor(() => screen.getByRole('heading', { name: 'New box' }));
};
const plans = async () => (await allBoxes()).map(({ box }) => box.plan);

beforeEach(() => freshLog('in'));
afterEach(cleanup);

describe('a new box', () => {
  it('an opening and a wood are enough', async () => {
    await begin();
    await type('Opening', '2 3/8');
    await type('Wood', 'black cherry');
    await press('Plan it');
    await waitFor(() => expect(location.hash).toBe('#/bench/plan'));
    expect(await plans()).toMatchObject([
      {
        opening: { text: '2 3/8 in' },
        pitch: { text: '10 tpi' },
        lid: { wood: 'Cherry, black', grain: 'end' },
        base: { wood: 'Cherry, black', grain: 'end' },
        route: 'recess-first',
        aim: { by: 'fit', clearance: null },
        threads: 3,
      },
    ]);
  });

  it('a few letters in any order offer the woods of the tables', async () => {
    await begin();
    await type('Wood', 'maple sug');
    await press('Sugar maple');
    expect((screen.getByRole('textbox', { name: 'Wood' }) as HTMLInputElement).value).toBe('Sugar maple');
  });

  it('a wood used before is one tap', async () => {
    await newBoxOf();
    await begin();
    await press('Black cherry');
    await type('Opening', '2');
    await press('Plan it');
    await waitFor(async () => expect(await plans()).toHaveLength(2));
    expect((await plans())[0]?.lid.wood).toBe('Cherry, black');
  });

  it('a wood of no table is kept as typed, and said to be calculated like a usual one', async () => {
    await begin();
    await type('Wood', 'Hedge pear');
    await seen(/In no table/);
    await type('Opening', '2');
    await press('Plan it');
    await waitFor(async () => expect((await plans())[0]?.lid.wood).toBe('Hedge pear'));
  });

  it.each([
    ['', 'Opening: still empty.'],
    ['0', /Opening: 0 in is too small\. It can be 1\/4 in to 15 1\/2 in/],
    ['-2', /Opening: -2 in is too small/],
    ['3000 mm', /Opening: 118\.11 in is too large/],
    ['1/0', /Opening: “1\/0” cannot be read/],
    ['NaN', /Opening: “NaN” cannot be read/],
    ['3 m', /Opening: “3 m” has a unit that is not known/],
  ])('an opening of "%s" is refused beside its field, and stays as typed', async (typed, says) => {
    await begin();
    await type('Opening', typed);
    await type('Wood', 'black cherry');
    await press('Plan it');
    const alert = await waitFor(() => screen.getByRole('alert'));
    expect(alert.textContent).toMatch(says);
    const input = screen.getByRole('textbox', { name: 'Opening' }) as HTMLInputElement;
    expect(input.getAttribute('aria-invalid')).toBe('true');
    expect(input.value).toBe(typed);
    expect(await plans()).toEqual([]);
  });

  it('a decimal comma is a decimal', async () => {
    await begin();
    await type('Opening', '2,5');
    await type('Wood', 'black cherry');
    await press('Plan it');
    await waitFor(async () => expect((await plans())[0]?.opening).toEqual({ mm: 63.5, text: '2,5 in' }));
  });

  it('a cutter that cannot enter names the nearest opening that can be had, and that one is taken', async () => {
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, cutterRadius: length(15, '15 mm') }));
    await begin();
    await type('Opening', '1');
    await type('Wood', 'black cherry');
    await press('Plan it');
    const alert = await waitFor(() => screen.getByRole('alert'));
    const nearest = /nearest that can: ([\d.]+ in)/.exec(alert.textContent ?? '')?.[1] ?? '';
    await type('Opening', nearest);
    await press('Plan it');
    await waitFor(async () => expect((await plans())[0]?.opening.text).toBe(nearest));
  });

  it('a depth of one’s own beyond the V names the nearest in turns, and that one is taken', async () => {
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, travelPerTurn: length(1.27, '0.05 in') }));
    await begin();
    await type('Opening', '2');
    await type('Wood', 'black cherry');
    await choose('My own depth');
    await type('My dial goes to', '1 3/4');
    await press('Plan it');
    const alert = await waitFor(() => screen.getByRole('alert'));
    const nearest = /nearest that can: ([\d.]+) turns/.exec(alert.textContent ?? '')?.[1] ?? '';
    expect(Number(nearest)).toBeLessThan(1.75);
    await type('My dial goes to', nearest);
    await press('Plan it');
    await waitFor(async () =>
      expect((await plans())[0]?.aim).toEqual({ by: 'depth', dialTurns: Number(nearest) }),
    );
  });

  it('a clearance that a blunt tip has no room for is refused as a clearance, with the nearest, and that one is taken', async () => {
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, tipFlat: length(0.9, '0.9 mm') }));
    await begin();
    await type('Opening', '2');
    await type('Wood', 'black cherry');
    await type(/^Clearance/, '0.05 mm');
    await press('Plan it');
    const alert = await waitFor(() => screen.getByRole('alert'));
    const nearest =
      /^Clearance: with this cutter tip at least ([\d.]+ in)\.$/.exec(alert.textContent ?? '')?.[1] ?? '';
    await type(/^Clearance/, nearest);
    await press('Plan it');
    await waitFor(async () =>
      expect((await plans())[0]?.aim).toMatchObject({ clearance: { text: nearest } }),
    );
  });

  it('what is typed outlives the page', async () => {
    await begin();
    await type('Opening', '2 7/16');
    await choose('16 tpi');
    await new Promise((resolve) => setTimeout(resolve, 400));
    cleanup();
    await begin();
    await waitFor(() => expect(screen.getByDisplayValue('2 7/16')).toBeTruthy());
    expect((screen.getByRole('radio', { name: '16 tpi' }) as HTMLInputElement).checked).toBe(true);
  });

  it('pitch starts with the rig’s, the habits with the last box’s', async () => {
    await newBoxOf({ ...PLAN, route: 'both-turned', recessIn: 'base', threads: 4 });
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, pitch: length(25.4 / 12, '12 tpi') }));
    await begin();
    expect(screen.getByDisplayValue('12 tpi')).toBeTruthy();
    expect((screen.getByRole('radio', { name: 'Base' }) as HTMLInputElement).checked).toBe(true);
    expect((screen.getByRole('radio', { name: 'Both turned first' }) as HTMLInputElement).checked).toBe(true);
    expect(screen.getByDisplayValue('4')).toBeTruthy();
  });

  it('a ring of a third wood goes into the plan', async () => {
    await begin();
    await type('Opening', '2');
    await type('Wood', 'basswood');
    fireEvent.click(screen.getByText('Grain, insert ring'));
    await choose('In the lid');
    await type('Wood of the ring', 'black cherry');
    await press('Plan it');
    await waitFor(async () =>
      expect((await plans())[0]?.insert).toEqual({ wood: 'Cherry, black', grain: 'end', in: 'lid' }),
    );
  });
});

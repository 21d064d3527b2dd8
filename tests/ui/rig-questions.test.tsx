// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { allRigs, changeRig, FIRST_RIG_ID, rigById } from '../../src/app/rigs.ts';
import { route } from '../../src/ui/shell/route.ts';
import RigPlace from '../../src/ui/shop/rig/rig.tsx';
import { choose, freshLog, length, press, seen, type } from './plan-shop.ts';

/** The place as Shop shows it: it follows the address. */
const Shop = () => <RigPlace rest={route.value.slice(2)} />;
const goTo = async (...rest: string[]) => {
  location.hash = `#/shop/rig/${rest.join('/')}`;
  await waitFor(() => expect(route.value.slice(2)).toEqual(rest));
  render(<Shop />);
};
const rig = () => rigById(FIRST_RIG_ID);

beforeEach(() => freshLog('mm'));
afterEach(cleanup);

describe('the rig', () => {
  it('lists what it knows and leads to the first thing it does not', async () => {
    await changeRig(FIRST_RIG_ID, (now) => ({ ...now, pitch: length(2.54, '10 tpi') }));
    await goTo();
    const next = await waitFor(() => screen.getByRole('link', { name: 'Next: Cutter radius' }));
    expect(next.getAttribute('href')).toBe(`#/shop/rig/cutterRadius/${FIRST_RIG_ID}`);
    expect(screen.getByRole('link', { name: /Pitch of the jig 10 tpi/ })).toBeTruthy();
    expect(screen.getByText('3 of 15 told')).toBeTruthy();
  });

  it('an answer is kept as typed and the next question comes up', async () => {
    await goTo('cutterRadius', FIRST_RIG_ID);
    await waitFor(() => screen.getByRole('heading', { name: /How far is the tooth’s tip/ }));
    await type('Cutter radius', '1/2 in');
    await press('Keep it');
    await waitFor(() => screen.getByRole('heading', { name: /How wide is the flat/ }));
    expect((await rig()).cutterRadius).toEqual({ mm: 12.7, text: '1/2 in' });
  });

  it('don’t know yet takes an answer back and says what is done then', async () => {
    await changeRig(FIRST_RIG_ID, (now) => ({ ...now, tipFlat: length(0.3), tipFlatFrom: 'told' }));
    await goTo('tipFlat', FIRST_RIG_ID);
    await seen(/CalculatedBox with 0\.20.mm/);
    await press('Don’t know yet');
    await waitFor(() => screen.getByRole('heading', { name: /How many teeth/ }));
    expect(await rig()).toMatchObject({ tipFlat: null, tipFlatFrom: null });
  });

  it('a choice is kept with the tap', async () => {
    await goTo('banjos', FIRST_RIG_ID);
    await waitFor(() => screen.getByRole('radio', { name: 'Two' }));
    await choose('Two');
    await waitFor(async () => expect((await rig()).banjos).toBe(2));
  });

  it.each([
    ['cutterRadius', 'Cutter radius', '3000', /3000 mm is too large\. It can be 2 mm to 60 mm/],
    ['cutterRadius', 'Cutter radius', '0', /0 mm is too small/],
    ['teeth', 'Teeth', '2.5', /cannot be read/],
    ['travelPerTurn', 'Travel for one turn', '', /still empty/],
    ['pitch', 'Pitch of the jig', '-4', /It can be 0.5 mm to 6.35 mm/],
  ])('%s "%s" given "%s" is refused beside the field', async (question, label, typed, says) => {
    await goTo(question, FIRST_RIG_ID);
    await waitFor(() => screen.getByRole('textbox', { name: label }));
    await type(label, typed);
    await press('Keep it');
    expect((await waitFor(() => screen.getByRole('alert'))).textContent).toMatch(says);
    expect((screen.getByRole('textbox', { name: label }) as HTMLInputElement).value).toBe(typed);
  });

  it('a scrap pair teaches the tip flat that made it', async () => {
    await goTo('tipFlat', FIRST_RIG_ID);
    await waitFor(() => screen.getByRole('button', { name: 'Reckon and keep it' }));
    await type('Bore of the recess', '40');
    // Worked by hand from B = c tan 30 with f = 0.25: c = 40 - Dt + 2 (df + dm) - (P - 2 f)/tan 30.
    const clearance = 40 - 42.4 + 4 * 1.55 - (2.54 - 0.5) * Math.sqrt(3);
    await type('Diameter of the tenon', '42.4');
    await type('Depth cut, recess', '1.55');
    await type('Depth cut, tenon', '1.55');
    await type('End play', (clearance / Math.sqrt(3)).toFixed(4));
    await press('Reckon and keep it');
    await seen(/Tip flat 0\.25 mm, give or take 0\.03 mm\. Kept/);
    expect(await rig()).toMatchObject({ tipFlat: { text: '0.25 mm' }, tipFlatFrom: 'scrap-pair' });
  });

  it('a scrap pair that no cutter can have made is refused beside its field', async () => {
    await goTo('tipFlat', FIRST_RIG_ID);
    await waitFor(() => screen.getByRole('button', { name: 'Reckon and keep it' }));
    await type('Bore of the recess', '40');
    await type('Diameter of the tenon', '40.1');
    await type('Depth cut, recess', '2');
    await type('Depth cut, tenon', '2');
    await type('End play', '0');
    await press('Reckon and keep it');
    await seen(/End play: 0 mm cannot go with this tenon/);
    expect((await rig()).tipFlat).toBeNull();
  });

  it('a second rig leaves the first as it was', async () => {
    await goTo();
    await waitFor(() => screen.getByRole('button', { name: 'Another rig' }));
    await press('Another rig');
    await waitFor(() => screen.getByRole('heading', { name: 'Rig 2' }));
    expect((await allRigs()).map(({ id }) => id)).toContain(FIRST_RIG_ID);
  });
});

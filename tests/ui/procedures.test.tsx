// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, configure, render, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { allProcedures } from '../../src/app/procedures.ts';
import { bringBack, replacedVersions } from '../../src/app/superseded.ts';
import { DEFAULT_PROCEDURES } from '../../src/domain/setup/default-procedures.ts';
import { route } from '../../src/ui/shell/route.ts';
import Procedures from '../../src/ui/shop/procedures/procedures.tsx';
import { choose, freshLog, press, type } from './plan-shop.ts';

/** The place as Shop shows it: it follows the address. */
const Shop = () => <Procedures rest={route.value.slice(2)} />;

const ours = DEFAULT_PROCEDURES['board-and-cone'];
const own = async () => {
  const found = (await allProcedures()).find(({ isDefault }) => !isDefault);
  if (!found) throw new Error('no procedure of one’s own');
  return found.procedure;
};
const sentences = async () => (await own()).steps.map(({ sentence }) => sentence);
const stepOf = (sentence: string) => {
  const row = screen.getByText(sentence).closest('li');
  if (!row) throw new Error(`no step ${sentence}`);
  return within(row);
};
const pressAt = async (sentence: string, name: string) => {
  await waitFor(() => stepOf(sentence).getByRole('button', { name }));
  stepOf(sentence).getByRole('button', { name }).click();
};

beforeEach(async () => {
  await freshLog();
  location.hash = '#/shop/procedures/board-and-cone';
  await waitFor(() => expect(route.value[2]).toBe('board-and-cone'));
  render(<Shop />);
  await press('Copy it, to change');
  await waitFor(() => screen.getByRole('heading', { name: 'Board and cone, mine' }));
});
afterEach(cleanup);
// These tests share two cores with many others.
configure({ asyncUtilTimeout: 5_000 });

describe('a procedure of one’s own', () => {
  it('starts as ours, and ours stays', async () => {
    expect((await own()).steps).toEqual(ours.steps);
    expect((await allProcedures())[0]?.procedure).toEqual(ours);
  });

  it('takes a step more, and a name', async () => {
    await type('What to do, in one sentence', 'Shavings off the bed.');
    await press('Add a step');
    await waitFor(async () => expect((await sentences()).at(-2)).toBe('Shavings off the bed.'));
    await type('Name of this procedure', 'Long bed');
    await press('Rename it');
    await waitFor(() => screen.getByRole('heading', { name: 'Long bed' }));
    expect((await own()).version).toBe(3);
  });

  it('keeps its new name: the field shows it, and the next tap saves it again', async () => {
    await type('Name of this procedure', 'Long bed');
    await press('Rename it');
    await waitFor(() => screen.getByRole('heading', { name: 'Long bed' }));
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Name of this procedure' }).value).toBe(
      'Long bed',
    );
    await press('Rename it');
    await waitFor(async () => expect((await own()).version).toBe(3));
    expect((await own()).name).toBe('Long bed');
  });

  it('moves a step, and offers no move that cannot be', async () => {
    const banjo = 'Banjo against the square. Clamp it.';
    const before = await sentences();
    await pressAt(banjo, 'Up');
    await waitFor(async () => expect((await sentences()).indexOf(banjo)).toBe(before.indexOf(banjo) - 1));
    const isOff = (sentence: string, name: string) =>
      stepOf(sentence).getByRole<HTMLButtonElement>('button', { name }).disabled;
    expect(isOff('Off at the wall. Spindle still. Cutter out.', 'Down')).toBe(true);
    expect(isOff('Face shield on. Gloves, rings off. Sleeves, hair back.', 'Up')).toBe(true);
  });

  it('keeps a step’s words, guards and movements while they are typed, and changes them together', async () => {
    const banjo = 'Banjo against the square. Clamp it.';
    await pressAt(banjo, 'Change it');
    await type(/^Sentence/, 'Square first. Clamp.');
    await choose('Dial or cross-slide', 'checkbox');
    await choose('slip', 'checkbox');
    // Left for another page and come back to, as after a kill.
    await new Promise((resolve) => setTimeout(resolve, 400));
    cleanup();
    render(<Shop />);
    await pressAt(banjo, 'Change it');
    await waitFor(() =>
      expect(screen.getByRole<HTMLInputElement>('textbox', { name: /^Sentence/ }).value).toBe(
        'Square first. Clamp.',
      ),
    );
    await press('Keep it');
    await waitFor(async () => expect(await sentences()).toContain('Square first. Clamp.'));
    const was = ours.steps.find(({ key }) => key === 'square-banjo');
    const is = (await own()).steps.find(({ key }) => key === 'square-banjo');
    expect(new Set(is?.guards)).toEqual(new Set([...(was?.guards ?? []), 'slip']));
    expect(is?.reopenedBy.includes('dial-knocked')).not.toBe(was?.reopenedBy.includes('dial-knocked'));
  });

  it('a hold point can neither be taken out nor told in other words', async () => {
    const lock = 'Collar down. Lock the post.';
    await waitFor(() => stepOf(lock));
    expect(stepOf(lock).queryByRole('button', { name: 'Take it out' })).toBeNull();
    await pressAt(lock, 'Change it');
    await waitFor(() => screen.getByText(/A hold point keeps its words/));
    expect(screen.queryByRole('textbox', { name: /^Sentence/ })).toBeNull();
    expect(screen.queryByRole('checkbox', { name: 'The post, loose or out' })).toBeNull();
  });

  it('what was taken out can be brought back as it was', async () => {
    const cone = 'Crank handle off. Nip the cone: jig flat to the board.';
    const before = (await own()).steps;
    await pressAt(cone, 'Take it out');
    await waitFor(async () => expect(await sentences()).not.toContain(cone));
    const [version] = await replacedVersions();
    if (!version) throw new Error('nothing was kept');
    expect(await bringBack(version)).toBe(true);
    expect((await own()).steps).toEqual(before);
  });
});

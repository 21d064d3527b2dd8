// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { nextSeq } from '../../src/domain/box/sequence.ts';
import { goingOn, seated, threads } from '../../src/domain/box/trial-words.ts';
import TrialStage from '../../src/ui/bench/trial/stage.tsx';
import { boxOf, change, length, newBox, show } from './cut-box-on-bench.tsx';

let id = '';
beforeEach(async () => {
  id = await newBox();
  globalThis.scrollTo = () => {};
});
afterEach(cleanup);

const press = async (name: string | RegExp) => fireEvent.click(await screen.findByRole('button', { name }));
const tick = async (name: string) => fireEvent.click(await screen.findByRole('checkbox', { name }));
const trials = async () => (await boxOf(id)).trials;
const becomes = (count: number) => waitFor(async () => expect(await trials()).toHaveLength(count));

/** Both pieces measured and cut, the tenon a good deal too large for its depth. */
const cutTooTight = () =>
  change(id, (box) => ({
    ...box,
    bore: [
      {
        id: 'b',
        seq: 1,
        where: 'mouth',
        along: length(40, '40 mm'),
        across: length(40, '40 mm'),
        overCrests: false,
      },
      {
        id: 'c',
        seq: 1,
        where: 'relief',
        along: length(40, '40 mm'),
        across: length(40, '40 mm'),
        overCrests: false,
      },
    ],
    tenon: [
      { id: 't', seq: 2, where: 'end', diameter: length(42.9, '42.9 mm'), overCrests: false },
      { id: 'u', seq: 2, where: 'shoulder', diameter: length(42.9, '42.9 mm'), overCrests: false },
    ],
    cuts: (['recess', 'tenon'] as const).map((part, i) => ({
      id: part,
      seq: 3 + i,
      part,
      runId: null,
      at: i,
      depth: length(1.62, '1.62 mm'),
      correction: false,
    })),
  }));

describe('a trial that is right', () => {
  it('is one tap, which answers everything', async () => {
    await show(id, TrialStage);
    await press('Right: goes on easily, pulls up firm.');
    await becomes(1);
    expect((await trials())[0]).toMatchObject({
      right: true,
      goingOn: ['free'],
      seated: 'flush',
      threads: ['sound'],
      afterFinish: false,
    });
    await waitFor(() => expect(location.hash).toBe('#/bench'));
  });

  it('two taps in a hurry are one trial', async () => {
    await show(id, TrialStage);
    const right = await screen.findByRole('button', { name: /^Right/ });
    fireEvent.click(right);
    fireEvent.click(right);
    await becomes(1);
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(await trials()).toHaveLength(1);
  });
});

describe('a trial that is not', () => {
  it('offers every word of the trade, and asks for at least one', async () => {
    await show(id, TrialStage);
    await screen.findByRole('group', { name: 'Going on' });
    const inGroup = (name: string, role: string) =>
      within(screen.getByRole('group', { name })).getAllByRole(role);
    expect(inGroup('Going on', 'checkbox')).toHaveLength(goingOn.length);
    expect(inGroup('Seated', 'radio')).toHaveLength(seated.length);
    expect(inGroup('Threads', 'checkbox')).toHaveLength(threads.length);
    expect(screen.queryByRole('button', { name: 'What now?' })).toBeNull();
  });

  it('gets the most likely cause, then moves in bench order down to the exact amount on the dial', async () => {
    await cutTooTight();
    await show(id, TrialStage);
    await tick('Stiff all the way');
    fireEvent.click(await screen.findByRole('radio', { name: 'On the flanks' }));
    await press('What now?');
    await becomes(1);
    expect(
      await screen.findByText('The flanks bind: too little clearance.', { selector: '.move b' }),
    ).toBeTruthy();
    const moves: string[] = [];
    for (;;) {
      moves.push(screen.getByRole('heading', { level: 3, name: /\.$/ }).textContent ?? '');
      const next = screen.queryByRole('button', { name: 'Next move' });
      if (!next) break;
      fireEvent.click(next);
      await waitFor(() =>
        expect(screen.getByRole('heading', { level: 3, name: /\.$/ }).textContent).not.toBe(moves.at(-1)),
      );
    }
    expect(moves[0]).toBe('Brush out both threads.');
    expect(moves.indexOf('The same setting again, one more pass.')).toBe(moves.length - 2);
    // A mark of this dial is a thou.
    expect(moves.at(-1)).toMatch(/^Deepen the tenon (\d+) thou: \1\smarks\.$/);
    const thou = Number(/(\d+) thou/.exec(moves.at(-1) ?? '')?.[1]);
    expect(thou % 2).toBe(0);
    const [, stage, again, by] = (screen.getByRole('link', { name: 'To the cut' }).getAttribute('href') ?? '')
      .slice(1)
      .split('/')
      .filter(Boolean);
    expect([stage, again]).toEqual(['cut-tenon', 'again']);
    expect(Number(by)).toBeCloseTo(thou * 0.0254, 6);
    expect(screen.getByRole('img', { name: /^Section of the joint, After/ })).toBeTruthy();
  });

  it('says so when hand and caliper disagree', async () => {
    await cutTooTight();
    await change(id, (box) => ({
      ...box,
      tenon: box.tenon.map((reading) => ({ ...reading, diameter: length(42.3, '42.3 mm') })),
    }));
    await show(id, TrialStage);
    await tick('Stiff all the way');
    await press('What now?');
    expect((await screen.findByRole('note')).textContent).toMatch(/^It feels tight, yet by the sizes/);
    expect(screen.getByRole('heading', { level: 3, name: 'Measure bore and tenon again.' })).toBeTruthy();
  });

  it('a lid that stops dead asks how far the floor is, and reckons with it', async () => {
    await cutTooTight();
    await show(id, TrialStage);
    await screen.findByRole('group', { name: 'Going on' });
    expect(screen.queryByRole('textbox', { name: 'Recess deeper than tenon' })).toBeNull();
    await tick('Stops dead');
    fireEvent.input(await screen.findByRole('textbox', { name: 'Recess deeper than tenon' }), {
      target: { value: '0.1 mm' },
    });
    await press('What now?');
    await becomes(1);
    expect((await trials())[0]?.bottomGap).toEqual(length(0.1, '0.1 mm'));
    expect(await screen.findByText('The tenon meets the floor.', { selector: '.move b' })).toBeTruthy();
    expect(screen.queryByText('Measure recess depth and tenon length.')).toBeNull();
  });

  it('tried again, the earlier trial is listed and the next one can be told', async () => {
    await show(id, TrialStage);
    await tick('Gritty');
    await press('What now?');
    await press('Tried it again');
    expect(await screen.findByRole('heading', { name: 'Earlier trials' })).toBeTruthy();
    expect(screen.getByRole('listitem').textContent).toBe('Gritty');
    await press(/^Right/);
    await becomes(2);
    expect((await trials()).map(({ right }) => right)).toEqual([false, true]);
  });

  it('once the cutter was at it again, asks how it is now', async () => {
    await cutTooTight();
    await show(id, TrialStage);
    await tick('Stiff all the way');
    await press('What now?');
    await screen.findByRole('button', { name: 'Tried it again' });
    await change(id, (box) => ({
      ...box,
      cuts: [
        ...box.cuts,
        {
          id: 'more',
          seq: nextSeq(box),
          part: 'tenon',
          runId: null,
          at: Date.now() + 1,
          depth: length(1.7, '1.7 mm'),
          correction: true,
        },
      ],
    }));
    expect(await screen.findByRole('button', { name: /^Right/ })).toBeTruthy();
  });

  it('can be taken back', async () => {
    await show(id, TrialStage);
    await tick('Gritty');
    await press('What now?');
    await press('Undo: this was not so');
    await becomes(0);
    expect(await screen.findByRole('button', { name: /^Right/ })).toBeTruthy();
  });

  it('refuses a measured play that cannot be, and records nothing', async () => {
    await show(id, TrialStage);
    await tick('End play');
    const play = await screen.findByLabelText('Play, measured');
    fireEvent.input(play, { target: { value: '3 in' } });
    await press('What now?');
    expect((await screen.findByRole('alert')).textContent).toBe(
      'Play, measured: 3 in is too large. It can be 0 in to 3/16 in.',
    );
    expect(await trials()).toHaveLength(0);
    fireEvent.input(play, { target: { value: '12 thou' } });
    await press('What now?');
    await becomes(1);
    const { endPlay } = (await trials())[0] ?? {};
    expect(endPlay?.text).toBe('12 thou');
    expect(endPlay?.mm).toBeCloseTo(0.3048, 9);
  });
});

describe('two quick taps', () => {
  it('record one trial fit', async () => {
    await show(id, TrialStage);
    await tick('Stops dead');
    const act = await screen.findByRole('button', { name: 'What now?' });
    fireEvent.click(act);
    fireEvent.click(act);
    await becomes(1);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(await trials()).toHaveLength(1);
  });
});

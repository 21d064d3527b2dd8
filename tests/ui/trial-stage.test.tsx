// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { recordTrial } from '../../src/app/trials.ts';
import { nextSeq } from '../../src/domain/box/sequence.ts';
import type { Part } from '../../src/domain/setup/events.ts';
import TrialStage from '../../src/ui/bench/trial/stage.tsx';
import LikelyCauses from '../../src/ui/boxes/likely-causes.tsx';
import './worker-on-the-page.ts';
import { boxOf, change, length, newBox, setUp, show } from './cut-box-on-bench.tsx';

let id = '';
beforeEach(async () => {
  id = await newBox();
});
afterEach(cleanup);

const LONG = { timeout: 8000 };
const press = async (name: string | RegExp) =>
  fireEvent.click(await screen.findByRole('button', { name }, LONG));
const tick = async (name: string) => fireEvent.click(await screen.findByRole('checkbox', { name }));
const trials = async () => (await boxOf(id)).trials;
const becomes = (count: number) => waitFor(async () => expect(await trials()).toHaveLength(count));
/** Advice is there once it names causes. */
const advised = () => screen.findByRole('button', { name: 'Causes' }, LONG);
const move = () => within(screen.getByRole('region', { name: 'Next move' }));
const type = async (label: string, value: string) =>
  fireEvent.input(await screen.findByLabelText(label), { target: { value } });

/** Both pieces measured; the tenon this large for its depth. */
const measured = (tenon: number) =>
  change(id, (box) => ({
    ...box,
    bore: (['mouth', 'relief'] as const).map((where) => ({
      id: where,
      seq: 1,
      where,
      along: length(40, '40 mm'),
      across: length(40, '40 mm'),
      overCrests: false,
    })),
    tenon: (['end', 'shoulder'] as const).map((where) => ({
      id: where,
      seq: 2,
      where,
      diameter: length(tenon, `${tenon} mm`),
      overCrests: false,
    })),
  }));

const cut = (part: Part, depth: number) =>
  change(id, (box) => ({
    ...box,
    cuts: [
      ...box.cuts,
      {
        id: `${part}${box.cuts.length}`,
        seq: nextSeq(box),
        part,
        runId: null,
        at: box.cuts.length,
        depth: length(depth, `${depth} mm`),
        correction: false,
      },
    ],
  }));

/** Recess cut, tenon on the jig with its setting, a good deal too large for its depth: 0.35 mm wanted, none there. */
const tightOnTheJig = async () => {
  await measured(42.85);
  await cut('recess', 1.62);
  await setUp(id, 'tenon');
  await cut('tenon', 1.62);
};

const tightWords = async () => {
  await tick('Stiff all the way');
  await tick('Flanks');
  await press('Get advice (2)');
  await becomes(1);
  await advised();
};

describe('a trial that is good', () => {
  it('is one tap, which answers everything', async () => {
    await show(id, TrialStage);
    await press('Good: runs on freely, pulls up firm');
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
    const good = await screen.findByRole('button', { name: /^Good/ });
    fireEvent.click(good);
    fireEvent.click(good);
    await becomes(1);
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(await trials()).toHaveLength(1);
  });
});

describe('the answers', () => {
  it('are 27, under their headings, on one screen', async () => {
    await show(id, TrialStage);
    const count = (name: string) =>
      within(screen.getByRole('group', { name })).getAllByRole('checkbox').length;
    await screen.findByRole('group', { name: 'Tight' });
    expect(['Tight', 'Catches', 'Loose', 'Seat', 'Threads', 'Marks'].map(count)).toEqual([4, 4, 3, 4, 7, 5]);
  });

  it('are counted in the act, which asks for one while there is none', async () => {
    await show(id, TrialStage);
    expect(await screen.findByRole('button', { name: 'Pick at least one' })).toHaveProperty('disabled', true);
    await tick('Gritty');
    await tick('Open one side');
    await tick('Rocks');
    expect(await screen.findByRole('button', { name: 'Get advice (2)' })).toHaveProperty('disabled', false);
    // Where along the thread says nothing without what rubs there.
    await tick('Start');
    expect(screen.getByRole('button', { name: 'Get advice (2)' })).toBeTruthy();
    await tick('Crests');
    expect(await screen.findByRole('button', { name: 'Get advice (4)' })).toBeTruthy();
    await press('Clear');
    expect(await screen.findByRole('button', { name: 'Pick at least one' })).toBeTruthy();
  });

  it('can be changed from the advice, in the same trial', async () => {
    await show(id, TrialStage);
    await tick('Gritty');
    await press('Get advice (1)');
    await becomes(1);
    await press('Change answers');
    await tick('Woolly');
    await press('Get advice (2)');
    await waitFor(async () =>
      expect(await trials()).toMatchObject([{ goingOn: ['gritty'], threads: ['furry'] }]),
    );
    expect(await screen.findByText('Gritty, woolly.')).toBeTruthy();
  });
});

describe('the advice', () => {
  it('says the cause, draws it where it acts, and offers no cut before the play is felt', async () => {
    await tightOnTheJig();
    await show(id, TrialStage);
    await tightWords();
    expect(screen.getByRole('heading', { name: 'The flanks bind: too tight' })).toBeTruthy();
    expect(screen.getByRole('img', { name: /too tight: flanks\.$/ }).getAttribute('data-place')).toBe(
      'flanks',
    );
    expect(screen.getByText('Likely cause')).toBeTruthy();
    expect(screen.queryByRole('link', { name: /^Cut/ })).toBeNull();
    expect(screen.getByRole('region', { name: 'To settle it, check' })).toBeTruthy();
  });

  it('after the play was felt cuts deeper by an amount that the dial shows, and goes there', async () => {
    await tightOnTheJig();
    await show(id, TrialStage);
    await tightWords();
    await change(id, (box) => ({
      ...box,
      trials: box.trials.map((trial) => ({
        ...trial,
        endPlay: length(0, '0'),
        crestFlat: { part: 'tenon', width: length(0.5, '0.5 mm') },
        asked: ['endPlay', 'crestFlat'],
      })),
    }));
    const act = await screen.findByRole('link', { name: /^Cut \d+ thou deeper$/ }, LONG);
    expect(move().getByRole('heading', { name: /^Deepen the tenon/ })).toBeTruthy();
    const thou = Number(/(\d+) thou/.exec(act.textContent ?? '')?.[1]);
    expect(thou % 2).toBe(0);
    expect(move().getByText(`${thou} thou`)).toBeTruthy();
    const [, stage, again, by] = (act.getAttribute('href') ?? '').slice(1).split('/').filter(Boolean);
    expect([stage, again]).toEqual(['cut-tenon', 'again']);
    expect(Number(by)).toBeCloseTo(thou * 0.0254, 6);
    // What was cut and the move together, on a dial of 0.05 in with 50 marks.
    const marks = Math.round((2 * 50 * (1.62 + Number(by))) / 1.27) / 2;
    expect(screen.getByText(/^Dial to/).textContent).toContain(`${Math.floor(marks - 50)}`);
    expect(move().getByText('Lid off before the cut.')).toBeTruthy();
  });

  it('leads to the set-up, never to the cut, once the setting is lost', async () => {
    await measured(42.85);
    await cut('recess', 1.62);
    await cut('tenon', 1.62);
    await show(id, TrialStage);
    await tightWords();
    for (const link of screen.queryAllByRole('link'))
      expect(link.getAttribute('href')).not.toMatch(/cut-(tenon|recess)/);
  });

  it('asks for a measure, saves it with the trial, and asks for it no more', async () => {
    await tightOnTheJig();
    await show(id, TrialStage);
    await tightWords();
    const check = await screen.findByRole('button', { name: /^Check: / });
    const asked = check.textContent;
    fireEvent.click(check);
    await press('Can’t tell');
    await waitFor(async () => expect((await trials())[0]?.asked).toHaveLength(1));
    await advised();
    await waitFor(() => expect(screen.queryByRole('button', { name: asked ?? '' })).toBeNull(), LONG);
  });

  it('takes the width of a crest from the scale, and refuses what it cannot be', async () => {
    await measured(42.85);
    await cut('recess', 1.62);
    await cut('tenon', 1.62);
    await recordTrial(id, 'tight', {
      right: false,
      goingOn: ['stiff-all-the-way'],
      seated: null,
      threads: [],
      marks: { on: 'flank', at: 'all-along' },
      endPlay: length(0, '0'),
      turnsOn: null,
      afterFinish: false,
    });
    await show(id, TrialStage);
    await press('Check: crest flat');
    await type('Width of the flat', '3 in');
    await press('Save');
    expect((await screen.findByRole('alert')).textContent).toMatch(/^Width of the flat: 3 in is too large/);
    await press('16 thou');
    await press('Save');
    await waitFor(async () =>
      expect((await trials())[0]?.crestFlat).toMatchObject({ part: 'tenon', width: { text: '16 thou' } }),
    );
    expect((await trials())[0]?.crestFlat?.width.mm).toBeCloseTo(16 * 0.0254, 9);
  });

  it('a box’s page has the same causes', async () => {
    await tightOnTheJig();
    await show(id, TrialStage);
    await tightWords();
    await press('Causes');
    const onBench = screen.getAllByRole('listitem').map(({ textContent }) => textContent);
    expect(onBench[0]).toMatch(/^The flanks bind: too tight, about \d in 10/);
    const trialId = (await trials())[0]?.id ?? '';
    cleanup();
    await show(id, () => <LikelyCauses id={id} trialId={trialId} />).catch(() => undefined);
    await screen.findByRole('heading', { name: 'Likely causes' }, LONG);
    expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual(onBench);
  });

  it('can be taken back with its trial', async () => {
    await show(id, TrialStage);
    await tick('Gritty');
    await press('Get advice (1)');
    await press('Undo this trial');
    await becomes(0);
    expect(await screen.findByRole('button', { name: /^Good/ })).toBeTruthy();
  });
});

describe('a move', () => {
  const gritty = async () => {
    await show(id, TrialStage);
    await tick('Gritty');
    await press('Get advice (1)');
    await becomes(1);
    await screen.findByRole('button', { name: 'Done: brushed out' }, LONG);
  };

  it('says its caution, how likely it helps, and what it feels like', async () => {
    await gritty();
    expect(move().getByText(/^Lathe stopped\. A stiff brush/)).toBeTruthy();
    expect(
      move().getByRole('heading', { name: /^Brush out both threads \((should|may|a step)/ }),
    ).toBeTruthy();
    expect(move().getByText('It turns without grit.')).toBeTruthy();
    expect(move().getByText(/^Why: fuzz or chips in the thread \(.*gritty/)).toBeTruthy();
  });

  it('tried again is one tap: what was advised is noted as done, and can be taken back', async () => {
    await gritty();
    await press('Tried again');
    expect(await screen.findByText('Done since the last trial: brushed out.')).toBeTruthy();
    expect((await trials())[0]?.moves).toMatchObject([{ kind: 'brush-out', by: null }]);
    await press('Undo');
    await waitFor(async () => expect((await trials())[0]?.moves).toEqual([]));
    await waitFor(() => expect(screen.queryByText(/^Done since/)).toBeNull());
    await press(/^Good/);
    await becomes(2);
    expect((await trials()).map(({ right }) => right)).toEqual([false, true]);
  });

  it('several may be noted before the lid is tried again, the last taken back', async () => {
    await gritty();
    await press('Done: brushed out');
    expect(await screen.findByText('Done: brushed out.')).toBeTruthy();
    await advised();
    await press(/^Done: /);
    await screen.findByText(/^Done: brushed out; /);
    expect((await trials())[0]?.moves).toHaveLength(2);
    await press('Undo');
    await waitFor(async () => expect((await trials())[0]?.moves).toHaveLength(1));
    await press('Try the lid again');
    expect(await screen.findByRole('button', { name: /^Good/ })).toBeTruthy();
    await tick('Gritty');
    await press('Get advice (1)');
    await becomes(2);
  });

  it('once the cutter was at it again, asks how it is now', async () => {
    await tightOnTheJig();
    await show(id, TrialStage);
    await tightWords();
    await cut('tenon', 1.7);
    expect(await screen.findByRole('button', { name: /^Good/ })).toBeTruthy();
  });

  it('play that is right and nothing else is left as it is: the trial is good then', async () => {
    await measured(42.47);
    await cut('recess', 1.62);
    await setUp(id, 'tenon');
    await cut('tenon', 1.62);
    await recordTrial(id, 'loose', {
      right: false,
      goingOn: ['end-play'],
      seated: 'flush',
      threads: ['sound'],
      marks: null,
      endPlay: length(0.2, '0.2 mm'),
      turnsOn: null,
      afterFinish: false,
    });
    await show(id, TrialStage);
    await press('Leave it: it fits');
    await becomes(2);
    expect(await trials()).toMatchObject([
      { right: false, moves: [{ kind: 'leave-it' }] },
      { right: true, goingOn: ['end-play'], endPlay: { text: '0.2 mm' } },
    ]);
  });
});

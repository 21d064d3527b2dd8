// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { recordPass } from '../../src/app/cutting.ts';
import { writer } from '../../src/app/session.ts';
import { newId } from '../../src/platform/ids.ts';
import { appendEvent } from '../../src/storage/events.ts';
import CutStage from '../../src/ui/bench/cut/stage.tsx';
import type { StageProps } from '../../src/ui/bench/stage-props.ts';
import { route } from '../../src/ui/shell/route.ts';
import { boxOf, change, length, newBox, runOf, setUp, show } from './cut-box-on-bench.tsx';

let id = '';
beforeEach(async () => {
  id = await newBox();
});
afterEach(() => {
  cleanup();
  route.value = ['bench'];
});

const CutRecess = (props: StageProps) => <CutStage {...props} stage="cut-recess" />;
const CutTenon = (props: StageProps) => <CutStage {...props} stage="cut-tenon" />;

const button = (name: string | RegExp) => screen.findByRole('button', { name });
const press = async (name: string | RegExp) => fireEvent.click(await button(name));
const cuts = async () => (await boxOf(id)).cuts;
const becomes = (count: number) => waitFor(async () => expect(await cuts()).toHaveLength(count));

/** A recess that was cut to its planned depth and closed. */
const cutRecess = async () => {
  await setUp(id, 'recess');
  for (const [depth, isLast] of [
    [1.08, false],
    [1.62, true],
  ] as const) {
    const run = await runOf(id, 'recess');
    if (!run) throw new Error('no run');
    const text = `${depth} mm`;
    const pass = { id: newId(), part: 'recess', run, depth: length(depth, text), correction: false } as const;
    await recordPass(id, { ...pass, isLast });
  }
};

describe('the cut is withheld', () => {
  it('until the piece has been set up, with the way there', async () => {
    await show(id, CutRecess);
    expect(await screen.findByText('Don’t switch on.')).toBeTruthy();
    expect(screen.getByRole('link', { name: 'To the set-up' }).getAttribute('href')).toBe(
      '#/bench/set-up-recess',
    );
    expect(screen.queryByRole('button', { name: /Cutter stopped/ })).toBeNull();
  });

  it('when a hold point was skipped, with the way back to that set-up', async () => {
    const runId = await setUp(id, 'recess', { skip: 'dry-run' });
    await show(id, CutRecess);
    expect(await screen.findByText('A hold point of its set-up is not passed.')).toBeTruthy();
    expect(screen.getByRole('link', { name: 'To the set-up' }).getAttribute('href')).toBe(
      `#/set-up/${runId}`,
    );
  });
});

describe('passes', () => {
  it('a two-pass cut takes two taps, the second closes the set-up as cut', async () => {
    await setUp(id, 'recess');
    await show(id, CutRecess);
    await press('Cutter stopped: pass 1 cut');
    await becomes(1);
    expect((await runOf(id, 'recess'))?.closed).toBeNull();
    // Another screen instance: the time for which a second tap is deaf is over.
    cleanup();
    await show(id, CutRecess);
    await press('Cutter stopped: pass 2 cut');
    await becomes(2);
    const [first, second] = await cuts();
    // Two thirds, then the last third: common practice, no source.
    expect((first?.depth.mm ?? 0) / (second?.depth.mm ?? 1)).toBeCloseTo(2 / 3, 6);
    expect((await runOf(id, 'recess'))?.closed).toBe('cut');
    await waitFor(() => expect(location.hash).toBe('#/bench'));
  });

  it('a trembling tap records one pass', async () => {
    await setUp(id, 'recess');
    await show(id, CutRecess);
    const stopped = await button('Cutter stopped: pass 1 cut');
    fireEvent.click(stopped);
    fireEvent.click(stopped);
    fireEvent.click(await button('Cutter stopped: pass 2 cut'));
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(await cuts()).toHaveLength(1);
  });

  it('the last pass and the close are kept together or not at all', async () => {
    const runId = await setUp(id, 'recess');
    await show(id, CutRecess);
    await press('Cutter stopped: pass 1 cut');
    await becomes(1);
    cleanup();
    await show(id, CutRecess);
    await button('Cutter stopped: pass 2 cut');
    // Another tab was quicker by one event.
    const run = await runOf(id, 'recess');
    await appendEvent({
      kind: 'paused',
      at: 1,
      mono: 1,
      hid: 0,
      session: 'other',
      logId: 'mine',
      runId,
      n: run?.nextN ?? 0,
      writer: writer.value,
    });
    await press('Cutter stopped: pass 2 cut');
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(await cuts()).toHaveLength(1);
    expect((await runOf(id, 'recess'))?.closed).toBeNull();
  });

  it('undo takes the newest pass back', async () => {
    await setUp(id, 'recess');
    await show(id, CutRecess);
    await press('Cutter stopped: pass 1 cut');
    await becomes(1);
    await button('Cutter stopped: pass 2 cut');
    await press('Undo');
    await becomes(0);
    expect(await button('Cutter stopped: pass 1 cut')).toBeTruthy();
  });

  it('undo of the last pass opens the set-up again', async () => {
    await cutRecess();
    await show(id, CutRecess);
    await press('Undo the last pass');
    await becomes(1);
    expect((await runOf(id, 'recess'))?.closed).toBeNull();
    expect(await button('Cutter stopped: pass 2 cut')).toBeTruthy();
  });

  it('something moved between passes: noted in the same set-up, which asks again for what that lost', async () => {
    const runId = await setUp(id, 'recess');
    await show(id, CutRecess);
    await press('Cutter stopped: pass 1 cut');
    await becomes(1);
    await button('Cutter stopped: pass 2 cut');
    await press('Something moved');
    await press('Dial, slide');
    await waitFor(() => expect(location.hash).toBe(`#/set-up/${runId}`));
    const run = await runOf(id, 'recess');
    expect(run?.steps.filter(({ status }) => status === 'reopened').map(({ step }) => step.key)).toContain(
      'touch-off',
    );
    expect(await cuts()).toHaveLength(1);
  });
});

describe('what the screen says', () => {
  it('the stop from the dry run, the dial, and that a recess pushes back', async () => {
    await setUp(id, 'recess');
    await show(id, CutRecess);
    expect((await screen.findByText('3 1/2')).closest('p')?.textContent).toBe('STOP at 3 1/2 turns');
    // 43 thou on a dial of 50 marks to 0.05 in: a mark a thou.
    expect(screen.getByText('43 marks')).toBeTruthy();
    expect(screen.getByText('Dial, for 0.043 in:')).toBeTruthy();
    expect(screen.getByText('Crank pushes back.')).toBeTruthy();
  });

  it('a tenon pulls the crank; an oversize one is cut to the depth that suits it', async () => {
    await cutRecess();
    await change(id, (box) => ({
      ...box,
      tenon: [{ id: 't', seq: 2, where: 'end', diameter: length(43, '43 mm'), overCrests: false }],
    }));
    await setUp(id, 'tenon');
    await show(id, CutTenon);
    expect(await screen.findByText('Crank pulls: hold back, go slow.')).toBeTruthy();
    expect(screen.getByText(/^The tenon is \d+ thou over: this depth suits it\.$/)).toBeTruthy();
  });

  it('a tenon with too little thread is not said to be suited by any depth', async () => {
    await cutRecess();
    await change(id, (box) => ({
      ...box,
      tenon: [{ id: 't', seq: 2, where: 'end', diameter: length(40.3, '40.3 mm'), overCrests: false }],
    }));
    await setUp(id, 'tenon');
    await show(id, CutTenon);
    expect(await screen.findByText(/^Only \d+ % of the thread would engage/)).toBeTruthy();
    expect(screen.queryByText(/this depth suits it/)).toBeNull();
  });

  it('a recess cut too shallow is said on what was cut, and the big button is one more pass', async () => {
    await setUp(id, 'recess');
    for (const [depth, isLast] of [
      [0.4, false],
      [0.7, true],
    ] as const) {
      const run = await runOf(id, 'recess');
      if (!run) throw new Error('no run');
      await recordPass(id, {
        id: `pass ${depth}`,
        part: 'recess',
        run,
        depth: length(depth, `${depth} mm`),
        correction: false,
        isLast,
      });
    }
    await show(id, CutRecess);
    expect((await screen.findByRole('alert')).textContent).toMatch(/engage.*Cut the recess deeper first\.$/);
    expect(screen.getByRole('link', { name: 'Once more with the cutter' }).className).toBe('act main');
    expect(screen.getByRole('link', { name: 'Go on' }).className).toBe('act');
  });

  it('without a count: stop where the dry run stopped, and a way to note the turns', async () => {
    await setUp(id, 'recess', { turns: null });
    await show(id, CutRecess);
    expect(await screen.findByText(/where the dry run stopped/)).toBeTruthy();
    await press('Note the turns');
    fireEvent.input(await screen.findByLabelText('Turns to the stop'), { target: { value: '3 1/4' } });
    await press('Keep it');
    expect(await screen.findByText('3 1/4')).toBeTruthy();
  });
});

describe('after a trial fit', () => {
  const again = (by: string) => {
    route.value = ['bench', 'cut-recess', 'again', by];
  };

  it('one tap cuts deeper by what was advised and leaves the set-up closed', async () => {
    await cutRecess();
    again('0.0508');
    await show(id, CutRecess);
    expect(await screen.findByText('+2 thou')).toBeTruthy();
    await press('Cutter stopped: cut');
    await becomes(3);
    const last = (await cuts()).at(-1);
    expect(last?.correction).toBe(true);
    expect(last?.depth.mm).toBeCloseTo(1.62 + 0.0508, 6);
    expect((await runOf(id, 'recess'))?.closed).toBe('cut');
  });

  it('more and less go by what a dial and a hand can do', async () => {
    await cutRecess();
    again('0');
    await show(id, CutRecess);
    expect(await screen.findByText('same depth')).toBeTruthy();
    await press('More');
    await press('More');
    expect(await screen.findByText('+4 thou')).toBeTruthy();
    await press('Less');
    expect(await screen.findByText('+2 thou')).toBeTruthy();
  });

  it('something moved: a new set-up, in which the groove is picked up', async () => {
    await cutRecess();
    again('0');
    await show(id, CutRecess);
    await press('Something moved');
    await press('Banjo');
    await waitFor(() => expect(location.hash).toMatch(/^#\/set-up\//));
    const run = await runOf(id, 'recess');
    expect(run?.closed).toBeNull();
    expect(run?.groove).toBe(true);
    expect(run?.steps.find(({ step }) => step.key === 'pick-up')?.status).not.toBe('not-needed');
    expect((await boxOf(id)).setUps).toHaveLength(2);
  });
});

describe('cut deeper or less', () => {
  it('puts a depth right; a bad one keeps what was typed and says the range', async () => {
    await cutRecess();
    await show(id, CutRecess);
    await press(/Cut deeper or less.*Pass 2/);
    const field = await screen.findByLabelText('Depth really cut');
    fireEvent.input(field, { target: { value: '3 m' } });
    await press('Keep it');
    expect((await screen.findByRole('alert')).textContent).toMatch(/^Depth really cut: /);
    expect((field as HTMLInputElement).value).toBe('3 m');
    fireEvent.input(field, { target: { value: '0.066' } });
    await press('Keep it');
    await waitFor(async () => expect((await cuts())[1]?.depth).toEqual(length(0.066 * 25.4, '0.066 in')));
  });
});

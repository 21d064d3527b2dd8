// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { beginExperiment } from '../../src/app/begin-experiment.ts';
import type { BoxOnHand } from '../../src/app/boxes.ts';
import { allExperiments, askedOf, lotOf, takeLot } from '../../src/app/experiments.ts';
import type { Found } from '../../src/app/findings.ts';
import { openSession, settings } from '../../src/app/session.ts';
import { startSetUp } from '../../src/app/start-set-up.ts';
import type { Box, ExperimentMeasure, ExperimentPlan } from '../../src/domain/box/records.ts';
import { powerTable } from '../../src/domain/experiment/experiment-power.ts';
import { findingsOf } from '../../src/domain/findings/answers/findings.ts';
import { DEFAULT_SETTINGS } from '../../src/domain/log/settings.ts';
import { DEFAULT_PROCEDURES } from '../../src/domain/setup/default-procedures.ts';
import { mm } from '../../src/domain/units/brands.ts';
import { forget } from '../../src/storage/connection.ts';
import { getRecord } from '../../src/storage/records.ts';
import { addLog } from '../../src/storage/whole-log.ts';
import { Experiment } from '../../src/ui/findings/experiment.tsx';
import { readExperiments } from '../../src/workers/findings-experiments.ts';
import {
  GAP,
  type InventedExperiment,
  inventedExperiment,
} from '../domain/experiment/invented-experiment.ts';
import { sampleBox, storedBox } from '../storage/sample-log.ts';

const PROCEDURE = DEFAULT_PROCEDURES['board-and-cone'];
const SQUARE = { step: 'square-banjo', sentence: 'Banjo against the square. Clamp it.' };
const FIT: ExperimentMeasure = { kind: 'fit' };

/** What the page is given, with the experiments of the log as the worker reads them. */
const found = async (): Promise<Found> => ({
  ...findingsOf({ rows: [], steps: [], leftOut: {} }),
  from: '',
  lastAlike: null,
  experiments: await readExperiments(['mine']),
  power: powerTable(),
});
const open = async () => {
  cleanup();
  render(<Experiment found={await found()} />);
};
const plan = async () => {
  await open();
  fireEvent.click(await screen.findByRole('button', { name: 'Plan a test' }));
  return screen.findByLabelText(/How many boxes/);
};
const only = async () => {
  const [experiment] = await allExperiments();
  if (!experiment) throw new Error('no experiment');
  return experiment.plan;
};
/** A box that is planned and no more. */
const planned = (id: string, change: Partial<Box> = {}): BoxOnHand => ({ id, box: sampleBox(change) });
const keep = ({ plan, boxes }: InventedExperiment, change: Partial<ExperimentPlan> = {}) =>
  addLog(
    [
      ...boxes.map(({ id, box }) => storedBox({ id, body: box })),
      {
        logId: 'mine',
        kind: 'experiment',
        id: 'experiment',
        rev: 1,
        writer: 'workshop',
        savedAt: 1,
        body: { ...plan, ...change },
      },
    ],
    boxes.flatMap(({ events }) => events),
  );
const say = () => document.body.textContent ?? '';

beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  forget();
  await openSession();
});
afterEach(cleanup);

describe('to plan an experiment', () => {
  it('asks for the step, what is measured, the boxes; draws and keeps the lots, two and two in every four', async () => {
    const boxes = await plan();
    expect(screen.getByLabelText<HTMLSelectElement>('Which step?').value).toBe('square-banjo');
    const reading = await screen.findByRole('radio', { name: /^The reading at “Back off the cone/ });
    expect((reading as HTMLInputElement).checked).toBe(true);
    screen.getByText(/The first reading of each box counts/);
    fireEvent.input(boxes, { target: { value: '12' } });
    fireEvent.click(screen.getByRole('button', { name: 'Assign boxes' }));
    await waitFor(async () => expect(await allExperiments()).toHaveLength(1));
    const { lots, step, measure } = await only();
    expect(step).toBe('square-banjo');
    expect(measure).toEqual(GAP);
    for (let from = 0; from < 12; from += 4)
      expect([...lots.slice(from, from + 4)].sort()).toEqual(['with', 'with', 'without', 'without']);
    await open();
    await screen.findByText('0 of 12 boxes; first look at 6.');
    screen.getByText(/^The reading at “Back off the cone/);
  });

  it('offers the fit where no reading can be taken, and begins afresh with each step', async () => {
    await plan();
    fireEvent.change(screen.getByLabelText('Which step?'), { target: { value: 'board' } });
    await screen.findByText(/^Right at once, or eased once/);
    const words = () => screen.getAllByRole('radio').map((radio) => radio.closest('label')?.textContent);
    expect(words()).toEqual(['Right at the first trial fit, or not', 'The time of the set-up']);
    fireEvent.click(screen.getByRole('radio', { name: 'The time of the set-up' }));
    await screen.findByText(/only where every time is known exactly/);
    fireEvent.change(screen.getByLabelText('Which step?'), { target: { value: 'square-banjo' } });
    await waitFor(() => expect(words()).toHaveLength(3));
    expect(
      screen.getByRole<HTMLInputElement>('radio', { checked: true }).closest('label')?.textContent,
    ).toMatch(/^The reading at/);
  });

  it('offers no hold point', async () => {
    await plan();
    const options = screen.getAllByRole('option').map((option) => option.textContent);
    const holds = PROCEDURE.steps.filter(({ hold }) => hold).map(({ sentence }) => sentence);
    expect(options.length).toBeGreaterThan(3);
    expect(options.filter((option) => holds.includes(option ?? ''))).toEqual([]);
  });

  it('refuses too few boxes beside the field, and keeps what was typed', async () => {
    const boxes = await plan();
    fireEvent.input(boxes, { target: { value: '3' } });
    fireEvent.click(screen.getByRole('button', { name: 'Assign boxes' }));
    await waitFor(() => screen.getByRole('alert'));
    expect((boxes as HTMLInputElement).value).toBe('3');
    expect(await allExperiments()).toEqual([]);
  });

  it('says before the lots are drawn what so many boxes can tell, by what is measured', async () => {
    const boxes = await plan();
    fireEvent.change(screen.getByLabelText('Which step?'), { target: { value: 'board' } });
    await screen.findByText(
      /With 40 boxes: 31 chances in 100 of a clear answer.*An unclear answer then says little/,
    );
    fireEvent.change(screen.getByLabelText('Which step?'), { target: { value: 'square-banjo' } });
    await screen.findByText(/With 40 boxes: 67 chances.*one without the step read more 7 times in 10/);
    fireEvent.input(boxes, { target: { value: '200' } });
    await screen.findByText(/With 200 boxes: 99 chances in 100/);
    const row = screen.getByRole('rowheader', { name: 'In 100' }).closest('tr');
    expect([...(row?.querySelectorAll('td') ?? [])].map((cell) => cell.textContent)).toContain('67');
  });
});

describe('a box of an experiment', () => {
  it('takes the next lot once, before its first set-up, and is told it before and after', async () => {
    await beginExperiment('trial', SQUARE, FIT, 8);
    const { lots } = await only();
    expect((await askedOf(planned('one')))?.lot).toBe(lots[0]);
    await takeLot(planned('one'), PROCEDURE);
    await takeLot(planned('one'), PROCEDURE);
    await takeLot(planned('two'), PROCEDURE);
    const now = await only();
    expect(now.boxes).toEqual(['one', 'two']);
    expect(lotOf(now, 'two')).toBe(lots[1]);
    const begun = { setUps: [{ runId: 'run', part: 'recess', seq: 1 }] } as const;
    expect((await askedOf(planned('one', begun)))?.lot).toBe(lots[0]);
    expect(await askedOf(planned('begun before', begun))).toBeNull();
    await takeLot(planned('begun before', begun), PROCEDURE);
    expect((await only()).boxes).toHaveLength(2);
  });

  it('has its lot on disk with its first set-up', async () => {
    await addLog([storedBox({ id: 'one' })], []);
    await beginExperiment('trial', SQUARE, FIT, 8);
    await startSetUp('run', planned('one'), 'recess');
    expect((await only()).boxes).toEqual(['one']);
    expect((await getRecord('mine', 'box', 'one'))?.body?.setUps).toHaveLength(1);
  });

  it('is never asked to leave out a hold point, or a step its procedure does not have, whoever drew the lots', async () => {
    for (const step of ['lock-post', 'no such step']) {
      globalThis.indexedDB = new IDBFactory();
      forget();
      await beginExperiment('trial', { step, sentence: 'Leave the post loose.' }, FIT, 8);
      expect(await askedOf(planned('one'))).toBeNull();
      await takeLot(planned('one'), PROCEDURE);
      expect((await only()).boxes).toEqual([]);
    }
  });
});

describe('an experiment under way', () => {
  it('says how far it is and when it will be looked at, and nothing of the difference', async () => {
    await keep(inventedExperiment({ taken: 19 }));
    await open();
    await screen.findByText('19 of 40 boxes; first look at 20.');
    expect(say()).not.toMatch(/clear answer|(less|more) with|Half way:|right with/);
    expect(screen.queryByText('Numbers')).toBeNull();
  });

  it('says which look waits for boxes that are still on the bench', async () => {
    const experiment = inventedExperiment({ taken: 20 });
    const boxes = experiment.boxes.map((each, i) =>
      i === 3 ? { ...each, box: { ...each.box, trials: [], closing: null } } : each,
    );
    await keep({ ...experiment, boxes });
    await open();
    await screen.findByText(/^The look waits for 1 box with a lot and not finished/);
    expect(say()).not.toMatch(/clear answer/);
  });

  it('half way tells what the first half showed, and goes on', async () => {
    await keep(inventedExperiment({ taken: 24, effect: 0 }));
    await open();
    await screen.findByText('Half way: no clear answer.');
    screen.getByText('24 of 40 boxes; last look at 40.');
    screen.getByText(/^Go on to the end/);
    screen.getByRole('button', { name: 'Cancel this test' });
  });

  it('given up before it has told anything, asks nothing more and is told of no more', async () => {
    await beginExperiment('trial', SQUARE, FIT, 8);
    await takeLot(planned('box 0'), PROCEDURE);
    await open();
    fireEvent.click(await screen.findByRole('button', { name: 'Cancel this test' }));
    await waitFor(async () => expect((await only()).givenUp).toBe(true));
    expect(await askedOf(planned('box 0'))).toBeNull();
    await open();
    await screen.findByRole('button', { name: 'Plan a test' });
    expect(screen.queryByRole('heading', { name: 'Earlier tests' })).toBeNull();
  });
});

describe('a finished experiment', () => {
  it('says by how much, within what range, what the lots allow to be said, and the fit second', async () => {
    settings.value = { ...DEFAULT_SETTINGS, unit: 'mm' };
    await keep(inventedExperiment({ effect: 2 }));
    await open();
    await screen.findByText('At the end: a clear answer.');
    screen.getByText(
      /^The first reading was 0\.\d\d mm less with the step, over a length of 80 mm\. It may be anything from 0\.\d\d mm to 0\.\d\d mm less\.$/,
    );
    screen.getByRole('img', { name: /^The first reading was 0\.\d\d mm less/ });
    screen.getByText(/The lots chose the boxes, so it was the step that made the difference, or luck/);
    screen.getByText(/^Second, the fit, which decides nothing here/);
    screen.getByText(/^Not measured: \d with the step, \d without\. They are left out, not guessed\.$/);
    fireEvent.click(screen.getByText('Numbers'));
    screen.getByRole('row', { name: /Boxes\s*20\s*20/ });
    screen.getByText(/^z -\d\.\d\d, clear from 1\.98 on/);
    expect(say()).not.toMatch(/NaN|undefined|null|Infinity|caused|significant/);
    fireEvent.click(screen.getByRole('button', { name: 'Put the result away' }));
    await screen.findByRole('heading', { name: 'Earlier tests' });
    screen.getByRole('button', { name: 'Plan a test' });
    screen.getByText('At the end: a clear answer.');
  });

  it('in thou where the user thinks in inches', async () => {
    settings.value = { ...DEFAULT_SETTINGS, unit: 'in' };
    await keep(inventedExperiment({ effect: 2 }));
    await open();
    await screen.findByText(
      /^The first reading was \d\.\d thou less with the step, over a length of 3 1\/8 in\./,
    );
  });

  it('of a time, of the fit, and an old one without a measure', async () => {
    await keep(inventedExperiment({ measure: { kind: 'time' } }));
    await open();
    await screen.findByText(/^The first set-up took \d+ % (less|more) time with the step\./);
    screen.getByText(/not a reason to skip it/);
    const { measure: _, ...old } = inventedExperiment({ seed: 3 }).plan;
    for (const plan of [inventedExperiment({ measure: FIT, seed: 3 }).plan, old]) {
      globalThis.indexedDB = new IDBFactory();
      forget();
      await keep({ ...inventedExperiment({ seed: 3 }), plan });
      await open();
      await screen.findByText('Right at the first trial fit, or not');
      screen.getByText(
        /^\d+ (more|fewer) in 100 were right with the step\. It may be anything from \d+ fewer in 100 to \d+ more in 100\.$/,
      );
      expect(say()).not.toMatch(/Second, the fit/);
      screen.getByText('That is not a reason to skip it.');
    }
  });

  it('with no reading taken, or every one the same, says just that', async () => {
    await keep(inventedExperiment({ boxes: 8, missingOneIn: 1 }));
    await open();
    await screen.findByText('At the end: nothing to compare.');
    screen.getByText('No box was measured.');
    screen.getByText('Not measured: 4 with the step, 4 without. They are left out, not guessed.');
    globalThis.indexedDB = new IDBFactory();
    forget();
    const experiment = inventedExperiment({ boxes: 8, missingOneIn: 1e9 });
    const same = experiment.boxes.map((each) => ({
      ...each,
      events: each.events.map((event) =>
        event.kind === 'read' && event.reading.kind === 'gap'
          ? { ...event, reading: { ...event.reading, gap: { mm: mm(0.76), text: '0.76 mm' } } }
          : event,
      ),
    }));
    await keep({ ...experiment, boxes: same });
    await open();
    await screen.findByText('At the end: no difference to be seen.');
    expect(say()).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it('clear at half can be put away there, and is kept among the earlier ones', async () => {
    await keep(inventedExperiment({ taken: 22, effect: 4 }));
    await open();
    await screen.findByText('Half way: a clear answer.');
    fireEvent.click(screen.getByRole('button', { name: 'Stop here and put the result away' }));
    await screen.findByRole('heading', { name: 'Earlier tests' });
    screen.getByText('Half way: a clear answer.');
  });
});

// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, configure, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { announce } from '../../src/app/changes.ts';
import { cancelFindings, findings } from '../../src/app/findings.ts';
import { openSession } from '../../src/app/session.ts';
import type { Box, Stored } from '../../src/domain/box/records.ts';
import type { Asked, Meanwhile } from '../../src/platform/findings-worker.ts';
import { forget } from '../../src/storage/connection.ts';
import { addLog } from '../../src/storage/whole-log.ts';
import Findings from '../../src/ui/findings/findings.tsx';
import { answerTo } from '../../src/workers/findings-answer.ts';
import type { FindingsQuestion, Found } from '../../src/workers/findings-message.ts';
import { generateDemo } from '../demo/generate.ts';

/** Asked in this realm, for there are no workers here; the reckoning is the real one. */
const askForFindings = vi.hoisted(() => vi.fn());
vi.mock('../../src/platform/findings-worker.ts', () => ({ askForFindings }));

const reckon = (
  question: Omit<FindingsQuestion, 'want'>,
  { onProgress, onLast }: Meanwhile,
): Asked<Found | null> => ({
  answer: answerTo({ ...question, want: 'findings' }, 'this code', { share: onProgress, last: onLast }).then(
    (given) => (given.kind === 'found' ? given.found : null),
  ),
  cancel: () => {},
});

const demo = generateDemo(20260701, Date.UTC(2026, 6, 1));
const numberOf = ({ body }: Stored): number => (body as Box).number;

/** The workshop's first boxes, in the user's own log. */
const keep = async (boxes: number, change: (box: Box) => Box = (box) => box) => {
  const records = demo.records.flatMap((record): Stored[] => {
    const mine = { ...record, logId: 'mine' };
    if (record.kind !== 'box') return [mine];
    return numberOf(record) <= boxes ? [{ ...mine, body: change(record.body as Box) }] : [];
  });
  const runs = new Set(
    records.flatMap(({ kind, body }) =>
      kind === 'box' ? (body as Box).setUps.map(({ runId }) => runId) : [],
    ),
  );
  await addLog(
    records,
    demo.events.filter(({ runId }) => runs.has(runId)).map((event) => ({ ...event, logId: 'mine' })),
  );
};
const open = async () => {
  render(<Findings />);
  await waitFor(() => expect(findings.value.found).not.toBeNull());
  if ((findings.value.found?.rows ?? 0) > 0)
    await screen.findByRole('heading', { name: 'What to change tomorrow' });
};
const say = () => document.body.textContent ?? '';

// A hundred boxes are put in and reckoned before each; the cores are shared with many others.
vi.setConfig({ testTimeout: 40_000, hookTimeout: 40_000 });
configure({ asyncUtilTimeout: 20_000 });
beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  forget();
  cancelFindings();
  findings.value = { is: 'not-asked', found: null };
  askForFindings.mockReset().mockImplementation(reckon);
  await openSession();
});
afterEach(cleanup);

describe('a young log', () => {
  it('without a box says what starts the findings, and leads to the Bench', async () => {
    await open();
    screen.getByText(/No box has been tried yet/);
    expect(screen.getByRole('link', { name: 'To the Bench' }).getAttribute('href')).toBe('#/bench');
    expect(screen.queryByRole('heading', { level: 2 })).toBeNull();
  });

  it('with a box that is only planned counts it as left out', async () => {
    await keep(1, (box) => ({ ...box, cuts: [], setUps: [], trials: [], closing: null }));
    await open();
    screen.getByText('Left out: 1 nothing cut yet.');
  });

  it('of three boxes shows them, what the handbook says of the wood, and what every step can show as', async () => {
    await keep(3);
    await open();
    screen.getByText(/Nothing yet\. Links are weighed first at 20 boxes/);
    const last = (await screen.findByRole('heading', { name: /^Your last boxes in / })).closest('section');
    if (!last) throw new Error('no last boxes');
    await waitFor(() => expect(within(last).getAllByRole('listitem').length).toBeGreaterThan(0));
    await waitFor(() => within(last).getByRole('link', { name: /^More of / }));
    screen.getByRole('heading', { name: 'Too few boxes to tell' });
    for (const heading of screen.getAllByRole('heading', { level: 4 }))
      expect(heading.closest('article')?.textContent).toMatch(/Missed, it can show as: /);
    await screen.findByRole('heading', { name: 'Where set-up time goes' });
    expect(screen.queryByRole('heading', { name: 'By hardness' })).toBeNull();
  });
});

describe('two years of boxes', () => {
  beforeEach(async () => {
    await keep(120);
    await open();
  });

  it('say what to change tomorrow, that it only goes together, and how many were left out', () => {
    const lead = screen.getByRole('heading', { name: 'What to change tomorrow' }).closest('section');
    expect(lead?.textContent).toMatch(/Don’t miss this one: “.+” \((strong|possible) link with lids/);
    expect(lead?.textContent).toMatch(/They go together; the log cannot say why\./);
    expect(lead?.textContent).toMatch(/boxes tried: \d+ right at the first trial, .+Left out: /);
  });

  it('tell a link in boxes of 100, draw it with words, and keep its numbers one tap away', () => {
    const [link] = screen.getAllByRole('article');
    if (!link) throw new Error('no link');
    expect(link.textContent).toMatch(
      /Where it was missed, \d+ boxes in 100 did not fit at first in a way it can explain; where it was done, \d+ boxes in 100\./,
    );
    within(link).getByRole('img', {
      name: /^\d+ more boxes in 100 did not fit where it was missed; 95 % interval from [+-]\d+ to [+-]\d+$/,
    });
    fireEvent.click(within(link).getByText('Numbers'));
    const [counts, tests] = within(link).getAllByRole('table');
    if (!counts || !tests) throw new Error('no tables');
    within(counts).getByRole('row', { name: /^Missed \d+ \d+$/ });
    within(tests).getByRole('row', { name: /^Exact test .*0\.\d{3}$/ });
    within(tests).getByRole('row', { name: /^The same step, faults it cannot cause/ });
    expect(link.textContent).toMatch(/From \d+ boxes; left out: \d+ never tried/);
  });

  it('have a picture with a name for links, clearance, hardness and time', async () => {
    await screen.findByRole('heading', { name: 'Where set-up time goes' });
    for (const picture of screen.getAllByRole('img')) expect(picture.getAttribute('aria-label')).toBeTruthy();
    screen.getAllByRole('img', { name: /trials tight, \d+ right, \d+ slack/ });
    screen.getByRole('img', { name: /^Threads that hold at .+ by side hardness/ });
    screen.getAllByRole('img', { name: /half of the times from/ });
  });

  it('never say that one thing made the other, nor take "no sign" for leave to skip', async () => {
    await screen.findByRole('heading', { name: 'Test a step' });
    expect(say()).not.toMatch(/\bcaused\b|\bbecause of\b|significant/i);
    const quiet = screen.queryByRole('heading', { name: 'No sign of one' });
    if (quiet) expect(quiet.nextElementSibling?.textContent).toMatch(/None of this is a reason to skip/);
  });
});

describe('the reckoning', () => {
  it('shows how far it is after 200 ms, stops when told to, and can be asked again', async () => {
    const cancel = vi.fn();
    askForFindings.mockImplementation((_question, { onProgress }: Meanwhile) => {
      queueMicrotask(() => onProgress(0.42));
      return { answer: new Promise(() => {}), cancel };
    });
    render(<Findings />);
    expect(screen.queryByRole('status')).toBeNull();
    expect((await screen.findByRole('status')).textContent).toBe('Reading your log: 42 %');
    fireEvent.click(screen.getByRole('button', { name: 'Stop' }));
    expect(cancel).toHaveBeenCalledOnce();
    await waitFor(() => screen.getByText('Stopped. Nothing was changed.'));
    askForFindings.mockImplementation(reckon);
    fireEvent.click(screen.getByRole('button', { name: 'Read it now' }));
    await waitFor(() => screen.getByText(/No box has been tried yet/));
    expect(screen.queryByText('Stopped. Nothing was changed.')).toBeNull();
  });

  it('happens once while nothing is written, and keeps what it has when no row changed', async () => {
    await keep(3);
    await open();
    const before = findings.value.found;
    cleanup();
    await open();
    expect(askForFindings).toHaveBeenCalledTimes(1);
    announce('rig');
    await waitFor(() => expect(askForFindings).toHaveBeenCalledTimes(2));
    const second = askForFindings.mock.results[1]?.value as Asked<Found | null>;
    expect(await second.answer).toBeNull();
    expect(findings.value.found).toBe(before);
  });

  it('shows at once what was found last time, and from when, until it is read anew', async () => {
    await keep(20);
    await open();
    const found = findings.value.found as Found;
    cleanup();
    findings.value = { is: 'not-asked', found: null };
    let answer: (found: Found | null) => void = () => {};
    askForFindings.mockImplementation((_question, { onLast }: Meanwhile) => {
      queueMicrotask(() => onLast(found, new Date(2026, 2, 14, 10, 42).getTime()));
      return { answer: new Promise((resolve) => (answer = resolve)), cancel: () => {} };
    });
    announce('box');
    render(<Findings />);
    await screen.findByRole('heading', { name: 'What to change tomorrow' });
    expect((await screen.findByRole('status')).textContent).toBe(
      'Reading what is new: 0 %. Below is what was found on 14 Mar 2026, 10:42.',
    );
    fireEvent.click(screen.getByRole('button', { name: 'Stop' }));
    await screen.findByText('Stopped. Below is what was found on 14 Mar 2026, 10:42.');
    fireEvent.click(screen.getByRole('button', { name: 'Read it now' }));
    await screen.findByText(/^Reading what is new/);
    answer(null);
    await waitFor(() => expect(screen.queryByText(/found on 14 Mar/)).toBeNull());
    expect(findings.value.found).toBe(found);
  });

  it('that fails says so, that nothing is lost, and tries again', async () => {
    askForFindings.mockImplementationOnce(() => ({ answer: Promise.reject(new Error()), cancel: () => {} }));
    render(<Findings />);
    await waitFor(() => expect(screen.getByRole('alert').textContent).toMatch(/Your log is safe/));
    fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
    await waitFor(() => screen.getByText(/No box has been tried yet/));
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

describe('the rows as a table', () => {
  it('has a heading of columns, a line a row, and every column is explained', async () => {
    await keep(20);
    const ask = async (want: 'rows' | 'columns') => {
      const given = await answerTo({ want, logIds: ['mine'], woods: {} }, '', {
        share: () => {},
        last: () => {},
      });
      if (given.kind !== 'sheet') throw new Error(given.kind);
      return given.text.replace('\uFEFF', '').trimEnd().split('\r\n');
    };
    const [heading, ...rows] = await ask('rows');
    const [, ...columns] = await ask('columns');
    expect(rows).toHaveLength(20);
    expect(columns.map((line) => line.split(',')[0])).toEqual(heading?.split(','));
  });
});

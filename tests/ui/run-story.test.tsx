// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import { DEFAULT_PROCEDURES } from '../../src/domain/setup/default-procedures.ts';
import type { Happening, SetUpEvent } from '../../src/domain/setup/events.ts';
import { foldRun } from '../../src/domain/setup/fold.ts';
import { RunStory } from '../../src/ui/boxes/run-story.tsx';

const procedure = DEFAULT_PROCEDURES['board-and-cone'];
const HAPPENED: readonly Happening[] = [
  {
    kind: 'started',
    boxId: 'box',
    part: 'recess',
    procedureId: 'board-and-cone',
    procedure,
    inherited: [],
    fromRun: null,
    groove: false,
  },
  { kind: 'ticked', steps: ['isolate'], verdict: 'pass' },
  { kind: 'ticked', steps: ['protect'], verdict: 'pass' },
  { kind: 'ticked', steps: ['board'], verdict: 'skip' },
  { kind: 'ticked', steps: ['lock-post'], verdict: 'fail' },
  { kind: 'undone', target: { n: 5, writer: 'w' } },
  { kind: 'ticked', steps: ['lock-post'], verdict: 'pass' },
  { kind: 'moved', what: 'post-loosened' },
];
const events = HAPPENED.map(
  (happening, i): SetUpEvent => ({
    logId: 'mine',
    runId: 'run',
    n: i + 1,
    writer: 'w',
    session: 's',
    at: i * 20_000,
    mono: i * 20_000,
    hid: 0,
    ...happening,
  }),
);

afterEach(cleanup);

it('tells what was ticked, taken back and moved, and how the set-up stood after the move', () => {
  const run = foldRun(events);
  if (!run) throw new Error('no run');
  render(<RunStory run={run} />);
  const rows = screen.getAllByRole('listitem');
  expect(rows).toHaveLength(events.length);
  expect(rows[1]?.textContent).toMatch(/^Passed: Off at the wall\..*0:20$/);
  expect(rows[3]?.textContent).toContain('Skipped: Board flat');
  expect(rows[4]?.querySelector('s')?.textContent).toContain('Failed: Collar down');
  const moved = rows.at(-1);
  if (!moved) throw new Error('no rows');
  expect(moved.textContent).toContain('Moved: the post');
  // The plug, the skipped board with the two steps that rest on it, and the post; the face shield keeps its own.
  within(moved).getByText('5 steps asked again.');
  within(moved).getByRole('img', { name: /5 lost its setting, 1 passed/ });
});

import { record, undo } from '../../app/set-up-run.ts';
import type { RunState } from '../../domain/setup/fold.ts';
import { undoTarget } from '../../domain/setup/undo.ts';
import { TotalTime } from './step/time.tsx';
import { partName, setUpWords as words } from './words.ts';

/** Undo, which piece, and the whole time, which pauses at a touch. */
export const SetUpHeader = ({ run }: { run: RunState }) => (
  <header>
    <button type="button" disabled={undoTarget(run) === null} onClick={() => undo()}>
      {words.undo}
    </button>
    <b>{partName[run.part]}</b>
    <button type="button" class="clock" onClick={() => record({ kind: 'paused' })}>
      <span class="hidden-words">{words.pause}, </span>
      <TotalTime run={run} />
    </button>
  </header>
);

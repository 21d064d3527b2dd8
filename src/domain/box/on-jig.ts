import type { Part } from '../setup/events.ts';
import type { RunState } from '../setup/fold.ts';
import { pieceAt } from './piece.ts';
import type { Box } from './records.ts';
import { inSequence } from './sequence.ts';
import { isReady, latestRun } from './stages.ts';

type Runs = ReadonlyMap<string, RunState>;

/** The newest set-up begun, given up or not: whatever held before it may not hold after. */
const newestSetUp = ({ setUps }: Box) => inSequence(setUps.map((ref) => ({ ...ref, id: ref.runId }))).at(-1);

/**
 * The piece that is on the jig, so the one that can be cut: the one cut last, unless it was turned again, taken off, or the other one
 * was set up since, which is on the jig once its set-up is ready. Null when nobody can tell, and for a box that is closed.
 */
export const onJig = (box: Box, runs: Runs): Part | null => {
  const cut = inSequence(box.cuts).at(-1);
  if (!cut || box.closing) return null;
  const since = newestSetUp(box);
  const part = since && since.seq > cut.seq ? since.part : cut.part;
  const run = latestRun(box, part, runs);
  if (run?.steps.some(({ reopenedBy }) => reopenedBy === 'chuck-off')) return null;
  if (part === cut.part) return pieceAt(box, part).since > cut.seq ? null : part;
  return isReady(run) ? part : null;
};

/**
 * Whether the piece on the jig may be cut again at its setting: its newest set-up was ready, nothing was set up or noted as moved
 * since, and nobody is in doubt of it.
 */
export const settingHolds = (box: Box, runs: Runs): boolean => {
  const part = onJig(box, runs);
  const run = part && latestRun(box, part, runs);
  if (!run || run.readOnly || !isReady(run) || newestSetUp(box)?.runId !== run.runId) return false;
  return !run.timeline.some(
    ({ event, undone }) => !undone && event.kind === 'moved' && run.stray.includes(event),
  );
};

import type { BoxOnHand } from '../../app/boxes.ts';
import type { RunState } from '../../domain/setup/fold.ts';

/** What every stage is given. */
export interface StageProps {
  readonly onHand: BoxOnHand;
  readonly runs: ReadonlyMap<string, RunState>;
}

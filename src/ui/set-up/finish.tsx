import type { RunState } from '../../domain/setup/fold.ts';
import { ClosedRun } from './closed-run.tsx';
import { Ready } from './ready.tsx';
import { Withheld } from './withheld.tsx';

interface Props {
  readonly run: RunState;
  readonly onChoose: (key: string) => void;
  readonly onMoved: () => void;
}

/** The end of a set-up: ready for the cut, or "don't switch on" and what is in the way, or long over. */
export const Finish = ({ run, onChoose, onMoved }: Props) => {
  if (run.contested || run.readOnly || run.closed) return <ClosedRun run={run} />;
  if (run.withheldBy.length > 0) return <Withheld run={run} onChoose={onChoose} />;
  return <Ready run={run} onMoved={onMoved} />;
};

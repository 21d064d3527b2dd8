import type { Part } from '../../../domain/setup/events.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { hrefTo } from '../../shell/route.ts';
import { cutWords as words } from './words.ts';

const why = (run: RunState | null, part: Part): string => {
  if (!run) return words.notReady.none(part);
  if (run.contested) return words.notReady.contested;
  return run.now === null ? words.notReady.withheld : words.notReady.open;
};

/** No cut without a set-up that is ready: why not, and the way back to it. */
export const CutNotReady = ({ run, part }: { run: RunState | null; part: Part }) => (
  <>
    <p class="dont-switch-on">{words.dontSwitchOn}</p>
    <p>{why(run, part)}</p>
    <a
      class="act main"
      href={
        run && !run.contested && run.closed === null
          ? hrefTo('set-up', run.runId)
          : hrefTo('bench', `set-up-${part}`)
      }
    >
      {words.toSetUp}
    </a>
  </>
);

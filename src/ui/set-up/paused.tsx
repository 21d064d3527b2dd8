import { record } from '../../app/set-up-run.ts';
import type { RunState } from '../../domain/setup/fold.ts';
import { hrefTo } from '../shell/route.ts';
import { Strip } from './strip.tsx';
import { setUpWords as words } from './words.ts';

/** The clock stands still; the setting does not change by itself. */
export const Paused = ({ run }: { run: RunState }) => (
  <main class="set-up">
    <Strip run={run} now={run.now} />
    <h1>{words.paused}</h1>
    <div class="acts last">
      <button type="button" class="go" onClick={() => record({ kind: 'resumed' })}>
        {words.resume}
      </button>
      <a class="act wide" href={hrefTo('bench')}>
        {words.putAway}
      </a>
      <button
        type="button"
        class="wide fail"
        onClick={async () => {
          if (await record({ kind: 'closed', how: 'abandoned' })) location.hash = hrefTo('bench');
        }}
      >
        {words.giveUp}
      </button>
    </div>
  </main>
);

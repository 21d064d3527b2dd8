import type { RunState } from '../../domain/setup/fold.ts';
import { Lazy } from '../shell/lazy.tsx';
import { hrefTo } from '../shell/route.ts';
import { Strip } from './strip.tsx';
import { setUpWords as words } from './words.ts';

/** A set-up that is over, or that this version must not touch: how it stands, and its photos. */
export const ClosedRun = ({ run }: { run: RunState }) => (
  <main class="set-up">
    <Strip run={run} now={null} />
    <h1>{run.contested ? words.contested : run.readOnly ? words.readOnly : words.closedRun}</h1>
    <Lazy load={() => import('./step/set-up-photos.tsx')} props={{ boxId: run.boxId }} />
    <div class="ends">
      <a class="act" href={hrefTo('boxes', run.boxId)}>
        {words.timeline}
      </a>
      <a class="act" href={hrefTo('bench')}>
        {words.putAway}
      </a>
    </div>
  </main>
);

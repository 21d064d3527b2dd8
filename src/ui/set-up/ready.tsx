import { useSignal } from '@preact/signals';
import type { RunState } from '../../domain/setup/fold.ts';
import { StepDrawing } from '../drawings/step-drawing.tsx';
import { Lazy } from '../shell/lazy.tsx';
import { hrefTo } from '../shell/route.ts';
import { SetUpHeader } from './set-up-header.tsx';
import { Strip } from './strip.tsx';
import { setUpWords as words } from './words.ts';

/** Everything holds: how to begin the cut, and a photo of the set-up for whoever wants one. */
export const Ready = ({ run, onMoved }: { run: RunState; onMoved: () => void }) => {
  const photos = useSignal(false);
  if (photos.value)
    return (
      <main class="set-up">
        <h1>{words.photoOf}</h1>
        <Lazy load={() => import('./step/set-up-photos.tsx')} props={{ boxId: run.boxId, canAdd: true }} />
        <button
          type="button"
          onClick={() => {
            photos.value = false;
          }}
        >
          {words.back}
        </button>
      </main>
    );
  return (
    <main class="set-up">
      <div class="step ready">
        <SetUpHeader run={run} />
        <Strip run={run} now={null} />
        <div class="drawing-slot">
          <StepDrawing of="power-on" />
        </div>
        <div class="words">
          <h1>{words.readyTitle}</h1>
          <p>{words.ready}</p>
          <p>{words.readyHands}</p>
        </div>
        <div class="acts">
          <a class="act go" href={hrefTo('bench', `cut-${run.part}`)}>
            {words.toTheCut}
          </a>
          <button
            type="button"
            onClick={() => {
              photos.value = true;
            }}
          >
            {words.photo}
          </button>
          <button type="button" class="moved-too" aria-label={words.somethingMoved} onClick={onMoved}>
            {words.moved}
          </button>
        </div>
      </div>
    </main>
  );
};

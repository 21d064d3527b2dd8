import { record } from '../../app/set-up-run.ts';
import { MOVEMENTS } from '../../domain/setup/procedure.ts';
import { movementShort, setUpWords as words } from '../text/set-up-words.ts';
import { feel } from './feel.ts';

/** Stop first; then what moved. The fold re-opens exactly what that loses. */
export const Moved = ({ onClose }: { onClose: () => void }) => (
  <main class="set-up">
    <h1 class="stop">{words.stopFirst}</h1>
    <p>{words.whatMoved}</p>
    <ul class="choices">
      {MOVEMENTS.map((what) => (
        <li key={what}>
          <button
            type="button"
            onClick={async () => {
              if (!(await record({ kind: 'moved', what }))) return;
              feel('reopened');
              onClose();
            }}
          >
            {movementShort[what]}
          </button>
        </li>
      ))}
    </ul>
    <button type="button" onClick={onClose}>
      {words.nothingMoved}
    </button>
  </main>
);

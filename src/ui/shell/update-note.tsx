import { takeUpdate, updateOffered } from '../../app/updates.ts';
import { shellWords as words } from './words.ts';

/** A new version waits and nothing is open that a reload could lose. */
export const UpdateNote = () =>
  updateOffered.value && (
    <div class="demo-note" role="status">
      <span>{words.update}</span>
      <button type="button" onClick={takeUpdate}>
        {words.takeUpdate}
      </button>
    </div>
  );

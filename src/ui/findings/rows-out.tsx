import { useSignal } from '@preact/signals';
import { shareSheet } from '../../app/findings-sheet.ts';
import { findingsWords as words } from './words.ts';

/** The rows behind every figure, and what their columns hold, as files. */
export const RowsOut = () => {
  const busy = useSignal(false);
  const failed = useSignal(false);
  const give = async (want: 'rows' | 'columns') => {
    busy.value = true;
    failed.value = (await shareSheet(want)) === undefined;
    busy.value = false;
  };
  return (
    <section>
      {failed.value && <p role="alert">{words.csvFailed}</p>}
      <div class="row">
        <button type="button" disabled={busy.value} onClick={() => give('rows')}>
          {words.csv}
        </button>
        <button type="button" disabled={busy.value} onClick={() => give('columns')}>
          {words.columns}
        </button>
      </div>
    </section>
  );
};

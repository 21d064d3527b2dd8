import { useSignal } from '@preact/signals';
import { shareSheet } from '../../app/findings-sheet.ts';
import { useAct } from '../parts/use-act.ts';
import { findingsWords as words } from './words.ts';

/** The rows behind every figure, and what their columns hold, as files. */
export const RowsOut = () => {
  const failed = useSignal(false);
  const { busy, act: give } = useAct(async (_, want: 'rows' | 'columns') => {
    failed.value = (await shareSheet(want)) === undefined;
  });
  return (
    <section>
      {failed.value && <p role="alert">{words.csvFailed}</p>}
      <div class="row">
        <button type="button" disabled={busy} onClick={() => give('rows')}>
          {words.csv}
        </button>
        <button type="button" disabled={busy} onClick={() => give('columns')}>
          {words.columns}
        </button>
      </div>
    </section>
  );
};

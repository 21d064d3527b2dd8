import { shareSheet } from '../../../app/share-sheet.ts';
import type { JointTable } from '../../../domain/findings/joint-row.ts';
import { dictionarySheet, rowsSheet } from '../../../domain/findings/rows-sheet.ts';
import { findingsWords as words } from '../../text/findings-words.ts';

/** The rows behind every figure, and what their columns hold, as files. */
export const RowsOut = ({ table }: { table: JointTable }) => (
  <div class="row">
    <button type="button" onClick={() => shareSheet('lidwright-joints', rowsSheet(table))}>
      {words.csv}
    </button>
    <button type="button" onClick={() => shareSheet('lidwright-columns', dictionarySheet(table))}>
      {words.columns}
    </button>
  </div>
);

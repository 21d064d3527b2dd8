import type { SheetCell } from '../domain/findings/rows-sheet.ts';
import { type Shared, shareOrDownload } from '../platform/share.ts';
import { csvCell } from '../storage/backup/boxes-csv.ts';

/** Hands a sheet over as CSV; cells that a spreadsheet would take for a formula are made plain text. */
export const shareSheet = (name: string, rows: readonly (readonly SheetCell[])[]): Promise<Shared> => {
  const text = rows.map((row) => row.map(csvCell).join(',')).join('\r\n');
  return shareOrDownload(new File([`${text}\r\n`], `${name}.csv`, { type: 'text/csv' }));
};

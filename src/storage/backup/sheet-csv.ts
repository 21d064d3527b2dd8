import { csvCell } from './boxes-csv.ts';

/** Rows of cells as a table (RFC 4180). A byte order mark makes spreadsheets read it as UTF-8. */
export const sheetCsv = (rows: readonly (readonly (string | number | null)[])[]): string =>
  `\uFEFF${rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('')}`;

import type { Box, Stored } from '../../domain/box/records.ts';
import type { Length } from '../../domain/units/length.ts';

const COLUMNS: readonly (readonly [heading: string, of: (box: Box) => string | number | null])[] = [
  ['number', (box) => box.number],
  ['name', (box) => box.name],
  ['started on', (box) => box.startedOn],
  ['route', (box) => box.plan.route],
  ['recess in', (box) => box.plan.recessIn],
  ['lid wood', (box) => box.plan.lid.wood],
  ['lid grain', (box) => box.plan.lid.grain],
  ['base wood', (box) => box.plan.base.wood],
  ['base grain', (box) => box.plan.base.grain],
  ['insert wood', (box) => box.plan.insert?.wood ?? null],
  ['pitch', (box) => box.plan.pitch.text],
  ['pitch mm', (box) => box.plan.pitch.mm],
  ['opening', (box) => box.plan.opening.text],
  ['opening mm', (box) => box.plan.opening.mm],
  ['bore mm', (box) => mean(box.bore.flatMap((r) => (r.across ? [r.along, r.across] : [r.along])))],
  ['tenon mm', (box) => mean(box.tenon.map((r) => r.diameter))],
  ['recess depth mm', (box) => depth(box, 'recess')],
  ['tenon depth mm', (box) => depth(box, 'tenon')],
  ['trial fits', (box) => box.trials.length],
  ['right at first', (box) => (box.trials[0] ? (box.trials[0].right ? 'yes' : 'no') : null)],
  ['outcome', (box) => box.closing?.outcome ?? null],
  ['hardener', (box) => box.closing?.hardener ?? null],
  ['later', (box) => box.later.map((l) => `${l.on} ${l.verdict}`).join('; ') || null],
  ['note', (box) => box.closing?.note ?? null],
];

const mean = (lengths: readonly Length[]): number | null =>
  lengths.length === 0
    ? null
    : Math.round((lengths.reduce((sum, l) => sum + l.mm, 0) / lengths.length) * 1000) / 1000;

const depth = (box: Box, part: 'recess' | 'tenon'): number | null =>
  box.cuts.findLast((cut) => cut.part === part)?.depth.mm ?? null;

/**
 * One cell. Text that a spreadsheet would take for a formula is set behind an apostrophe (OWASP, "CSV Injection");
 * numbers are left alone, negative ones included.
 */
export const csvCell = (value: string | number | null): string => {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const harmless = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
};

/** The boxes as a table (RFC 4180), one row each. A byte order mark makes spreadsheets read it as UTF-8. */
export const boxesCsv = (boxes: readonly Stored<'box'>[]): string => {
  const rows = boxes.flatMap(({ logId, body }) =>
    body ? [[logId, ...COLUMNS.map(([, of]) => of(body))]] : [],
  );
  return `\uFEFF${[['log', ...COLUMNS.map(([heading]) => heading)], ...rows]
    .map((row) => `${row.map(csvCell).join(',')}\r\n`)
    .join('')}`;
};

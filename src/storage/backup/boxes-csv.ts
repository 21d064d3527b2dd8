import { depthReached } from '../../domain/box/cuts.ts';
import { type Given, givenOfBox, workshopOf } from '../../domain/box/given.ts';
import { measuredBore, measuredTenon } from '../../domain/box/measured.ts';
import { pairAsCut } from '../../domain/box/pair.ts';
import { pieceAt } from '../../domain/box/piece.ts';
import type { Box, Stored } from '../../domain/box/records.ts';
import { groupBy } from '../../domain/group-by.ts';
import { fitOf } from '../../domain/joint/fit.ts';

/** Rounded to microns, finer than any caliper reads. */
const microns = (length: number | undefined): number | null =>
  length === undefined ? null : Math.round(length * 1000) / 1000;

const boreOf = (box: Box, { caliper }: Given): number | null => {
  const bore = measuredBore(pieceAt(box, 'recess').readings, caliper);
  return microns(bore.ok ? bore.value?.mean : undefined);
};

const clearanceOf = (box: Box, given: Given): number | null => {
  const pair = pairAsCut(box, given);
  const fit = pair && fitOf(pair);
  return microns(fit?.ok ? fit.value.clearance : undefined);
};

const COLUMNS: readonly (readonly [
  heading: string,
  of: (box: Box, given: Given) => string | number | null,
])[] = [
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
  ['bore mm', boreOf],
  ['tenon mm', (box) => microns(measuredTenon(pieceAt(box, 'tenon').readings)?.mean)],
  ['recess depth mm', (box) => depthReached(box, 'recess')?.mm ?? null],
  ['tenon depth mm', (box) => depthReached(box, 'tenon')?.mm ?? null],
  ['clearance mm', clearanceOf],
  ['trial fits', (box) => box.trials.length],
  ['right at first', (box) => (box.trials[0] ? (box.trials[0].right ? 'yes' : 'no') : null)],
  ['outcome', (box) => box.closing?.outcome ?? null],
  ['hardener', (box) => box.closing?.hardener ?? null],
  ['later', (box) => box.lidChecks.map((l) => `${l.on} ${l.lid}`).join('; ') || null],
  ['note', (box) => box.closing?.note ?? null],
];

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

/**
 * The boxes among the records of one or several logs as a table (RFC 4180), one row each, sizes as measured and cut. A byte order mark
 * makes spreadsheets read it as UTF-8.
 */
export const boxesCsv = (records: readonly Stored[]): string => {
  const rows = [...groupBy(records, ({ logId }) => logId)].flatMap(([logId, ofLog]) => {
    const workshop = workshopOf(ofLog);
    return ofLog.flatMap(({ kind, body }) => {
      if (kind !== 'box' || !body) return [];
      const box = body as Box;
      const given = givenOfBox(workshop, box);
      return [[logId, ...COLUMNS.map(([, of]) => of(box, given))]];
    });
  });
  return `\uFEFF${[['log', ...COLUMNS.map(([heading]) => heading)], ...rows]
    .map((row) => `${row.map(csvCell).join(',')}\r\n`)
    .join('')}`;
};

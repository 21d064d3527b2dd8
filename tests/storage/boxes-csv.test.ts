import { expect, test } from 'vitest';
import { mm } from '../../src/domain/units/brands.ts';
import { boxesCsv, csvCell } from '../../src/storage/backup/boxes-csv.ts';
import { sampleBox, storedBox } from './sample-log.ts';

test('text that a spreadsheet would run is made harmless', () => {
  // The leading characters are those of OWASP, "CSV Injection".
  for (const start of ['=', '+', '-', '@', '\t', '\r']) {
    expect(csvCell(`${start}cmd`).replace(/^"/, '').startsWith("'")).toBe(true);
  }
  expect(csvCell('=HYPERLINK("http://x","y")')).toBe('"\'=HYPERLINK(""http://x"",""y"")"');
  expect(csvCell('plain')).toBe('plain');
  expect(csvCell(-0.4)).toBe('-0.4');
  expect(csvCell(null)).toBe('');
});

test('commas, quotes and line ends stay inside their cell (RFC 4180)', () => {
  expect(csvCell('tight, then "free"\nat last')).toBe('"tight, then ""free""\nat last"');
});

test('one row a box, with what was typed and what was measured', () => {
  const length = (value: number) => ({ mm: mm(value), text: `${value} mm` });
  const csv = boxesCsv([
    storedBox({
      body: sampleBox({
        name: '=1+1',
        bore: [
          { id: 'b', seq: 1, where: 'mouth', along: length(50.8), across: length(50.9), overCrests: false },
        ],
      }),
    }),
    storedBox({ id: 'gone', body: null }),
  ]);
  const [heading, row, ...rest] = csv.split('\r\n');
  expect(rest).toEqual(['']);
  const cells = Object.fromEntries((heading ?? '').split(',').map((name, i) => [name, row?.split(',')[i]]));
  expect(cells).toMatchObject({
    number: '1',
    name: "'=1+1",
    'started on': '2031-03-04',
    opening: '2 in',
    'opening mm': '50.8',
    'bore mm': '50.85',
    'tenon mm': '',
    outcome: '',
  });
});

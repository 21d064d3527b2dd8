import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degrees, MM_PER_INCH, mm, turns } from '../../../src/domain/units/brands.ts';
import {
  readCount,
  readDegrees,
  readLength,
  readPitch,
  readTurns,
} from '../../../src/domain/units/read-quantity.ts';
import {
  writeDegrees,
  writeLength,
  writePercent,
  writePitch,
  writeTurns,
} from '../../../src/domain/units/write-quantity.ts';

const EITHER_SIGN = { min: -5000, max: 5000 };
const fiveMetres = fc.double({ min: -1900, max: 1900, noNaN: true });

describe('writing', () => {
  test.each([
    [writeLength(mm(62.84), 'in'), '2.474 in'],
    [writeLength(mm(62.84), 'mm'), '62.84 mm'],
    [writeLength(mm(0.1016), 'thou'), '4 thou'],
    [writeLength(mm(0.0381), 'thou', { places: 1 }), '1.5 thou'],
    [writeLength(mm(0.072), 'thou', { smallest: 2 }), '2 thou'],
    [writeLength(mm(0.374), 'mm', { smallest: 0.05 }), '0.35 mm'],
    [writeLength(mm(38.1), 'in', { smallest: 1 / 64 }), '1 1/2 in'],
    [writeLength(mm(-38.1), 'in', { smallest: 1 / 64 }), '-1 1/2 in'],
    [writeLength(mm(2.4), 'in', { smallest: 1 / 64 }), '3/32 in'],
    [writeLength(mm(25.39), 'in', { smallest: 1 / 64 }), '1 in'],
    [writeLength(mm(-0.001), 'in', { smallest: 1 / 64 }), '0 in'],
    [writeLength(mm(-0.001), 'in'), '0.000 in'],
    [writeLength(mm(-0), 'mm'), '0.00 mm'],
    [writeLength(mm(-0.001), 'mm', { smallest: 0.05 }), '0.00 mm'],
    [writeLength(mm(Number.NaN), 'mm'), '—'],
    [writeLength(mm(1), 'mm', { smallest: 0 }), '—'],
    [writePitch(mm(2.54), 'tpi'), '10 tpi'],
    [writePitch(mm(2.5), 'mm'), '2.5 mm'],
    [writePitch(mm(0), 'tpi'), '—'],
    [writeTurns(turns(3.5)), '3 1/2'],
    [writeTurns(turns(0.26)), '1/4'],
    [writeTurns(turns(1.2598), { places: 2 }), '1.26'],
    [writeDegrees(degrees(40)), '40°'],
    [writeDegrees(degrees(0.54)), '0.5°'],
    [writeDegrees(degrees(-0.01)), '0°'],
    [writePercent(11.6), '12 %'],
  ])('%s', (written, expected) => expect(written).toBe(expected));
});

describe('what is written reads back within half of its last place', () => {
  const ways = [
    ['in', { places: 3 }, 0.001 * MM_PER_INCH],
    ['mm', { places: 2 }, 0.01],
    ['mm', { smallest: 0.05 }, 0.05],
    ['thou', { places: 0 }, 0.001 * MM_PER_INCH],
    ['thou', { smallest: 2 }, 0.002 * MM_PER_INCH],
    ['in', { smallest: 1 / 64 }, MM_PER_INCH / 64],
    ['in', { smallest: 1 / 8 }, MM_PER_INCH / 8],
  ] as const;
  test.each(ways)('lengths in %s, %o', (unit, how, step) => {
    fc.assert(
      fc.property(fiveMetres, (length) => {
        const written = writeLength(mm(length), unit, how);
        expect(written).not.toMatch(/^-0?[.0]* /);
        const read = readLength('x', written, 'mm', EITHER_SIGN);
        expect(read.ok && Math.abs(read.value.mm - length) <= step / 2 + 1e-9).toBe(true);
        expect(read.ok && read.value.text).toBe(written);
      }),
    );
  });

  test('turns, degrees and percents', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (value) => {
        const turned = readTurns('x', writeTurns(turns(value)));
        expect(turned.ok && Math.abs(turned.value - value) <= 1 / 16 + 1e-9).toBe(true);
        const angle = readDegrees('x', writeDegrees(degrees(value)));
        expect(angle.ok && Math.abs(angle.value - value) <= 0.05 + 1e-9).toBe(true);
        expect(Math.abs(Number.parseFloat(writePercent(value)) - value)).toBeLessThanOrEqual(0.5 + 1e-9);
      }),
    );
  });

  test('every usual pitch keeps its name', () => {
    for (let tpi = 8; tpi <= 20; tpi += 1) {
      const pitch = readPitch('pitch', `${tpi} tpi`, 'mm');
      expect(pitch.ok && writePitch(pitch.value.mm, 'tpi')).toBe(`${tpi} tpi`);
    }
  });
});

test('no text whatever is read as NaN or throws', () => {
  const odd = fc.oneof(
    fc.string({ unit: 'grapheme' }),
    fc
      .array(fc.constantFrom(...'0123456789.,/- "\'½¼¾e+%°inmthou'.split('')), { maxLength: 9 })
      .map((s) => s.join('')),
    fc.constantFrom('__proto__', 'constructor', '1 constructor', '1 __proto__'),
  );
  fc.assert(
    fc.property(odd, (text) => {
      const lengths = [
        readLength('x', text, 'in', EITHER_SIGN),
        readLength('x', text, 'mm'),
        readPitch('x', text, 'tpi'),
      ];
      for (const answer of lengths) {
        expect(answer.ok ? Number.isFinite(answer.value.mm) : answer.error.field).toBe(answer.ok || 'x');
        if (answer.ok) expect(answer.value.text).toMatch(/\S (in|mm|thou|tpi)$/);
      }
      for (const read of [readCount, readTurns, readDegrees]) {
        const answer = read('x', text);
        expect(answer.ok ? Number.isFinite(answer.value) : answer.error.field).toBe(answer.ok || 'x');
      }
    }),
    { numRuns: 1000 },
  );
}, 30_000);

test('no number, no unit and no step makes a text with NaN or Infinity in it', () => {
  const any = fc.oneof(fc.double(), fc.constantFrom(0, -0, 1e308, -1e308, 5e-324));
  fc.assert(
    fc.property(any, any, fc.constantFrom('in', 'mm', 'thou'), (value, step, unit) => {
      const texts = [
        writeLength(mm(value), unit, { smallest: step }),
        writeLength(mm(value), unit, { places: step }),
        writeTurns(turns(value), { smallest: step }),
        writeDegrees(degrees(value), { places: step }),
        writePercent(value, { places: step }),
        writePitch(mm(value), 'tpi'),
        writePitch(mm(value), 'mm'),
      ];
      expect(texts.join(' ')).not.toMatch(/NaN|Infinity|e[+-]?\d/);
    }),
    { numRuns: 2000 },
  );
});

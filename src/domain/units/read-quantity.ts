import { LONGEST } from '../log/bounds.ts';
import { ok, type Quantity, type Refusal, type Result, refuse, within } from '../result.ts';
import {
  type Degrees,
  degrees,
  inches,
  type Millimetres,
  mm,
  mmFromInches,
  pitchFromTpi,
  radFromDegrees,
  type Turns,
  turns,
} from './brands.ts';
import type { Length } from './length.ts';
import { readText } from './read-text.ts';

/** Inclusive bounds of an answer. */
interface Range {
  readonly min: number;
  readonly max: number;
}

/** Lengths a box, a jig or a lathe bed can have, mm. A field that allows a negative length says so itself. */
const ANY_LENGTH: Range = { min: 0, max: 2000 };
/** From 50 to 4 threads per inch, mm. */
const ANY_PITCH: Range = { min: 0.5, max: 6.35 };

const LENGTH_UNITS = new Map<string, 'in' | 'mm' | 'thou'>([
  ['in', 'in'],
  ['inch', 'in'],
  ['inches', 'in'],
  ['"', 'in'],
  ["''", 'in'],
  ['mm', 'mm'],
  ['thou', 'thou'],
]);

const FRACTIONS = new Map([...'½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'].map((sign) => [sign, sign.normalize('NFKD')] as const));

/** Signs that phones put in for the plain ones. */
const plainSigns = (text: string): string =>
  text
    .replace(/[\u2212\u2012\u2013]/g, '-')
    .replace(/[\u201c\u201d\u2033\u301e]/g, '"')
    .replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/\u2044/g, '/')
    .replace(/\s+/g, ' ')
    .trim();

/** A number that can be read two ways, each as it should be typed. */
type Readings = readonly [string, string];

/**
 * A number from a trade note: 2.474, 2,474, 3/32, 1 1/2, 1-1/2, 1½. Nothing if it cannot be read; two readings where a missed
 * space would make it another number ("11/2").
 */
const numberIn = (text: string): number | Readings | undefined => {
  if (/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]\s*[\d.,/]/u.test(text)) return undefined;
  const spelled = [...text].map((sign) => (FRACTIONS.has(sign) ? ` ${FRACTIONS.get(sign)}` : sign)).join('');
  const plain = spelled
    .replace(/\u2044/g, '/')
    .replace(/-\s+/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
  const decimal = /^([+-]?)(\d+[.,]?\d*|[.,]\d+)$/.exec(plain);
  if (decimal) return Number(`${decimal[1]}${decimal[2]?.replace(',', '.')}`);
  const fraction = /^([+-]?)(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(plain);
  if (!fraction) return undefined;
  const [sign = '', whole, over, under] = [
    fraction[1],
    fraction[2],
    Number(fraction[3]),
    Number(fraction[4]),
  ];
  // "1 3/2" is a slip of the finger, not a size.
  if (under === 0 || (whole !== undefined && over >= under)) return undefined;
  const missedSpace = /^(\d)([1-9]\d*)$/.exec(fraction[3] ?? '');
  if (whole === undefined && over >= under && missedSpace && Number(missedSpace[2]) < under) {
    const rest = over % under;
    const asWritten = `${Math.floor(over / under)}${rest === 0 ? '' : ` ${rest}/${under}`}`;
    return [`${sign}${missedSpace[1]} ${missedSpace[2]}/${under}`, `${sign}${asWritten}`];
  }
  return (sign === '-' ? -1 : 1) * (Number(whole ?? 0) + over / under);
};

interface Typed {
  readonly value: number;
  /** The number as it was typed. */
  readonly digits: string;
  /** Lower case, without a closing full stop; empty when bare. */
  readonly unit: string;
}

const parse = (field: string, text: string): Result<Typed> => {
  const typed = plainSigns(text);
  if (typed === '') return refuse({ problem: 'empty', field });
  const [, digits = '', unit = ''] = /^([^a-z"'%°]*)(.*)$/i.exec(typed) ?? [];
  const value = numberIn(digits);
  if (typeof value === 'object') return refuse({ problem: 'ambiguous', field, typed: text, readings: value });
  if (value === undefined || !Number.isFinite(value))
    return refuse({ problem: 'not-a-number', field, typed: text });
  return ok({
    value: value + 0 === 0 ? 0 : value,
    digits: digits.trim().replace(/[.,]$/, ''),
    unit: unit.toLowerCase().replace(/\.$/, '').trim(),
  });
};

/** A length with its text, which is kept as it was typed and so must not be longer than a log can hold. */
const written = (field: string, value: Millimetres, text: string): Result<Length> => {
  const answer = readText(field, text, LONGEST.length);
  return answer.ok ? ok({ mm: value, text: answer.value }) : answer;
};

const unknownUnit = (field: string, typed: string): { readonly ok: false; readonly error: Refusal } =>
  refuse({ problem: 'unknown-unit', field, typed });

const toMm = (value: number, unit: 'in' | 'mm' | 'thou'): Millimetres => {
  if (unit === 'mm') return mm(value);
  return mmFromInches(inches(unit === 'in' ? value : value / 1000));
};

/**
 * A length as a turner types it: `2.474`, `2,474 in`, `1 1/2"`, `3/32`, `1½`, `50mm`, `4 thou`.
 * A bare number is in `unitWhenBare`; any field takes another unit when it is typed. The text that comes back
 * is what was typed, with its unit always written, so that no precision is invented or lost.
 * `range` is in mm, by default 0 to 2000. A single comma is a decimal comma.
 * Refuses: empty, not-a-number (1/0, NaN, 1,234.5), ambiguous (11/2), unknown-unit, out-of-range, too-long.
 */
export const readLength = (
  field: string,
  text: string,
  unitWhenBare: 'in' | 'mm',
  range: Range = ANY_LENGTH,
): Result<Length> => {
  const typed = parse(field, text);
  if (!typed.ok) return typed;
  const unit = typed.value.unit === '' ? unitWhenBare : LENGTH_UNITS.get(typed.value.unit);
  if (unit === undefined) return unknownUnit(field, text);
  const length = within(field, toMm(typed.value.value, unit), range.min, range.max);
  return length.ok ? written(field, mm(length.value), `${typed.value.digits} ${unit}`) : length;
};

/**
 * A pitch as it is spoken of: `10 tpi` or `2.5 mm` (or `0.1 in`); a bare number is in `unitWhenBare`.
 * `range` is the pitch in mm, by default 0.5 to 6.35 (50 to 4 tpi). Refuses as `readLength` does.
 */
export const readPitch = (
  field: string,
  text: string,
  unitWhenBare: 'tpi' | 'mm',
  range: Range = ANY_PITCH,
): Result<Length> => {
  const typed = parse(field, text);
  if (!typed.ok) return typed;
  const unit = typed.value.unit === '' ? unitWhenBare : typed.value.unit;
  const { value, digits } = typed.value;
  if (unit !== 'tpi') {
    const length = readLength(field, typed.value.unit === '' ? `${digits} mm` : text, 'mm', range);
    return length.ok ? length : refuse(asPitch(length.error));
  }
  const pitch = within(field, value > 0 ? pitchFromTpi(value) : 0, range.min, range.max, 'pitch');
  return pitch.ok ? written(field, mm(pitch.value), `${digits} tpi`) : pitch;
};

const asPitch = (refusal: Refusal): Refusal =>
  refusal.problem === 'out-of-range' ? { ...refusal, quantity: 'pitch' } : refusal;

const readPlain = (
  field: string,
  text: string,
  unitsAllowed: readonly string[],
  range: Range,
  quantity: Quantity,
): Result<number> => {
  const typed = parse(field, text);
  if (!typed.ok) return typed;
  if (typed.value.unit !== '' && !unitsAllowed.includes(typed.value.unit)) return unknownUnit(field, text);
  return within(field, typed.value.value, range.min, range.max, quantity);
};

/** A whole number of things (threads, teeth, papers), by default 0 to 1000. Refuses empty, not-a-number (also 2.5), unknown-unit, out-of-range. */
export const readCount = (
  field: string,
  text: string,
  range: Range = { min: 0, max: 1000 },
): Result<number> => {
  const count = readPlain(field, text, [], range, 'count');
  if (count.ok && !Number.isInteger(count.value))
    return refuse({ problem: 'not-a-number', field, typed: text });
  return count;
};

/** Turns of a crank or dial, `3 1/2` or `3.5 turns`, by default 0 to 100. Refuses empty, not-a-number, unknown-unit, out-of-range. */
export const readTurns = (
  field: string,
  text: string,
  range: Range = { min: 0, max: 100 },
): Result<Turns> => {
  const given = readPlain(field, text, ['turn', 'turns'], range, 'turns');
  return given.ok ? ok(turns(given.value)) : given;
};

/** An angle in degrees, `40`, `40°` or `0.5 deg`; `range` in degrees, by default 0 to 360. Its refusals carry radians, as every refused angle does. */
export const readDegrees = (
  field: string,
  text: string,
  range: Range = { min: 0, max: 360 },
): Result<Degrees> => {
  const given = readPlain(field, text, ['°', 'deg', 'degree', 'degrees'], range, 'angle');
  if (given.ok) return ok(degrees(given.value));
  if (given.error.problem !== 'out-of-range') return given;
  const inRadians = (value: number) => radFromDegrees(degrees(value));
  const { given: value, min, max } = given.error;
  return refuse({ ...given.error, given: inRadians(value), min: inRadians(min), max: inRadians(max) });
};

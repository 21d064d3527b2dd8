import { expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../../src/domain/log/settings.ts';
import { checkEvent, checkRecord, checkSettings } from '../../../src/domain/log/validate.ts';
import { generateDemo } from '../../demo/generate.ts';
import { sampleBox, started, storedBox, storedWood, ticked } from '../../storage/sample-log.ts';

/** As it comes out of a file. */
const file = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

/** The same with one place changed; `undefined` removes it. */
const withChange = (value: unknown, path: string, change: unknown): unknown => {
  const copy = file(value);
  const keys = path.split('.');
  const last = keys.pop() as string;
  let at = copy as Record<string, unknown>;
  for (const key of keys) at = at[key] as Record<string, unknown>;
  if (change === undefined) delete at[last];
  else at[last] = change;
  return copy;
};

test('a whole log of two years passes as it is', () => {
  const { records, events } = generateDemo(1, 1_930_000_000_000);
  expect(records.length).toBeGreaterThan(100);
  expect(events.length).toBeGreaterThan(1_000);
  for (const record of records) expect(checkRecord(file(record))).toEqual({ ok: true, value: record });
  for (const event of events) expect(checkEvent(file(event))).toEqual({ ok: true, value: event });
});

test('a deletion passes', () => {
  const record = storedWood({ body: null });
  expect(checkRecord(file(record))).toEqual({ ok: true, value: record });
});

const boxFaults: readonly (readonly [path: string, change: unknown])[] = [
  ['logId', ''],
  ['logId', 7],
  ['kind', 'boxes'],
  ['rev', 0],
  ['rev', 1.5],
  ['rev', 2 ** 53],
  ['writer', undefined],
  ['savedAt', -1],
  ['savedAt', null],
  ['extra', true],
  ['body', {}],
  ['body.extra', 1],
  ['body.plan.extra', 1],
  ['body.name', 'x'.repeat(501)],
  ['body.startedOn', '2031-13-04'],
  ['body.startedOn', '4 March'],
  ['body.plan.opening.mm', 30_000],
  ['body.plan.opening.mm', -1],
  ['body.plan.opening.mm', '50.8'],
  ['body.plan.opening.mm', null],
  ['body.plan.opening.unit', 'in'],
  ['body.plan.pitch.mm', 0],
  ['body.plan.aim', { by: 'feel' }],
  ['body.plan.lid.grain', 'cross'],
  ['body.plan.threads', 1e9],
  ['body.trials', [{}]],
  ['body.trials', 'none'],
  ['body.photos', Array.from({ length: 2_001 }, () => ({ id: 'p', at: 1, of: 'box' }))],
  ['body.closing', { outcome: 'kept' }],
];
test.each(boxFaults)('a box with a wrong %s is refused, and where is said', (path, change) => {
  const answer = checkRecord(withChange(storedBox(), path, change));
  expect(answer).toMatchObject({ ok: false });
  if (!answer.ok && !path.endsWith('extra')) expect(answer.error.at.split('.')[0]).toBe(path.split('.')[0]);
});

test.each([null, undefined, 3, 'box', [], [storedBox()]])('%j is no record and no event', (input) => {
  expect(checkRecord(input).ok).toBe(false);
  expect(checkEvent(input).ok).toBe(false);
});

test('a body of one kind under the name of another is refused', () => {
  expect(checkRecord({ ...storedWood(), kind: 'box' }).ok).toBe(false);
  expect(checkRecord({ ...storedWood(), body: sampleBox() }).ok).toBe(false);
});

test.each([
  ['n', 0],
  ['n', 1.5],
  ['at', Number.NaN],
  ['session', ''],
  ['steps', [3]],
  ['verdict', 'maybe'],
  ['verdict', undefined],
  ['extra', 1],
] as const)('a tick with a wrong %s is refused', (path, change) => {
  expect(checkEvent(withChange(ticked(2, 'isolate'), path, change)).ok).toBe(false);
});

test('a procedure inside a run is checked to its last step', () => {
  expect(checkEvent(withChange(started(), 'procedure.steps.3.guards', ['boredom']))).toMatchObject({
    ok: false,
    error: { at: 'procedure.steps.3.guards.0' },
  });
  expect(checkEvent(withChange(started(), 'procedure.steps.3.sentence', 'x'.repeat(57))).ok).toBe(false);
});

test('an event of a newer version passes with all it carries, if its stamp is sound', () => {
  const foreign = { ...ticked(2, 'isolate'), kind: 'photographed', lens: { f: 2 } };
  expect(checkEvent(file(foreign))).toEqual({ ok: true, value: foreign });
  expect(checkEvent({ ...foreign, n: -1 }).ok).toBe(false);
  expect(checkEvent({ ...foreign, at: 'noon' }).ok).toBe(false);
});

test('settings: all, some or none of them, but nothing else', () => {
  expect(checkSettings(file(DEFAULT_SETTINGS))).toEqual({ ok: true, value: DEFAULT_SETTINGS });
  expect(checkSettings({ unit: 'mm' })).toEqual({ ok: true, value: { unit: 'mm' } });
  expect(checkSettings({})).toEqual({ ok: true, value: {} });
  for (const wrong of [{ unit: 'ft' }, { distanceCm: 0 }, { writer: 'a' }, { sound: 1 }, { pxPerMm: 1e9 }])
    expect(checkSettings(wrong).ok).toBe(false);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nextSeq } from '../../../src/domain/box/sequence.ts';
import { checkEvent, checkRecord } from '../../../src/domain/log/validate.ts';
import { readSentence } from '../../../src/domain/setup/edit-procedure.ts';
import { foldRun } from '../../../src/domain/setup/fold.ts';
import { readLength, readPitch } from '../../../src/domain/units/read-quantity.ts';
import { sampleBox, started, storedBox, ticked } from '../../storage/sample-log.ts';

const MANY = '0'.repeat(120);

test.each([
  ['a length', readLength('opening', `2.${MANY}`, 'in')],
  ['a length with its unit', readLength('opening', `2.${MANY} mm`, 'in')],
  ['a pitch in tpi', readPitch('pitch', `10.${MANY}`, 'tpi')],
  ['a pitch in mm', readPitch('pitch', `2.${MANY} mm`, 'tpi')],
])('%s typed longer than a log can hold is refused, and how long it may be is said', (_, answer) => {
  expect(answer).toMatchObject({ ok: false, error: { problem: 'too-long', most: 100 } });
});

test('a sentence longer than an arm’s length lets one read is refused as too long', () => {
  expect(readSentence('sentence', 'x'.repeat(57))).toMatchObject({
    ok: false,
    error: { problem: 'too-long', length: 57, most: 56 },
  });
});

const anyTyped = fc
  .tuple(
    fc.constantFrom('2', '1 1/2', '3/32', '1½', '0', '-3', '50.8', '2,5'),
    fc.nat(150).map((n) => '0'.repeat(n)),
    fc.nat(150).map((n) => ' '.repeat(n)),
    fc.constantFrom('', 'in', 'mm', 'thou', 'inches', '"', ' in.'),
  )
  .map(([digits, noughts, blanks, unit]) =>
    /[.,]/.test(digits)
      ? `${digits}${noughts}${blanks}${unit}`
      : `${blanks}${digits.replace(' ', ` ${blanks}`)}${unit}`,
  );

test('a box with any length that a field accepts passes the check of a backup', () => {
  fc.assert(
    fc.property(anyTyped, fc.constantFrom('in', 'mm'), (typed, unit) => {
      const opening = readLength('opening', typed, unit);
      const pitch = readPitch('pitch', typed, unit === 'in' ? 'tpi' : 'mm');
      const { plan } = sampleBox();
      const body = sampleBox({
        plan: {
          ...plan,
          opening: opening.ok ? opening.value : plan.opening,
          pitch: pitch.ok ? pitch.value : plan.pitch,
        },
      });
      expect(checkRecord(storedBox({ body }))).toMatchObject({ ok: true });
    }),
  );
});

test('after an entry at the last place another can be added, and the box still passes', () => {
  const body = sampleBox({ setUps: [{ runId: 'run-1', part: 'recess', seq: 1_000_000 }] });
  const next = {
    ...body,
    setUps: [...body.setUps, { runId: 'run-2', part: 'recess' as const, seq: nextSeq(body) }],
  };
  expect(checkRecord(storedBox({ body: next }))).toMatchObject({ ok: true });
});

test('a set-up without room for another event can be read, and takes none', () => {
  const last = ticked(1_000_000, 'isolate');
  expect(checkEvent(last)).toMatchObject({ ok: true });
  expect(foldRun([started(), last])).toMatchObject({ readOnly: true });
  expect(foldRun([started(), ticked(999_999, 'isolate')])).toMatchObject({ readOnly: false });
});

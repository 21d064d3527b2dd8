// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, test } from 'vitest';
import { allBoxes } from '../../src/app/boxes.ts';
import { failures } from '../../src/app/failure.ts';
import { startBox } from '../../src/app/start-box.ts';
import { RIGHT, recordTrial } from '../../src/app/trials.ts';
import { write } from '../../src/storage/write.ts';
import { sampleBox, storedBox } from '../storage/sample-log.ts';
import { freshPhone, PLAN } from './faulty-store.ts';

beforeEach(freshPhone);

const numbers = async () => (await allBoxes()).map(({ box }) => box.number);

describe('the number of a box', () => {
  test('two tabs that begin a box at one time give two numbers', async () => {
    await Promise.all([startBox('box-2', PLAN), startBox('box-3', PLAN)]);
    expect(await numbers()).toEqual([3, 2, 1]);
  });

  test('a retry of what was saved unheard gives no second', async () => {
    await startBox('box-2', PLAN);
    await startBox('box-2', PLAN);
    expect(await numbers()).toEqual([2, 1]);
  });

  test('under a foreign box with the last number there is, the next is the first free one below', async () => {
    await write(['records'], async (tx) => {
      const body = sampleBox({ number: 1_000_000 });
      await tx.objectStore('records').put(storedBox({ id: 'foreign', body }));
    });
    await startBox('box-2', PLAN);
    await startBox('box-3', PLAN);
    expect(await numbers()).toEqual([1_000_000, 3, 2, 1]);
  });
});

test('a list that is as long as a log can hold takes no more, and that is said', async () => {
  const trial = { ...RIGHT, at: 1, seq: 1 };
  const trials = Array.from({ length: 2_000 }, (_, i) => ({ ...trial, id: `trial ${i}` }));
  await write(['records'], async (tx) => {
    await tx.objectStore('records').put(storedBox({ body: sampleBox({ trials }) }));
  });
  expect(await recordTrial('box-1', 'one more', RIGHT)).toBe(false);
  expect(failures.value).toEqual([{ act: 'trial', of: 'box-1', reason: 'list-full' }]);
  expect((await allBoxes())[0]?.box.trials).toHaveLength(2_000);
});

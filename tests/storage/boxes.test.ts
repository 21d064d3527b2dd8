import { expect, test } from 'vitest';
import { boxesFromNewest, isAnyOpen } from '../../src/storage/boxes.ts';
import { changeRecord } from '../../src/storage/records.ts';
import { addLog } from '../../src/storage/whole-log.ts';
import { withFreshDatabase } from './fresh-database.ts';
import { sampleBox, sampleClosing, storedBox } from './sample-log.ts';

withFreshDatabase();

const author = { writer: 'phone-a', now: 1 };
const box = (number: number, closing = sampleClosing as typeof sampleClosing | null, logId = 'mine') =>
  storedBox({ logId, id: `id ${(number * 7) % 10}`, body: sampleBox({ number, closing }) });

test('boxes come by number from the highest, of one log, and no further than wanted', async () => {
  await addLog([...[3, 10, 9, 1].map((number) => box(number)), box(11, null, 'demo')], []);
  const found = await boxesFromNewest('mine', 3, () => true);
  expect(found.map(({ body }) => body?.number)).toEqual([10, 9, 3]);
});

test('whether one is open follows closing, reopening and deleting, and no other log', async () => {
  await addLog([box(1), box(2, null, 'demo')], []);
  expect(await isAnyOpen('mine')).toBe(false);
  const { id } = box(1);
  await changeRecord('mine', 'box', id, author, (now) => now && { ...now, closing: null });
  expect(await isAnyOpen('mine')).toBe(true);
  await changeRecord('mine', 'box', id, author, () => null);
  expect(await isAnyOpen('mine')).toBe(false);
  expect(await boxesFromNewest('mine', 9, () => true)).toEqual([]);
});

test('a connection that dies in the middle of the list: it is read again from the start, and no box comes twice', async () => {
  await addLog(
    [1, 2, 3].map((number) => box(number)),
    [],
  );
  let dies = true;
  const found = await boxesFromNewest('mine', 9, ({ body }) => {
    if (dies && body?.number === 2) {
      dies = false;
      throw new DOMException('the connection was closed', 'AbortError');
    }
    return true;
  });
  expect(found.map(({ body }) => body?.number)).toEqual([3, 2, 1]);
});

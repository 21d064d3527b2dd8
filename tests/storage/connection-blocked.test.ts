import { expect, test, vi } from 'vitest';
import { connection } from '../../src/storage/connection.ts';
import { openRaw, withFreshDatabase } from './fresh-database.ts';

vi.mock('../../src/storage/names.ts', async (original) => {
  const names = await original<typeof import('../../src/storage/names.ts')>();
  return { ...names, VERSION: names.VERSION + 1 };
});

withFreshDatabase();

test('a tab that will not let go of an older version is named as the cause', async () => {
  const { DATABASE, VERSION } = await import('../../src/storage/names.ts');
  const old = await openRaw(DATABASE, VERSION - 1);
  const realSetTimeout = globalThis.setTimeout;
  // Eight seconds become one, so that the test is quick and the store still has its own timers.
  vi.spyOn(globalThis, 'setTimeout').mockImplementation(((work: () => void, ms?: number) =>
    realSetTimeout(work, ms === 8_000 ? 1_000 : ms)) as typeof setTimeout);
  await expect(connection()).rejects.toMatchObject({ reason: 'blocked' });
  vi.restoreAllMocks();
  old.close();
});

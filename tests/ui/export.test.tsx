// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { write } from '../../src/storage/write.ts';
import { Export } from '../../src/ui/shop/backups/export.tsx';
import { freshPhone } from '../app/faulty-store.ts';
import { storedWood } from '../storage/sample-log.ts';

beforeEach(freshPhone);
afterEach(cleanup);

const make = async () => {
  render(<Export />);
  screen.getByRole('button', { name: 'Make a backup' }).click();
};

test('a backup that an import has read is offered', async () => {
  await make();
  expect(await screen.findByText(/^lidwright-\d{8}-\d{4}\.zip, .*: ready\.$/)).toBeTruthy();
});

test('one that an import would refuse is not: the record is named, and everything can be saved as it is', async () => {
  await write(['records'], async (tx) => {
    const note = 'x'.repeat(20_001);
    await tx.objectStore('records').put(storedWood({ body: { name: 'Medlar', group: 'hardwood', note } }));
  });
  await make();
  const alert = await screen.findByRole('alert');
  expect(alert.textContent).toContain('records.1.body.note (wood Medlar)');
  expect(alert.querySelector('a')?.getAttribute('href')).toBe('./rescue.html');
  expect(screen.queryByText(/ready/)).toBeNull();
});

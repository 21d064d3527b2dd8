import { describe, expect, test, vi } from 'vitest';
import { ensureWriter } from '../../src/storage/device.ts';
import { saveDraft } from '../../src/storage/drafts.ts';
import { appendEvent, eventsOfRun } from '../../src/storage/events.ts';
import { getPhoto, getThumbnail } from '../../src/storage/photos.ts';
import { changeRecord, getRecord, listRecords } from '../../src/storage/records.ts';
import {
  listSuperseded,
  mergeRecord,
  SUPERSEDED_KEPT_MS,
  sweepSuperseded,
} from '../../src/storage/superseded.ts';
import { addLog, removeLog } from '../../src/storage/whole-log.ts';
import { write } from '../../src/storage/write.ts';
import { commitUnheard } from './commit-unheard.ts';
import { everything, withFreshDatabase } from './fresh-database.ts';
import { sampleBox, samplePhoto, started, storedBox, storedWood, ticked } from './sample-log.ts';

withFreshDatabase();

const author = { writer: 'phone-a', now: 1_930_000_000_000 };
const merge = (record: ReturnType<typeof storedWood>, now = 0) =>
  write(['records', 'superseded'], (tx) => mergeRecord(tx, record, now));

describe('one record', () => {
  test('each change is one revision on, by this writer', async () => {
    await changeRecord('mine', 'box', 'box-1', author, () => sampleBox());
    const changed = await changeRecord('mine', 'box', 'box-1', { writer: 'phone-b', now: 5 }, (box) => ({
      ...(box ?? sampleBox()),
      name: 'Needle case',
    }));
    expect(changed).toMatchObject({ rev: 2, writer: 'phone-b', savedAt: 5, body: { name: 'Needle case' } });
    expect(await getRecord('mine', 'box', 'box-1')).toEqual(changed);
  });

  test('changes from two tabs at once both count: neither is made on a stale copy', async () => {
    await changeRecord('mine', 'box', 'box-1', author, () => sampleBox({ number: 0 }));
    await Promise.all(
      Array.from({ length: 10 }, () =>
        changeRecord('mine', 'box', 'box-1', author, (box) => sampleBox({ number: (box?.number ?? 0) + 1 })),
      ),
    );
    expect(await getRecord('mine', 'box', 'box-1')).toMatchObject({ rev: 11, body: { number: 10 } });
  });

  test('a deleted one is a version too: gone from lists, and its next revision goes on counting', async () => {
    await changeRecord('mine', 'box', 'box-1', author, () => sampleBox());
    await changeRecord('mine', 'box', 'box-1', author, () => null);
    expect(await listRecords('mine', 'box')).toEqual([]);
    expect(await getRecord('mine', 'box', 'box-1')).toMatchObject({ rev: 2, body: null });
    expect(await changeRecord('mine', 'box', 'box-1', author, () => sampleBox())).toMatchObject({ rev: 3 });
  });

  test('a photo and the box that shows it are there together or not at all', async () => {
    const photo = await samplePhoto('photo-1', 9);
    await changeRecord('mine', 'box', 'box-1', author, () => sampleBox(), { photo });
    expect(await getPhoto('mine', 'photo-1')).toEqual(photo.full);
    expect(await getThumbnail('mine', 'photo-1')).toEqual(photo.thumbnail);
    const before = await everything();
    const failing = changeRecord(
      'mine',
      'box',
      'box-1',
      author,
      () => {
        throw new Error('on purpose');
      },
      { photo: await samplePhoto('photo-2', 8) },
    );
    await expect(failing).rejects.toThrow();
    expect(await everything()).toEqual(before);
  });

  test('a box and the first event of its set-up are there together or not at all', async () => {
    await changeRecord('mine', 'box', 'box-1', author, () => sampleBox(), { event: started() });
    expect(await eventsOfRun('mine', 'run-1')).toEqual([started()]);
    const before = await everything();
    const again = changeRecord('mine', 'box', 'box-1', author, () => sampleBox({ number: 2 }), {
      event: started({ part: 'tenon' }),
    });
    await expect(again).rejects.toMatchObject({ reason: 'taken' });
    expect(await everything()).toEqual(before);
  });

  test('committed but never heard, a change is not made again, nor what it replaced kept twice', async () => {
    await changeRecord('mine', 'box', 'box-1', author, () => sampleBox({ name: '' }));
    commitUnheard(1);
    await changeRecord('mine', 'box', 'box-1', author, (box) => box && { ...box, name: `${box.name}x` }, {
      keepReplaced: true,
      event: started(),
    });
    vi.restoreAllMocks();
    expect(await getRecord('mine', 'box', 'box-1')).toMatchObject({ rev: 2, body: { name: 'x' } });
    expect(await listSuperseded('mine')).toHaveLength(1);
    expect(await eventsOfRun('mine', 'run-1')).toEqual([started()]);
  });

  test('the writer id is made once', async () => {
    expect(await ensureWriter('first')).toBe('first');
    expect(await ensureWriter('second')).toBe('first');
  });
});

describe('a foreign version', () => {
  test('later: it stays, and the one before is kept', async () => {
    await merge(storedWood());
    expect(await merge(storedWood({ rev: 2 }, 'Damson'), 7)).toBe('taken');
    expect(await getRecord('mine', 'wood', 'wood-1')).toMatchObject({ body: { name: 'Damson' } });
    expect(await listSuperseded('mine')).toEqual([{ ...storedWood(), supersededAt: 7 }]);
  });

  test('earlier: ours stays, and the foreign one is kept', async () => {
    await merge(storedWood({ rev: 2 }, 'Damson'));
    expect(await merge(storedWood(), 7)).toBe('kept');
    expect(await getRecord('mine', 'wood', 'wood-1')).toMatchObject({ body: { name: 'Damson' } });
    expect(await listSuperseded('mine')).toEqual([{ ...storedWood(), supersededAt: 7 }]);
  });

  test('the same: nothing happens', async () => {
    await merge(storedWood());
    expect(await merge(storedWood({ savedAt: 3 }))).toBe('same');
    expect(await listSuperseded('mine')).toEqual([]);
  });

  test('what was replaced can be brought back for 30 days', async () => {
    await merge(storedWood());
    await merge(storedWood({ rev: 2 }, 'Damson'), 1_000);
    await sweepSuperseded(1_000 + SUPERSEDED_KEPT_MS);
    expect(await listSuperseded('mine')).toHaveLength(1);
    await sweepSuperseded(1_001 + SUPERSEDED_KEPT_MS);
    expect(await listSuperseded('mine')).toHaveLength(0);
  });

  test('a change that keeps what it replaces puts the version before among them', async () => {
    await changeRecord('mine', 'box', 'box-1', author, () => sampleBox({ name: 'Needle case' }), {
      keepReplaced: true,
    });
    expect(await listSuperseded('mine')).toEqual([]);
    await changeRecord('mine', 'box', 'box-1', author, () => sampleBox({ name: 'Spice jar' }), {
      keepReplaced: true,
    });
    expect(await listSuperseded('mine')).toMatchObject([
      { id: 'box-1', rev: 1, supersededAt: author.now, body: { name: 'Needle case' } },
    ]);
  });

  test('photos go with the last version that showed them, no sooner', async () => {
    const shows = (...ids: string[]) =>
      sampleBox({ photos: ids.map((id, at) => ({ id, at, of: 'box' as const })) });
    const change = (now: number, ...ids: string[]) =>
      changeRecord('mine', 'box', 'box-1', { writer: 'phone-a', now }, () => shows(...ids), {
        keepReplaced: true,
      });
    for (const id of ['kept', 'gone-first', 'gone-last']) {
      const { full, thumbnail } = await samplePhoto(id, 3);
      await write(['photos', 'thumbnails'], async (tx) => {
        await tx.objectStore('photos').put(full);
        await tx.objectStore('thumbnails').put(thumbnail);
      });
    }
    const left = async () => (await everything()).photos?.map((entry) => (entry as { key: string[] }).key[1]);
    await change(1, 'kept', 'gone-first', 'gone-last');
    await change(2, 'kept', 'gone-last');
    await change(1_000, 'kept');
    await sweepSuperseded(2 + SUPERSEDED_KEPT_MS);
    expect(await left()).toEqual(['gone-first', 'gone-last', 'kept']);
    await sweepSuperseded(3 + SUPERSEDED_KEPT_MS);
    expect(await left()).toEqual(['gone-last', 'kept']);
    await sweepSuperseded(1_001 + SUPERSEDED_KEPT_MS);
    expect(await left()).toEqual(['kept']);
    expect((await everything()).thumbnails).toHaveLength(1);
  });
});

describe('logs side by side', () => {
  const fill = async (logId: string) => {
    await addLog([storedBox({ logId }), storedWood({ logId })], [started({ logId })]);
    await write(['photos', 'thumbnails', 'superseded', 'imports'], async (tx) => {
      const { full, thumbnail } = await samplePhotoOf(logId);
      await tx.objectStore('photos').put(full);
      await tx.objectStore('thumbnails').put(thumbnail);
      await tx.objectStore('superseded').put({ ...storedWood({ logId }), supersededAt: 1 });
      await tx.objectStore('imports').put({ logId, id: 'import', at: 1 });
    });
    await saveDraft({ logId, form: 'plan', values: {}, at: 1 });
    await appendEvent({ ...ticked(2, 'isolate'), logId });
  };
  let photo: Awaited<ReturnType<typeof samplePhoto>>;
  const samplePhotoOf = async (logId: string) => ({
    full: { ...photo.full, logId },
    thumbnail: { ...photo.thumbnail, logId },
  });

  test('removing one takes all that is its own, and nothing of a log whose name begins alike', async () => {
    photo = await samplePhoto('photo-1', 4);
    for (const logId of ['demo', 'dem', 'demo2', 'mine']) await fill(logId);
    const before = await everything();
    await removeLog('demo');
    const after = await everything();
    for (const [store, entries] of Object.entries(before)) {
      const isOfDemo = ({ value }: { value: { logId?: string } }) => value.logId === 'demo';
      const ours = entries as { key: unknown; value: { logId?: string } }[];
      if (store !== 'device') expect(ours.some(isOfDemo), store).toBe(true);
      expect(after[store], store).toEqual(ours.filter((entry) => !isOfDemo(entry)));
    }
  });

  test('lists see one log and one kind', async () => {
    photo = await samplePhoto('photo-1', 4);
    for (const logId of ['demo', 'mine']) await fill(logId);
    await appendEvent(started({ runId: 'run-2' }));
    expect((await listRecords('mine', 'box')).map((r) => [r.logId, r.kind])).toEqual([['mine', 'box']]);
  });
});

test('a list longer than what is read at once is whole and in order', async () => {
  const many = Array.from({ length: 1001 }, (_, i) =>
    storedWood({ id: `wood-${String(i).padStart(4, '0')}` }),
  );
  await addLog([...many, storedBox()], []);
  await changeRecord('mine', 'wood', 'wood-0300', { writer: 'phone-a', now: 1 }, () => null);
  const ids = many.map(({ id }) => id).filter((id) => id !== 'wood-0300');
  expect((await listRecords('mine', 'wood')).map(({ id }) => id)).toEqual(ids);
});

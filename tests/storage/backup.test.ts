import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { strFromU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Stored } from '../../src/domain/box/records.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { makeBackup } from '../../src/storage/backup/make-backup.ts';
import type { Backup } from '../../src/storage/backup/read-backup.ts';
import { readBackup } from '../../src/storage/backup/read-backup.ts';
import { sweepLeftPhotos } from '../../src/storage/backup/sweep-photos.ts';
import { summarize, takeIn } from '../../src/storage/backup/take-in.ts';
import { disconnect } from '../../src/storage/connection.ts';
import { getDevice, putDevice } from '../../src/storage/device.ts';
import { appendEvent } from '../../src/storage/events.ts';
import { DEVICE_KEYS } from '../../src/storage/names.ts';
import { changeRecord, getRecord } from '../../src/storage/records.ts';
import { listSuperseded } from '../../src/storage/superseded.ts';
import { addLog } from '../../src/storage/whole-log.ts';
import { write } from '../../src/storage/write.ts';
import { generateDemo } from '../demo/generate.ts';
import { everything, withFreshDatabase } from './fresh-database.ts';
import { sampleBox, samplePhoto, started, storedBox, storedWood, ticked } from './sample-log.ts';

withFreshDatabase();
vi.setConfig({ testTimeout: 60_000 });
afterEach(() => vi.restoreAllMocks());

const NOW = 1_930_000_100_000;
const author = { writer: 'phone-a', now: 1 };

/** What a sweep of staged photos opens. */
const SWEEP = ['records', 'superseded', 'photos', 'thumbnails', 'device'];

/** Locks as far as imports use them: one at a time, or at once not at all. */
const held = new Set<string>();
const locks = {
  request: async (
    name: string,
    ...[options, work]:
      | [{ ifAvailable: true }, (lock: object | null) => Promise<void>]
      | [() => Promise<void>]
  ) => {
    if (!work) return (options as () => Promise<void>)();
    return work(held.has(name) ? null : {});
  },
};

const another = async () => {
  await disconnect();
  globalThis.indexedDB = new IDBFactory();
};

/** A small log with a photo, a set-up, a replaced version and settings. */
const fill = async () => {
  await putDevice(DEVICE_KEYS.writer, 'phone-a');
  await putDevice(DEVICE_KEYS.settings, { unit: 'mm', look: 'night' });
  await addLog(
    [storedWood(), storedBox({ id: 'box-2', body: null, rev: 4 })],
    [started(), ticked(2, 'isolate')],
  );
  await write(['superseded'], async (tx) => {
    await tx.objectStore('superseded').put({ ...storedWood({ rev: 1, writer: 'phone-c' }), supersededAt: 5 });
  });
  const photo = await samplePhoto('photo-1', 1, 2, 3);
  await changeRecord(
    'mine',
    'box',
    'box-1',
    author,
    () => sampleBox({ photos: [{ id: 'photo-1', at: 1, of: 'box' }] }),
    { photo },
  );
  await addLog([storedBox({ logId: 'demo' })], []);
};

const sound = async (file: Blob): Promise<Backup> => {
  const backup = await readBackup(file);
  if (!backup.ok) throw new Error(JSON.stringify(backup.error));
  return backup.value;
};

/** All but what belongs to the installation, or is made anew from the rest. */
const logsHere = async () => {
  const { device: _, imports: __, drafts: ___, stale: ____, cache: _____, ...logs } = await everything();
  return logs;
};

describe('the file', () => {
  test('holds everything but the demo, each entry with its sum, and not the id of the installation', async () => {
    await fill();
    const entries = unzipSync(new Uint8Array(await (await makeBackup(NOW, ['demo'])).arrayBuffer()));
    const hash = (await samplePhoto('photo-1', 1, 2, 3)).full.sha256;
    expect(Object.keys(entries).sort()).toEqual(
      ['manifest.json', 'log.json', 'boxes.csv', `photos/${hash}.jpg`, `thumbnails/${hash}.jpg`].sort(),
    );
    const { sha256 } = JSON.parse(strFromU8(entries['manifest.json'] as Uint8Array));
    for (const [name, bytes] of Object.entries(entries)) {
      if (name === 'manifest.json') continue;
      const digest = await crypto.subtle.digest('SHA-256', new Uint8Array(bytes));
      expect(sha256[name], name).toBe(Buffer.from(digest).toString('hex'));
    }
    const log = JSON.parse(strFromU8(entries['log.json'] as Uint8Array));
    expect([log.records.length, log.superseded.length, log.events.length, log.photos.length]).toEqual([
      3, 1, 2, 1,
    ]);
    expect(JSON.stringify(log)).not.toContain('demo');
    expect(Object.keys(log)).not.toContain('writer');
  });

  test('of an empty phone can be made and read', async () => {
    const backup = await sound(await makeBackup(NOW, []));
    expect(backup.log).toMatchObject({ records: [], events: [], photos: [], settings: null, madeAt: NOW });
  });
});

describe('taken in by an empty phone', () => {
  test('it gives back every record, event, picture and replaced version, and the settings', async () => {
    await fill();
    await disconnect();
    const file = await makeBackup(NOW, ['demo']);
    await write(['records'], async (tx) => {
      await tx.objectStore('records').delete(['demo', 'box', 'box-1']);
    });
    const before = await logsHere();
    await another();
    const summary = await takeIn(await sound(file), NOW, 'phone-new');
    expect(summary).toEqual({
      ok: true,
      value: { fresh: 6, changed: 0, same: 0, boxes: 1, photos: 1, madeAt: NOW, takenInBefore: false },
    });
    expect(await logsHere()).toEqual(before);
    expect(await getDevice(DEVICE_KEYS.settings)).toEqual({ unit: 'mm', look: 'night' });
  });

  test('this installation is a new writer afterwards', async () => {
    await fill();
    const file = await makeBackup(NOW, ['demo']);
    await takeIn(await sound(file), NOW, 'phone-new');
    expect(await getDevice(DEVICE_KEYS.writer)).toBe('phone-new');
  });

  test('two years of boxes go there and come back', async () => {
    const { records, events } = generateDemo(1, NOW);
    await addLog(records, events);
    const before = await logsHere();
    const file = await makeBackup(NOW, []);
    await another();
    await takeIn(await sound(file), NOW, 'phone-new');
    expect(await logsHere()).toEqual(before);
  });

  test('any log goes there and comes back', async () => {
    const record: fc.Arbitrary<Stored> = fc.oneof(
      fc
        .record({ id: fc.string({ minLength: 1 }), rev: fc.integer({ min: 1, max: 99 }), text: fc.string() })
        .map(({ id, rev, text }) => storedWood({ id, rev }, text)),
      fc
        .record({
          id: fc.string({ minLength: 1 }),
          number: fc.integer({ min: 1, max: 999 }),
          name: fc.string({ unit: 'binary' }),
          note: fc.string({ unit: 'grapheme' }),
          depth: fc.double({ min: 0, max: 20, noNaN: true }),
        })
        .map(({ id, number, name, note, depth }) =>
          storedBox({
            id,
            body: sampleBox({
              number,
              name,
              // JSON has no -0.
              cuts: [
                {
                  id: 'cut',
                  seq: 1,
                  part: 'recess',
                  runId: null,
                  at: 1,
                  depth: { mm: (depth + 0) as never, text: note.slice(0, 50) },
                  correction: false,
                },
              ],
            }),
          }),
        ),
    );
    const event: fc.Arbitrary<SetUpEvent> = fc
      .record({ n: fc.integer({ min: 2, max: 50 }), writer: fc.constantFrom('phone-a', 'phone-b') })
      .map(({ n, writer }) => ticked(n, 'isolate', { writer }));
    const photo = fc.record({ id: fc.string({ minLength: 1 }), bytes: fc.uint8Array({ maxLength: 50 }) });
    await fc.assert(
      fc.asyncProperty(
        fc.array(record, { maxLength: 8 }),
        fc.array(event, { maxLength: 8 }),
        fc.array(photo, { maxLength: 4 }),
        async (records, events, photos) => {
          await another();
          await addLog(records, events);
          for (const { id, bytes } of photos) {
            const { full, thumbnail } = await samplePhoto(id, ...bytes);
            await write(['photos', 'thumbnails'], async (tx) => {
              await tx.objectStore('photos').put(full);
              await tx.objectStore('thumbnails').put(thumbnail);
            });
          }
          const before = await logsHere();
          const file = await makeBackup(NOW, []);
          await another();
          await takeIn(await sound(file), NOW, 'phone-new');
          expect(await logsHere()).toEqual(before);
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe('taken in by a phone with a log of its own', () => {
  test('the summary counts before anything is changed, and the merge does what it said', async () => {
    await fill();
    const file = await makeBackup(NOW, ['demo']);
    await changeRecord('mine', 'box', 'box-1', { writer: 'phone-b', now: 2 }, (box) => ({
      ...(box ?? sampleBox()),
      name: 'Tea caddy',
    }));
    await changeRecord('mine', 'wood', 'wood-1', author, () => null);
    await write(['events'], async (tx) => {
      await tx.objectStore('events').delete(['mine', 'run-1', 2, 'phone-a']);
    });
    const before = await everything();
    const backup = await sound(file);
    const summary = await summarize(backup);
    expect(summary).toMatchObject({
      ok: true,
      value: { fresh: 1, changed: 2, same: 3, takenInBefore: false },
    });
    expect(await everything()).toEqual(before);

    await takeIn(backup, NOW, 'phone-new');
    expect(await getRecord('mine', 'box', 'box-1')).toMatchObject({ rev: 2, body: { name: 'Tea caddy' } });
    expect(await getRecord('mine', 'wood', 'wood-1')).toMatchObject({ rev: 2, body: null });
    const replaced = (await listSuperseded('mine')).filter((v) => v.supersededAt === NOW);
    expect(replaced.map((v) => [v.kind, v.rev]).sort()).toEqual([
      ['box', 1],
      ['wood', 1],
    ]);
  });

  test('a second time it changes nothing, and is known', async () => {
    await fill();
    const file = await makeBackup(NOW, ['demo']);
    await another();
    await takeIn(await sound(file), NOW, 'phone-new');
    const before = await logsHere();
    const again = await sound(file);
    expect(await summarize(again)).toMatchObject({
      value: { fresh: 0, changed: 0, same: 6, takenInBefore: true },
    });
    await takeIn(again, NOW + 1, 'phone-newer');
    expect(await logsHere()).toEqual(before);
  });

  test('settings here stay as they are', async () => {
    await fill();
    const file = await makeBackup(NOW, ['demo']);
    await another();
    await putDevice(DEVICE_KEYS.settings, { unit: 'in' });
    await takeIn(await sound(file), NOW, 'phone-new');
    expect(await getDevice(DEVICE_KEYS.settings)).toEqual({ unit: 'in' });
  });

  test('a file that contradicts a fact of this phone is refused whole', async () => {
    await fill();
    const file = await makeBackup(NOW, ['demo']);
    await another();
    await appendEvent(ticked(2, 'isolate', { verdict: 'fail' }));
    const before = await everything();
    expect(await takeIn(await sound(file), NOW, 'phone-new')).toEqual({
      ok: false,
      error: { why: 'contradicts', what: 'event', id: 'run-1 2' },
    });
    expect(await everything()).toEqual(before);
  });
});

describe('all or nothing', () => {
  let backup: Backup;
  let before: Awaited<ReturnType<typeof everything>>;
  beforeEach(async () => {
    await fill();
    const file = await makeBackup(NOW, ['demo']);
    await another();
    await addLog([storedWood({ rev: 7 }, 'Medlar')], []);
    before = await everything();
    backup = await sound(file);
  });

  test('the disk fills up while pictures are staged', async () => {
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      if (this.name === 'thumbnails') throw new DOMException('no room', 'QuotaExceededError');
      return put.apply(this, args);
    });
    await expect(takeIn(backup, NOW, 'phone-new')).rejects.toMatchObject({ reason: 'full' });
    expect(await everything()).toEqual(before);
  });

  test('the disk fills up in the last write', async () => {
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      if (this.name === 'imports') throw new DOMException('no room', 'QuotaExceededError');
      return put.apply(this, args);
    });
    await expect(takeIn(backup, NOW, 'phone-new')).rejects.toMatchObject({ reason: 'full' });
    expect(await everything()).toEqual(before);
  });

  test('records, events and the mark go in by one strict transaction, after the pictures', async () => {
    const spy = vi.spyOn(IDBDatabase.prototype, 'transaction');
    await takeIn(backup, NOW, 'phone-new');
    const writes = spy.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writes.map(([stores, , options]) => [stores, options?.durability])).toEqual([
      [SWEEP, 'strict'],
      [['photos', 'thumbnails', 'device'], 'strict'],
      [['records', 'superseded', 'events', 'imports', 'device', 'stale'], 'strict'],
    ]);
  });
});

describe('an import that was killed with photos staged', () => {
  const photosHere = async () =>
    (await everything()).photos?.map((entry) => (entry as { key: string[] }).key[1]);
  let other: Backup;

  /** Taking in stops for ever after its photos, as when the phone kills the page. */
  const killed = async (backup: Backup) => {
    const photo = await samplePhoto('orphan', 5);
    await expect(
      takeIn(
        {
          ...backup,
          log: { ...backup.log, photos: [...backup.log.photos, { ...photo.full }] },
          picture: async (entry) => {
            if (!entry.includes(photo.full.sha256)) return backup.picture(entry);
            vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
              throw new DOMException('killed', 'UnknownError');
            });
            return backup.picture(entry);
          },
        },
        NOW,
        'phone-new',
      ),
    ).rejects.toThrow();
    vi.restoreAllMocks();
  };

  beforeEach(async () => {
    held.clear();
    vi.stubGlobal('navigator', { locks });
    await fill();
    other = await sound(await makeBackup(NOW, ['demo']));
    await another();
    await killed(other);
    expect(await photosHere()).toEqual(['photo-1']);
  });
  afterEach(() => vi.unstubAllGlobals());

  test('the next start sweeps them', async () => {
    await sweepLeftPhotos();
    expect(await photosHere()).toEqual([]);
  });

  test('unless an import is at work in another tab, or nobody can tell', async () => {
    held.add('lidwright-import');
    await sweepLeftPhotos();
    expect(await photosHere()).toEqual(['photo-1']);
    vi.stubGlobal('navigator', {});
    await sweepLeftPhotos();
    expect(await photosHere()).toEqual(['photo-1']);
  });

  test('the next import sweeps them, and its own stay', async () => {
    const { full, thumbnail } = await samplePhoto('orphan', 5);
    await write(['photos', 'thumbnails'], async (tx) => {
      await tx.objectStore('photos').put(full);
      await tx.objectStore('thumbnails').put(thumbnail);
    });
    expect(await takeIn(other, NOW, 'phone-newer')).toMatchObject({ ok: true });
    expect(await photosHere()).toEqual(['photo-1']);
    await sweepLeftPhotos();
    expect(await photosHere()).toEqual(['photo-1']);
  });

  test('pictures that a box shows in any version stay', async () => {
    const hidden = await samplePhoto('hidden', 6);
    await write(['photos', 'thumbnails', 'superseded'], async (tx) => {
      await tx.objectStore('photos').put(hidden.full);
      await tx.objectStore('thumbnails').put(hidden.thumbnail);
      const body = sampleBox({ photos: [{ id: 'hidden', at: 1, of: 'box' }] });
      await tx.objectStore('superseded').put({ ...storedBox({ body, writer: 'phone-z' }), supersededAt: 1 });
    });
    await sweepLeftPhotos();
    expect(await photosHere()).toEqual(['hidden']);
  });
});

describe('a broken file is refused, and says where it broke', () => {
  let entries: Record<string, Uint8Array>;
  let whole: Uint8Array<ArrayBuffer>;
  beforeEach(async () => {
    await fill();
    whole = new Uint8Array(await (await makeBackup(NOW, ['demo'])).arrayBuffer());
    entries = unzipSync(whole);
  });

  /** The file again with entries changed, their sums made right. */
  const again = async (change: Record<string, Uint8Array | null>, sums = true): Promise<Blob> => {
    const kept: Record<string, Uint8Array> = { ...entries };
    for (const [name, bytes] of Object.entries(change)) {
      if (bytes) kept[name] = bytes;
      else delete kept[name];
    }
    if (sums) {
      const sha256: Record<string, string> = {};
      for (const [name, bytes] of Object.entries(kept))
        if (name !== 'manifest.json')
          sha256[name] = Buffer.from(await crypto.subtle.digest('SHA-256', new Uint8Array(bytes))).toString(
            'hex',
          );
      kept['manifest.json'] = Buffer.from(JSON.stringify({ sha256 }));
    }
    return new Blob([zipSync(kept as Zippable) as Uint8Array<ArrayBuffer>]);
  };
  const log = (change: (log: Record<string, never[]>) => void): Uint8Array => {
    const value = JSON.parse(strFromU8(entries['log.json'] as Uint8Array));
    change(value);
    return Buffer.from(JSON.stringify(value));
  };
  const photoEntry = () => Object.keys(entries).find((name) => name.startsWith('photos/')) as string;

  test('zipped again by another program it is still good', async () => {
    expect((await readBackup(await again({}))).ok).toBe(true);
    expect((await readBackup(await again({ '__MACOSX/log.json': new Uint8Array(3) }))).ok).toBe(true);
  });

  test('not a ZIP, an empty file, half of one', async () => {
    for (const bytes of [new Uint8Array(), new Uint8Array(5), Buffer.from('{"format":"lidwright-backup"}')])
      expect(await readBackup(new Blob([bytes]))).toEqual({ ok: false, error: { why: 'not-a-backup' } });
    expect((await readBackup(new Blob([whole.subarray(0, whole.length / 2)]))).ok).toBe(false);
    expect(
      await readBackup(new Blob([zipSync({ 'a.txt': new Uint8Array(3) }) as Uint8Array<ArrayBuffer>])),
    ).toEqual({
      ok: false,
      error: { why: 'not-a-backup' },
    });
  });

  test('an entry that is missing or changed', async () => {
    const photo = photoEntry();
    expect(await readBackup(await again({ [photo]: null }, false))).toMatchObject({
      error: { why: 'entry-missing', entry: photo },
    });
    expect(await readBackup(await again({ 'boxes.csv': null }, false))).toMatchObject({
      error: { why: 'entry-missing', entry: 'boxes.csv' },
    });
    expect(
      await readBackup(await again({ [photo]: new Uint8Array([0xff, 0xd8, 0xff, 0]) }, false)),
    ).toMatchObject({
      error: { why: 'entry-damaged', entry: photo },
    });
    expect(await readBackup(await again({ 'log.json': log((l) => l.events?.pop()) }, false))).toMatchObject({
      error: { why: 'entry-damaged', entry: 'log.json' },
    });
  });

  test('a picture that is no picture, or not the one its name says', async () => {
    const photo = photoEntry();
    for (const bytes of [Buffer.from('<svg onload="alert(1)"/>'), new Uint8Array([0xff, 0xd8, 0xff, 0])])
      expect(await readBackup(await again({ [photo]: bytes }))).toMatchObject({
        error: { why: 'entry-damaged', entry: photo },
      });
  });

  test('a record or event out of bounds, unknown or twice, though the sums are right', async () => {
    const faults: [string, (log: ReturnType<typeof JSON.parse>) => void][] = [
      ['records.0.rev', (l) => Object.assign(l.records[0], { rev: -1 })],
      ['records.0.body.plan.opening.mm', (l) => Object.assign(l.records[0].body.plan.opening, { mm: 1e6 })],
      ['records.3', (l) => l.records.push(l.records[0])],
      ['events.0.procedure', (l) => Object.assign(l.events[0], { procedure: 1 })],
      ['procedures.0.version', (l) => Object.assign(l.procedures[0], { version: 0 })],
      ['events.0.procedure', (l) => Object.assign(l, { procedures: {} })],
      ['events.0.procedure', (l) => Object.assign(l, { version: 1 })],
      ['events.1.verdict', (l) => Object.assign(l.events[1], { verdict: 'perhaps' })],
      ['events.2', (l) => l.events.push(l.events[1])],
      ['superseded.0.supersededAt', (l) => Object.assign(l.superseded[0], { supersededAt: 'once' })],
      ['photos.0.sha256', (l) => Object.assign(l.photos[0], { sha256: '../../x' })],
      ['photos.0.width', (l) => Object.assign(l.photos[0], { width: 1e6 })],
      ['settings.unit', (l) => Object.assign(l.settings, { unit: 'ft' })],
      ['records', (l) => Object.assign(l, { records: {} })],
      ['madeAt', (l) => Object.assign(l, { madeAt: 'today' })],
    ];
    for (const [at, change] of faults)
      expect(await readBackup(await again({ 'log.json': log(change) })), at).toMatchObject({
        ok: false,
        error: { why: 'misfit', entry: 'log.json', at },
      });
  });

  test('each procedure stands once; a file of version 1, with a copy in every start, is read alike', async () => {
    const now = JSON.parse(strFromU8(entries['log.json'] as Uint8Array));
    expect(now).toMatchObject({ version: 2, procedures: [{ steps: expect.any(Array) }] });
    expect(now.events[0]).toMatchObject({ kind: 'started', procedure: 0 });
    const old = log((l) => {
      const { procedures, events } = l as unknown as typeof now;
      events[0].procedure = procedures[0];
      Object.assign(l, { version: 1, procedures: undefined });
    });
    const read = await sound(await again({ 'log.json': old }));
    expect({ ...read.log, version: 2 }).toEqual((await sound(await again({}))).log);
  });

  test('a log that is not a log, and one of a newer version', async () => {
    expect(await readBackup(await again({ 'log.json': Buffer.from('{') }))).toEqual({
      ok: false,
      error: { why: 'not-a-backup' },
    });
    expect(
      await readBackup(await again({ 'log.json': log((l) => Object.assign(l, { version: 3 })) })),
    ).toEqual({
      ok: false,
      error: { why: 'newer-format', version: 3 },
    });
  });

  test('an entry that unpacks to more than it says is not unpacked further', async () => {
    const zeros = new Uint8Array(3_000_000);
    const bomb = zipSync({ 'log.json': zeros, 'manifest.json': entries['manifest.json'] as Uint8Array });
    const view = new DataView(bomb.buffer, bomb.byteOffset, bomb.byteLength);
    // In the directory, the size of log.json is said to be 100 bytes.
    const sizes = [...bomb.keys()].filter(
      (at) => at + 4 <= bomb.length && view.getUint32(at, true) === zeros.length,
    );
    for (const at of sizes) view.setUint32(at, 100, true);
    expect(sizes.length).toBeGreaterThan(0);
    expect(await readBackup(new Blob([bomb as Uint8Array<ArrayBuffer>]))).toMatchObject({
      error: { why: 'entry-damaged', entry: 'log.json' },
    });
  });

  test('one byte wrong anywhere: refused, or in a place that means nothing', async () => {
    const good = await sound(new Blob([whole]));
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.integer({ min: 1, max: 255 }), async (at, flip) => {
        const bent = whole.slice();
        bent[at] = (bent[at] ?? 0) ^ flip;
        const answer = await readBackup(new Blob([bent]));
        if (answer.ok) expect(answer.value.log).toEqual(good.log);
      }),
      { numRuns: 400 },
    );
  });

  test('cut short anywhere: refused', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), async (length) => {
        expect((await readBackup(new Blob([whole.subarray(0, length)]))).ok).toBe(false);
      }),
      { numRuns: 200 },
    );
  });
});

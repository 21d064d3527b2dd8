// @vitest-environment happy-dom
import { withItem } from '../../src/domain/box/with-item.ts';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { boxById, changeBox } from '../../src/app/boxes.ts';
import { changes } from '../../src/app/changes.ts';
import { keepDraft } from '../../src/app/drafts.ts';
import { dismiss, failures } from '../../src/app/failure.ts';
import { keepOffset } from '../../src/app/instruments.ts';
import { bodyOf, keep, listBodies } from '../../src/app/keep.ts';
import { changeRig } from '../../src/app/rigs.ts';
import { startBox } from '../../src/app/start-box.ts';
import { startSetUp } from '../../src/app/start-set-up.ts';
import { RIGHT, recordTrial } from '../../src/app/trials.ts';
import type { OwnWood } from '../../src/domain/box/records.ts';
import { commitUnheard } from '../storage/commit-unheard.ts';
import { freshPhone, loseStore, PLAN } from './faulty-store.ts';

beforeEach(freshPhone);
afterEach(() => vi.restoreAllMocks());

const onHand = async () => {
  const found = await boxById('box-1');
  if (!found) throw new Error('no box');
  return found;
};
const DAMSON: OwnWood = { name: 'Damson', group: 'hardwood', note: '' };
const named = (name: string) => changeBox('box-1', (box) => ({ ...box, name }));
const said = () => failures.value.map(({ act, of, reason }) => `${act} ${of} ${reason}`);

describe('keeping a record', () => {
  test('it is on disk, and every screen that shows its kind is told', async () => {
    const before = changes.wood.value;
    expect(await keep('wood', 'own', () => DAMSON)).toBe(true);
    expect(changes.wood.value).toBe(before + 1);
    expect(await listBodies('wood')).toEqual([{ id: 'own', body: DAMSON }]);
    expect(await keep('wood', 'own', () => null)).toBe(true);
    expect(await bodyOf('wood', 'own')).toBeNull();
  });

  test('the first event of a set-up is announced with the box that lists it', async () => {
    const before = changes.events.value;
    await startSetUp('run-1', await onHand(), 'recess');
    expect(changes.events.value).toBe(before + 1);
  });

  test('refused: nothing is announced, and what was not saved is named', async () => {
    const before = changes.box.value;
    loseStore();
    expect(await named('Spice jar')).toBe(false);
    expect(changes.box.value).toBe(before);
    expect(said()).toEqual(['box box-1 lost']);
  });
});

describe('what failed', () => {
  beforeEach(async () => {
    loseStore();
    await recordTrial('box-1', 'trial', RIGHT);
    vi.restoreAllMocks();
    expect(said()).toEqual(['trial box-1 lost']);
  });

  test('stays when something else succeeds: a draft, the rig, the same box', async () => {
    await keepDraft('trial box-1', { note: 'b' });
    await changeRig('rig-1', (rig) => ({ ...rig, banjos: 2 }));
    await named('Needle case');
    expect(said()).toEqual(['trial box-1 lost']);
  });

  test('stays when the same succeeds on another box', async () => {
    await startBox('box-2', PLAN);
    await recordTrial('box-2', 'other', RIGHT);
    expect(said()).toEqual(['trial box-1 lost']);
  });

  test('goes when the same thing succeeds, and when it is dismissed', async () => {
    await recordTrial('box-1', 'trial', RIGHT);
    expect(said()).toEqual([]);
    loseStore();
    await named('Needle case');
    dismiss('box', 'box-1');
    expect(said()).toEqual([]);
  });

  test('two things that fail are two, and one that fails twice is one', async () => {
    loseStore();
    await named('Needle case');
    await recordTrial('box-1', 'trial', RIGHT);
    expect(said()).toEqual(['box box-1 lost', 'trial box-1 lost']);
  });
});

describe('a use case that reads first, with the store lost', () => {
  test.each([
    ['a set-up', async () => startSetUp('run-1', await boxed, 'recess'), 'set-up box-1 lost'],
    ['a box', () => startBox('box-2', PLAN), 'box box-2 lost'],
    ['the caliper', async () => keepOffset(await boxed, null), 'instrument box-1 lost'],
  ])('%s: says so instead of ending in nothing', async (_, act, failure) => {
    boxed = onHand();
    await boxed;
    loseStore();
    expect(await act()).toBe(false);
    expect(said()).toEqual([failure]);
    vi.restoreAllMocks();
    expect(await act()).toBe(true);
    expect(said()).toEqual([]);
  });
  let boxed: ReturnType<typeof onHand>;
});

describe('a commit that was never heard', () => {
  test('the retry of the same call adds nothing and changes no revision twice', async () => {
    commitUnheard(1);
    expect(await changeBox('box-1', (box) => ({ ...box, name: `${box.name}x` }))).toBe(true);
    expect((await onHand()).box.name).toBe('x');
  });

  test('a second tap after both tries failed adds nothing either', async () => {
    commitUnheard(2);
    const record = () => recordTrial('box-1', 'trial', RIGHT);
    expect(await record()).toBe(false);
    expect(await record()).toBe(true);
    expect((await onHand()).box.trials).toHaveLength(1);
  });
});

test('an item is put in place of the one with its id, else at the end', () => {
  const list = [
    { id: 'a', n: 1 },
    { id: 'b', n: 2 },
  ];
  expect(withItem(list, { id: 'a', n: 3 })).toEqual([
    { id: 'a', n: 3 },
    { id: 'b', n: 2 },
  ]);
  expect(withItem(list, { id: 'c', n: 3 })).toHaveLength(3);
});

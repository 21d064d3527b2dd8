import type { Box, Closing, OwnWood, Stored } from '../../src/domain/box/records.ts';
import { DEFAULT_PROCEDURES } from '../../src/domain/setup/default-procedures.ts';
import type { SetUpEvent } from '../../src/domain/setup/events.ts';
import { mm } from '../../src/domain/units/brands.ts';
import type { PhotoBytes, Thumbnail } from '../../src/storage/schema.ts';

/** An invented box, just planned. */
export const sampleBox = (change: Partial<Box> = {}): Box => ({
  number: 1,
  name: 'Spice jar',
  startedOn: '2031-03-04',
  rigId: 'rig',
  procedureId: 'board-and-cone',
  plan: {
    route: 'recess-first',
    recessIn: 'lid',
    lid: { wood: 'boxwood', grain: 'end' },
    base: { wood: 'boxwood', grain: 'end' },
    insert: null,
    pitch: { mm: mm(2.54), text: '10 tpi' },
    opening: { mm: mm(50.8), text: '2 in' },
    outside: null,
    aim: { by: 'fit', clearance: null },
    threads: 3,
    passes: 'two-thirds',
  },
  bore: [],
  tenon: [],
  instrumentId: null,
  setUps: [],
  cuts: [],
  trials: [],
  seats: [],
  closing: null,
  lidChecks: [],
  photos: [],
  ...change,
});

export const sampleClosing: Closing = {
  at: 1_930_000_000_000,
  outcome: 'kept',
  scrapReason: null,
  hardener: 'none',
  hardenerBeforePass: null,
  outsideTurned: null,
  note: '',
};

export const storedBox = (change: Partial<Stored<'box'>> = {}): Stored<'box'> => ({
  logId: 'mine',
  kind: 'box',
  id: 'box-1',
  rev: 1,
  writer: 'phone-a',
  savedAt: 1_930_000_000_000,
  body: sampleBox(),
  ...change,
});

export const storedWood = (change: Partial<Stored<'wood'>> = {}, name = 'Plum'): Stored<'wood'> => ({
  logId: 'mine',
  kind: 'wood',
  id: 'wood-1',
  rev: 1,
  writer: 'phone-a',
  savedAt: 1_930_000_000_000,
  body: { name, group: 'hardwood', note: '' } satisfies OwnWood,
  ...change,
});

const stamp = (n: number) => ({
  logId: 'mine',
  runId: 'run-1',
  n,
  writer: 'phone-a',
  at: 1_930_000_000_000 + n * 10_000,
  mono: n * 10_000,
  hid: 0,
  session: 'session-1',
});

export const started = (change: Partial<SetUpEvent & { kind: 'started' }> = {}): SetUpEvent => ({
  ...stamp(1),
  kind: 'started',
  boxId: 'box-1',
  part: 'recess',
  procedureId: 'board-and-cone',
  procedure: DEFAULT_PROCEDURES['board-and-cone'],
  inherited: [],
  fromRun: null,
  groove: false,
  ...change,
});

export const ticked = (
  n: number,
  step: string,
  change: Partial<SetUpEvent & { kind: 'ticked' }> = {},
): SetUpEvent => ({
  ...stamp(n),
  kind: 'ticked',
  steps: [step],
  verdict: 'pass',
  ...change,
});

/** Bytes that begin as a JPEG does; stores and backups look no further. */
export const pretendJpeg = (...rest: number[]): ArrayBuffer =>
  new Uint8Array([0xff, 0xd8, 0xff, ...rest]).buffer;

export const samplePhoto = async (
  id: string,
  ...rest: number[]
): Promise<{ full: PhotoBytes; thumbnail: Thumbnail }> => {
  const bytes = pretendJpeg(...rest);
  const digest = await crypto.subtle.digest('SHA-256', bytes);
  return {
    full: {
      logId: 'mine',
      id,
      type: 'image/jpeg',
      width: 20,
      height: 10,
      bytes,
      sha256: Buffer.from(digest).toString('hex'),
    },
    thumbnail: { logId: 'mine', id, type: 'image/jpeg', bytes: pretendJpeg(1) },
  };
};

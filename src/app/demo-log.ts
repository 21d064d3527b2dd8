import type { Stored } from '../domain/box/records.ts';
import { DEFAULT_PROCEDURES } from '../domain/setup/default-procedures.ts';
import type { SetUpEvent } from '../domain/setup/events.ts';
import { dayOf } from '../platform/clock.ts';
import type { Photo } from '../storage/records.ts';
import { DEMO_LOG } from './session.ts';

/** shared/demo-log.json, as tests/tools/make-demo.mjs writes it. */
export interface DemoFile {
  /** Everything done with, told from the midnight before it is opened, by the clock on the wall. */
  readonly shelf: DemoPart;
  /** The box being made, told from the moment it is opened. */
  readonly lathe: DemoPart;
  readonly photos: readonly DemoPhoto[];
}

/** A square PNG, small enough to be its own thumbnail. */
interface DemoPhoto {
  readonly id: string;
  readonly side: number;
  readonly sha256: string;
  readonly base64: string;
}

/** Moments and days are whole seconds, the past below zero. */
export interface DemoPart {
  readonly records: readonly object[];
  /** By run id, in order. */
  readonly runs: Readonly<Record<string, readonly DemoEvent[]>>;
}

/** An event; a start is without its procedure, which is one of the app's own. */
interface DemoEvent {
  readonly at: number;
  /** When the page was loaded that wrote it. */
  readonly load: number;
  readonly procedureId?: keyof typeof DEFAULT_PROCEDURES;
}

const MOMENTS = new Set(['at', 'load', 'savedAt', 'since']);
const DAYS = new Set(['on', 'startedOn']);

/** The same, its moments as epoch ms and its days as days of this phone's calendar. */
const dated = <T>(told: T, momentOf: (seconds: number) => number): T => {
  const walk = (value: unknown, key: string): unknown => {
    if (Array.isArray(value)) return value.map((each) => walk(each, key));
    if (typeof value === 'object' && value !== null)
      return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, walk(each, name)]));
    if (typeof value !== 'number' || !(MOMENTS.has(key) || DAYS.has(key))) return value;
    return DAYS.has(key) ? dayOf(momentOf(value)) : momentOf(value);
  };
  return walk(told, '') as T;
};

const photoOf = ({ id, side, sha256, base64 }: DemoPhoto): Photo => {
  const { buffer: bytes } = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const picture = { logId: DEMO_LOG, id, type: 'image/png', bytes };
  return { full: { ...picture, width: side, height: side, sha256 }, thumbnail: picture };
};

/** The demo as a log of which the last tap was just before `now` (epoch ms). Shop hours are shop hours in every time zone and season. */
export const demoLog = ({ shelf, lathe, photos }: DemoFile, now: number) => {
  const today = new Date(now);
  const onTheWall = (seconds: number) =>
    new Date(today.getFullYear(), today.getMonth(), today.getDate(), 0, 0, seconds).getTime();
  const parts = [dated(shelf, onTheWall), dated(lathe, (seconds) => now + 1000 * seconds)];
  const ours = { logId: DEMO_LOG, writer: 'demo' };
  const eventOf = (event: DemoEvent, runId: string, n: number) => {
    const { load, ...kept } = event;
    const started = kept.procedureId && { procedure: DEFAULT_PROCEDURES[kept.procedureId] };
    return { ...ours, runId, n, mono: kept.at - load, ...kept, ...started } as unknown as SetUpEvent;
  };
  return {
    records: parts.flatMap(({ records }) => records.map((each) => ({ ...ours, rev: 1, ...each }) as Stored)),
    events: parts.flatMap(({ runs }) =>
      Object.entries(runs).flatMap(([runId, run]) => run.map((event, i) => eventOf(event, runId, i + 1))),
    ),
    photos: photos.map(photoOf),
  };
};

import type { DemoFile, DemoPart } from '../../src/app/demo-log.ts';
import type { Box } from '../../src/domain/box/records.ts';
import { sha256 } from '../../src/domain/sha256.ts';
import { drawPhoto, SIDE } from './draw-photo.ts';
import { DEMO_SEED, type DemoLog, generateDemo } from './generate.ts';
import type { DemoPhoto } from './take-photos.ts';

/** The moment for which the app's demo is made: 1 July 2026, 12:00 UTC. */
export const MADE_FOR = Date.UTC(2026, 6, 1, 12);
const DAY = 86_400_000;

/** Every moment and every day in it as seconds from a moment. */
const seconds = <T>(value: T, from: number): T =>
  JSON.parse(JSON.stringify(value), (key, found) => {
    if (typeof found === 'number' && /^(at|load|savedAt|since)$/.test(key)) return (found - from) / 1000;
    if (typeof found === 'string' && /^(on|startedOn)$/.test(key) && /^\d{4}-/.test(found))
      return (Date.parse(found) - from) / 1000;
    return found;
  });

/** A log made for `now` as the app carries it; demoLog of src/app/demo-log.ts turns it back. */
export const packDemo = async ({ records, events, photos }: DemoLog, now: number): Promise<DemoFile> => {
  const open = records.find(({ kind, body }) => kind === 'box' && (body as Box).closing === null);
  const openRuns = new Set((open?.body as Box | undefined)?.setUps.map(({ runId }) => runId));
  const part = (isOpen: boolean, from: number): DemoPart => {
    const runs: Record<string, object[]> = {};
    for (const event of events) {
      const { logId, writer, runId, n, mono, ...rest } = event;
      if (openRuns.has(runId) !== isOpen) continue;
      const { procedure, ...kept } = { procedure: null, ...rest };
      runs[runId] = [...(runs[runId] ?? []), { ...kept, load: event.at - mono }];
    }
    const kept = records
      .filter((record) => (record === open) === isOpen)
      .map(({ logId, writer, rev, ...record }) => record);
    return seconds({ records: kept, runs } as DemoPart, from);
  };
  const lathe = part(true, now);
  // Its day is that of its first tap, whenever that turns out to be.
  const begun = Math.min(...Object.values(lathe.runs).flatMap((run) => run.map(({ at }) => at)));
  return {
    shelf: part(false, Math.floor(now / DAY) * DAY),
    lathe: { ...lathe, records: lathe.records.map((record) => startedAt(record, begun)) },
    photos: await Promise.all(photos.map(packPhoto)),
  };
};

const packPhoto = async ({ id, sitter, lidOn }: DemoPhoto): Promise<DemoFile['photos'][number]> => {
  const bytes = drawPhoto(sitter, lidOn);
  const base64 = btoa(String.fromCharCode(...bytes));
  return { id, side: SIDE, sha256: sha256(bytes), base64 };
};

const startedAt = (record: { readonly body?: object }, startedOn: number): object => ({
  ...record,
  body: { ...record.body, startedOn },
});

const SOURCE =
  'Invented: the log of the Saltmarsh Turners, made by tests/tools/make-demo.mjs from demo-scenario.json. No shop, person, box or measurement here is real.';

/** The app's demo. */
export const makeDemo = (): Promise<DemoFile> => packDemo(generateDemo(DEMO_SEED, MADE_FOR), MADE_FOR);

/** The text of shared/demo-log.json: a record or a set-up a line, so that a change of one shows as one. */
export const textOf = ({ shelf, lathe, photos }: DemoFile): string => {
  const list = (of: readonly unknown[]) => `[\n${of.map((each) => JSON.stringify(each)).join(',\n')}\n]`;
  const table = (of: object) =>
    `{\n${Object.entries(of)
      .map(([key, each]) => `"${key}":${JSON.stringify(each)}`)
      .join(',\n')}\n}`;
  const part = ({ records, runs }: DemoPart) => `{"records":${list(records)},"runs":${table(runs)}}`;
  return `{"source":"${SOURCE}",\n"shelf":${part(shelf)},\n"lathe":${part(lathe)},\n"photos":${list(photos)}}\n`;
};

import { ok, type Result } from '../domain/result.ts';
import { newId } from '../platform/ids.ts';
import type { BackupRefusal } from '../storage/backup/format.ts';
import type { Backup } from '../storage/backup/read-backup.ts';
import type { Summary } from '../storage/backup/take-in.ts';
import { getDevice, putDevice } from '../storage/device.ts';
import { DEVICE_KEYS } from '../storage/names.ts';
import { listRecords } from '../storage/records.ts';
import { announce, TOPICS } from './changes.ts';
import { attempt } from './failure.ts';
import { DEMO_LOG, logId, openSession } from './session.ts';

/** When the last backup left this phone, epoch ms. */
export const lastBackup = (): Promise<number | undefined> => getDevice<number>(DEVICE_KEYS.backups);

const stampOf = (now: Date): string => now.toISOString().slice(0, 16).replace(/[-:]/g, '').replace('T', '-');

/**
 * Everything but the demo, as a file that an import has read and found sound, or what it found wrong. Made first and shared by a
 * second tap, since sharing needs a fresh one.
 */
export const backupFile = (): Promise<Result<File, BackupRefusal> | undefined> =>
  attempt('backup', async () => {
    const now = new Date();
    const { makeBackup } = await import('../storage/backup/make-backup.ts');
    const { readBackup } = await import('../storage/backup/read-backup.ts');
    const blob = await makeBackup(now.getTime(), [DEMO_LOG]);
    const found = await readBackup(blob);
    return found.ok
      ? ok(new File([blob], `lidwright-${stampOf(now)}.zip`, { type: 'application/zip' }))
      : found;
  });

/** The boxes of the log on screen as a table. */
export const boxesTable = async (): Promise<File | undefined> => {
  const table = await attempt('table', async () => {
    const { boxesCsv } = await import('../storage/backup/boxes-csv.ts');
    return boxesCsv([
      ...(await listRecords(logId.value, 'box')),
      ...(await listRecords(logId.value, 'rig')),
      ...(await listRecords(logId.value, 'instrument')),
    ]);
  });
  return table === undefined
    ? undefined
    : new File([table], `lidwright-boxes-${stampOf(new Date())}.csv`, { type: 'text/csv' });
};

/** Remembers that a backup was handed over. */
export const noteBackup = async (): Promise<void> => {
  await attempt('backup', () => putDevice(DEVICE_KEYS.backups, Date.now()));
  announce('device');
};

export interface Offered {
  readonly backup: Backup;
  readonly summary: Summary;
}

/** Reads a file and says what taking it in would do; nothing is changed. */
export const lookInto = async (file: File): Promise<Result<Offered, BackupRefusal> | undefined> =>
  attempt('import', async () => {
    const { readBackup } = await import('../storage/backup/read-backup.ts');
    const { summarize } = await import('../storage/backup/take-in.ts');
    const backup = await readBackup(file);
    if (!backup.ok) return backup;
    const summary = await summarize(backup.value);
    return summary.ok ? { ok: true, value: { backup: backup.value, summary: summary.value } } : summary;
  });

/** Takes it in, whole or not at all; this installation becomes a new writer. */
export const takeBackupIn = async ({
  backup,
}: Offered): Promise<Result<Summary, BackupRefusal> | undefined> => {
  const taken = await attempt('import', async () => {
    const { takeIn } = await import('../storage/backup/take-in.ts');
    return takeIn(backup, Date.now(), newId());
  });
  if (taken?.ok) {
    await openSession();
    for (const topic of TOPICS) announce(topic);
  }
  return taken;
};

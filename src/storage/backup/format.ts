import type { Stored } from '../../domain/box/records.ts';
import type { Settings } from '../../domain/log/settings.ts';
import type { ForeignEvent, SetUpEvent } from '../../domain/setup/events.ts';
import type { Superseded } from '../schema.ts';

/** A backup is a ZIP of these. The manifest holds the SHA-256 of every other entry. */
export const ENTRIES = {
  manifest: 'manifest.json',
  log: 'log.json',
  boxes: 'boxes.csv',
  photo: (sha256: string) => `photos/${sha256}.jpg`,
  thumbnail: (sha256: string) => `thumbnails/${sha256}.jpg`,
} as const;

export const FORMAT = 'lidwright-backup';
/** 2: procedures stand once in a list of their own. Version 1 had a copy in each start of a set-up; it is still read. */
export const FORMAT_VERSION = 2;

/** A photo as log.json names it; its bytes are the entry named by its hash. */
export interface PhotoEntry {
  readonly logId: string;
  readonly id: string;
  readonly sha256: string;
  readonly width: number;
  readonly height: number;
}

/** log.json with every procedure back in its place: everything but the pictures. Of the device store it holds the settings only. */
export interface BackupLog {
  readonly format: typeof FORMAT;
  readonly version: number;
  readonly madeAt: number;
  readonly records: readonly Stored[];
  readonly superseded: readonly Superseded[];
  readonly events: readonly (SetUpEvent | ForeignEvent)[];
  readonly photos: readonly PhotoEntry[];
  readonly settings: Partial<Settings> | null;
}

/** Why a file was refused as a whole; nothing was changed. `entry` and `at` say where the fault is. */
export type BackupRefusal =
  | { readonly why: 'not-a-backup' }
  | { readonly why: 'newer-format'; readonly version: number }
  | { readonly why: 'too-big' }
  | { readonly why: 'entry-missing'; readonly entry: string }
  | { readonly why: 'entry-damaged'; readonly entry: string }
  | {
      readonly why: 'misfit';
      readonly entry: string;
      readonly at: string;
      /** The record or event it is in, as a person can find it; null when it is in none. */
      readonly which: string | null;
      readonly expected: string;
      readonly found: string;
    }
  | { readonly why: 'contradicts'; readonly what: 'event' | 'photo'; readonly id: string };

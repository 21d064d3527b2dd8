import type { DBSchema } from 'idb';
import type { Kind, Stored } from '../domain/box/records.ts';
import type { ForeignEvent, SetUpEvent } from '../domain/setup/events.ts';

/** A photo's upright, metadata-free JPEG. Bytes, not a Blob: some browsers' private mode refuses Blobs. */
export interface PhotoBytes {
  readonly logId: string;
  readonly id: string;
  readonly type: string;
  readonly width: number;
  readonly height: number;
  readonly bytes: ArrayBuffer;
  readonly sha256: string;
}

/** A small picture for lists, in a store of its own so that lists never read large bytes. */
export interface Thumbnail {
  readonly logId: string;
  readonly id: string;
  readonly type: string;
  readonly bytes: ArrayBuffer;
}

/** What was typed into a form and not yet saved. */
export interface Draft {
  readonly logId: string;
  readonly form: string;
  readonly values: unknown;
  readonly at: number;
}

/** A version that lost to a newer one, kept 30 days and restorable. */
export type Superseded = Stored & { readonly supersededAt: number };

interface ImportMark {
  readonly logId: string;
  readonly id: string;
  readonly at: number;
}

/** What was written since the findings last read the log: a set-up by its run id, or any record. */
export interface Touched {
  readonly logId: string;
  readonly what: 'run' | 'records';
  readonly id: string;
  /** Differs from write to write, so that one that came meanwhile is told from one that was read. */
  readonly stamp: string;
}

/**
 * What the findings keep of a log so as not to read it all again: its set-ups folded, and the last answer. Safe to lose:
 * it is made anew from the log.
 */
export interface Kept {
  readonly logId: string;
  readonly what: 'runs' | 'findings';
  /** By what rule it was made; made by another, it is worth nothing. */
  readonly rule: string;
  /** A fresh one each time it is written. */
  readonly stamp: string;
  readonly value: unknown;
}

export interface LidwrightDb extends DBSchema {
  records: {
    key: [logId: string, kind: Kind, id: string];
    value: Stored;
    indexes: {
      byNumber: [logId: string, kind: Kind, number: number];
      closed: [logId: string, kind: Kind, at: number];
    };
  };
  superseded: {
    key: [logId: string, kind: Kind, id: string, rev: number, writer: string];
    value: Superseded;
  };
  events: {
    key: [logId: string, runId: string, n: number, writer: string];
    value: SetUpEvent | ForeignEvent;
  };
  photos: { key: [logId: string, id: string]; value: PhotoBytes };
  thumbnails: { key: [logId: string, id: string]; value: Thumbnail };
  drafts: { key: [logId: string, form: string]; value: Draft };
  device: { key: string; value: unknown };
  imports: { key: [logId: string, id: string]; value: ImportMark };
  touched: { key: [logId: string, what: Touched['what'], id: string]; value: Touched };
  kept: { key: [logId: string, what: Kept['what']]; value: Kept };
}

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

/** A version that was replaced or lost a merge. It can be restored for 30 days. */
export type Superseded = Stored & { readonly supersededAt: number };

interface ImportMark {
  readonly logId: string;
  readonly id: string;
  readonly at: number;
}

/** Marks what was written since the findings last read the log: one set-up by its run id, or any record. */
export interface StaleMark {
  readonly logId: string;
  readonly what: 'run' | 'records';
  readonly id: string;
  /** Differs with every write, so that a later write is not mistaken for the one that was read. */
  readonly stamp: string;
}

/** A cache of the findings, so that they need not read a whole log again: its folded set-ups, or the last answer. Safe to delete. */
export interface Cached {
  readonly logId: string;
  readonly what: 'runs' | 'findings';
  /** The rule it was computed by; a value computed by another rule is ignored. */
  readonly rule: string;
  /** New with every write. */
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
  stale: { key: [logId: string, what: StaleMark['what'], id: string]; value: StaleMark };
  cache: { key: [logId: string, what: Cached['what']]; value: Cached };
}

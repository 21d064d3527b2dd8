/** Every name in the database. Changing one is a migration. */
export const DATABASE = 'lidwright';
export const VERSION = 1;

export const STORES = {
  records: 'records',
  superseded: 'superseded',
  events: 'events',
  photos: 'photos',
  thumbnails: 'thumbnails',
  drafts: 'drafts',
  device: 'device',
  imports: 'imports',
  stale: 'stale',
  cache: 'cache',
} as const;
export type StoreName = keyof typeof STORES;

/** Boxes by [logId, kind, number], and those closed by [logId, kind, when]; a deleted box is in neither. */
export const BOXES_BY_NUMBER = 'byNumber';
export const BOXES_CLOSED = 'closed';

/** Keys of the device store: what belongs to this phone, not to a log. */
export const DEVICE_KEYS = {
  writer: 'writer',
  settings: 'settings',
  currentLog: 'currentLog',
  backups: 'backups',
  /** There while an import has photos staged. */
  staged: 'staged',
} as const;

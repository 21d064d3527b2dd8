/** Why the store failed, in terms that a screen can act on. */
export type FailureReason =
  /** No room left on the device. */
  | 'full'
  /** Another tab holds an old version open. */
  | 'blocked'
  /** The database was written by a newer version of the app. */
  | 'newer'
  /** No storage here: private mode, or it is switched off. */
  | 'none'
  /** The connection died and could not be reopened. */
  | 'lost'
  /** The key holds another event: another tab or a double tap was first. */
  | 'taken'
  /** The list is as long as a log may hold. */
  | 'list-full'
  | 'unknown';

export class StorageFailure extends Error {
  override readonly name = 'StorageFailure';
  readonly reason: FailureReason;
  constructor(reason: FailureReason, options?: ErrorOptions) {
    super(`storage: ${reason}`, options);
    this.reason = reason;
  }
}

const REASONS: Readonly<Record<string, FailureReason>> = {
  QuotaExceededError: 'full',
  VersionError: 'newer',
  ConstraintError: 'taken',
  SecurityError: 'none',
  InvalidStateError: 'lost',
  AbortError: 'lost',
  UnknownError: 'lost',
};

/** Any error of the store as a StorageFailure. */
export const asFailure = (error: unknown): StorageFailure => {
  if (error instanceof StorageFailure) return error;
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return new StorageFailure(REASONS[name] ?? 'unknown', { cause: error });
};

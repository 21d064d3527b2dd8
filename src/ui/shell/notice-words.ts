import type { Act, Cause } from '../../app/failure.ts';

export const noticeWords = {
  dismiss: 'Close',
  inMemory: 'This browser keeps nothing: what you enter is lost when you close it. Export before you do.',
  export: 'Export',
  waiting: 'Reading your log takes longer than it should. Trying again.',
  stuck: 'Your log cannot be read.',
  reload: 'Reload',
  rescue: 'Save a copy of everything',
} as const;

/** What was not done. */
export const failureActs: Readonly<Record<Act, string>> = {
  box: 'Not saved: box.',
  rig: 'Not saved: lathe and jig.',
  procedure: 'Not saved: procedure.',
  instrument: 'Not saved: caliper.',
  wood: 'Not saved: wood.',
  experiment: 'Not saved: test of a step.',
  bore: 'Not saved: bore.',
  tenon: 'Not saved: tenon.',
  'set-up': 'Set-up not started.',
  step: 'Not saved: set-up step.',
  pass: 'Not saved: pass.',
  trial: 'Not saved: trial fit.',
  seat: 'Not saved: seating.',
  close: 'Not saved: finished record.',
  later: 'Not saved: later check.',
  photo: 'Not saved: photo.',
  draft: 'Not saved: what you are typing.',
  settings: 'Not saved: settings.',
  log: 'Not saved: which log is shown.',
  demo: 'Sample workshop not opened or closed.',
  backup: 'Backup not made.',
  table: 'Table not made.',
  import: 'Backup not imported.',
};

/** Why, and what to do about it. */
export const failureCauses: Readonly<Record<Cause, string>> = {
  full: 'This phone has no room left. Free some space, then try again.',
  blocked: 'Another tab holds an older version. Close the other tab, then try again.',
  newer: 'A newer version of the app wrote this log. Close all its tabs and open it again.',
  none: 'This browser stores nothing here (a private window?). What you enter is lost when it closes.',
  lost: 'The storage did not answer. Try again; if that does not help, close and reopen the app.',
  taken: 'Another tab got there first. Check what it shows, then repeat if needed.',
  'list-full': 'It holds as many entries as a log can keep. Remove one, then try again.',
  unknown: 'The storage refused. Try again; if that does not help, export your log under Shop.',
  'no-connection': 'It needs a connection the first time.',
};

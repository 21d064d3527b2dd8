import type { Failure } from '../../app/failure.ts';

export const shellWords = {
  places: { bench: 'Bench', boxes: 'Boxes', woods: 'Woods', findings: 'Findings', shop: 'Shop' },
  placesLabel: 'Places',
  demo: 'Saltmarsh Turners: an invented log, to look round in. Your own is untouched.',
  leaveDemo: 'Leave it',
  update: 'A new version is ready.',
  takeUpdate: 'Take it now',
  noSuchPlace: 'There is nothing at this address.',
  partMissing: 'This part of the app could not be loaded. Your log is safe.',
  tryAgain: 'Try again',
  dismiss: 'Close',
} as const;

export const failureWords: Readonly<Record<Failure, string>> = {
  full: 'Not saved: this phone has no room left. Free some space, then do it again.',
  blocked: 'Not saved: another tab holds an older version. Close the other tab, then do it again.',
  newer: 'Not saved: a newer version of the app wrote this log. Close all its tabs and open it again.',
  none: 'This browser keeps nothing here (a private window?). What you enter is lost when it closes.',
  lost: 'Not saved: the store did not answer. Do it again; if it keeps on, close and reopen the app.',
  taken: 'Not saved: another tab got there first. Look again, then repeat it if it is still wanted.',
  unknown: 'Not saved: the store refused. Do it again; if it keeps on, export your log under Shop.',
  'no-demo': 'The sample workshop needs a connection the first time.',
};

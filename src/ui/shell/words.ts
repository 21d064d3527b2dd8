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
  trouble: 'Something was not saved or not read. Close the app and open it again.',
} as const;

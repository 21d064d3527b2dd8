import type { BackupRefusal } from '../../storage/backup/format.ts';

/** Why a backup was refused. */
export const backupRefusalWords = (refusal: BackupRefusal): string => {
  switch (refusal.why) {
    case 'not-a-backup':
      return 'This is not a Lidwright backup.';
    case 'newer-format':
      return 'A newer version of the app made this backup. Update the app, then try again.';
    case 'too-big':
      return 'This file is larger than any backup could be.';
    case 'entry-missing':
      return `A part is missing from it: ${refusal.entry}.`;
    case 'entry-damaged':
      return `A part of it is damaged: ${refusal.entry}.`;
    case 'misfit':
      return `In ${refusal.entry}, ${refusal.at}${refusal.which === null ? '' : ` (${refusal.which})`}: ${refusal.expected} was expected, ${refusal.found} found.`;
    case 'contradicts':
      return `It says otherwise than this phone about a ${refusal.what} that never changes (${refusal.id}).`;
  }
};

export const shopWords = {
  title: 'Shop',
  back: 'Shop',
  pages: {
    rig: { name: 'Rig', about: 'Your lathe, jig, cutter and dial' },
    procedures: { name: 'Procedures', about: 'The set-up checklists; copy one and make it yours' },
    reading: { name: 'Reading', about: 'Units, distance, day and night, sound, keys' },
    backups: { name: 'Backups and data', about: 'Export, import, space used, the demo' },
    safety: { name: 'Safety', about: 'Read it once a year' },
    sources: { name: 'Sources', about: 'Where every figure comes from' },
  },
  reading: {
    title: 'Reading',
    unit: 'Units',
    units: { in: 'Inches', mm: 'Millimetres' },
    unitHint:
      'Any field takes the other unit too: type it, as in “2 in” or “50 mm”. What you typed is kept as typed.',
    distance: (cm: number) => `The phone stands ${cm} cm away`,
    sample: 'Lock the post.',
    reach: (cm: number) => `This glass, held this way, is too small for more: its type carries ${cm} cm.`,
    sampleSmall: 'At small screens or long distances the drawing shrinks, then hides.',
    look: 'Day or night',
    looks: { auto: 'As the phone', day: 'Day', night: 'Night' },
    sound: 'A click on each tick',
    vibration: 'A short buzz on each tick',
    speech: 'Speak each step',
    letters: 'Letter keys in the set-up: f fail, s skip, m moved, backspace undo',
    clock: 'Show the clock in the set-up',
    card: 'Hold a bank card to the glass',
    cardHow:
      'Slide until the dashed line is as long as the card’s long side (85.60 mm). Then letters are the right size on this glass.',
    cardUse: 'This is the length of the card',
    cardForget: 'Forget it, assume a usual phone',
  },
  backups: {
    title: 'Backups and data',
    where:
      'Your log lives in this browser on this phone, and nowhere else. Nothing is sent anywhere. Clearing the browser’s data, or on some phones not opening the app for weeks, can remove it. An app on the home screen is safer; a backup is safe.',
    last: (age: string) => `Last backup: ${age} ago.`,
    never: 'No backup yet.',
    make: 'Make a backup',
    making: 'Making it…',
    share: 'Share or save it',
    ready: (name: string, size: string) => `${name}, ${size}: ready.`,
    unreadable: (why: string) =>
      `The backup was made, but an import would refuse it, so it is not offered. ${why} Correct that entry, then try again. Until then you can`,
    rescue: 'save a copy of everything as it is stored.',
    csv: 'Boxes as a table (CSV)',
    import: 'Import a backup',
    importNow: 'Take this in',
    importLeave: 'Leave it',
    refused: (why: string) => `${why} Refused whole; nothing was changed.`,
    before: 'This very file was taken in before.',
    madeAt: (when: string) => `Made ${when}.`,
    summary: (fresh: number, changed: number, same: number) =>
      `${fresh} new, ${changed} that differ (the later version stays, the other is kept 30 days), ${same} already here.`,
    imported: 'Taken in.',
    space: (used: string, quota: string) => `${used} used of about ${quota} that the browser allows.`,
    keeping: {
      promised: 'The browser has promised to keep it.',
      'not-promised': 'The browser has not promised to keep it.',
      absent: 'This browser makes no promise to keep it.',
    },
    ask: 'Ask it to',
    offline: {
      ready: 'Ready to start without a network.',
      absent:
        'This browser cannot start the app without a network (not a secure address, or a private window).',
      failed: 'The app could not be stored for use without a network. Open it once more with a connection.',
    },
    demo: 'The demo',
    demoAbout:
      'Saltmarsh Turners is an invented workshop with about 120 boxes. Its log stands beside yours and never mixes with it.',
    demoOpen: 'Open the demo',
    demoLeave: 'Remove the demo',
    replaced: 'Replaced versions',
    replacedNone: 'None in the last 30 days.',
    restore: 'Bring back',
    replacedRow: (what: string, when: string) => `${what}, replaced ${when}`,
  },
} as const;

import type { PhotoKept } from '../../app/photos.ts';
import type { PhotoRef } from '../../domain/box/records.ts';

const ofWord: Readonly<Record<PhotoRef['of'], string>> = {
  'set-up': 'the set-up',
  recess: 'the recess',
  tenon: 'the tenon',
  fit: 'the fit',
  box: 'the box',
};

export const photoWords = {
  photos: 'Photos',
  camera: 'Take a photo',
  library: 'Choose a photo',
  working: 'Keeping the photo…',
  close: 'Close',
  remove: 'Remove this photo',
  removed: 'Photo removed.',
  putBack: 'Bring it back',
  missing: 'This photo is not on this phone.',
  alt: (of: PhotoRef['of'], number: number, count: number) => `Photo ${number} of ${count}, of ${ofWord[of]}`,
  open: (alt: string) => `Look at it: ${alt}`,
} as const;

/** Why a photo was not kept. The store's own refusals are shown by the shell. */
export const photoProblem: Readonly<Record<Exclude<PhotoKept, 'kept' | 'not-saved'>, string>> = {
  'not-a-picture':
    'This file is not a picture that the phone can read. No photo was added; the record is as it was.',
  'too-big': 'This picture is too big for this phone. No photo was added; the record is as it was.',
  'no-worker': 'This browser cannot make photos smaller, so none was added. The record is as it was.',
};

import type { PhotoRef } from '../domain/box/records.ts';
import { withItem, withoutItem } from '../domain/box/with-item.ts';
import { newId } from '../platform/ids.ts';
import { shrinkPhoto } from '../platform/photo.ts';
import { getPhoto, getThumbnail } from '../storage/photos.ts';
import { changeBox } from './boxes.ts';
import { logId } from './session.ts';

/** Why a picture could not be made small enough to keep. */
type PhotoProblem = Extract<Awaited<ReturnType<typeof shrinkPhoto>>, { readonly ok: false }>['error'];

/** How a picked file ended: in the log, refused for what it is, or refused by the store (which the shell shows). */
export type PhotoKept = 'kept' | 'not-saved' | PhotoProblem;

/** Shrinks a picture and keeps it; its bytes and the box that shows it are on disk together or not at all. */
export const keepPhoto = async (boxId: string, of: PhotoRef['of'], file: Blob): Promise<PhotoKept> => {
  const shrunk = await shrinkPhoto(file);
  if (!shrunk.ok) return shrunk.error;
  const { thumbnail, ...full } = shrunk.value;
  const at = { logId: logId.value, id: newId() };
  const ref: PhotoRef = { id: at.id, at: Date.now(), of };
  const saved = await changeBox(boxId, (box) => ({ ...box, photos: withItem(box.photos, ref) }), 'photo', {
    photo: { full: { ...at, ...full }, thumbnail: { ...at, type: full.type, bytes: thumbnail } },
  });
  return saved ? 'kept' : 'not-saved';
};

/** Takes a photo off a box; the box with it stays among the replaced versions. Durable when it resolves to true. */
export const removePhoto = (boxId: string, id: string): Promise<boolean> =>
  changeBox(boxId, (box) => ({ ...box, photos: withoutItem(box.photos, id) }), 'photo', {
    keepReplaced: true,
  });

/** Puts a photo just removed back among the others, which stand in order of time. Durable when it resolves to true. */
export const putPhotoBack = (boxId: string, photo: PhotoRef): Promise<boolean> =>
  changeBox(
    boxId,
    (box) => ({ ...box, photos: withItem(box.photos, photo).toSorted((a, b) => a.at - b.at) }),
    'photo',
  );

/** The picture itself, or nothing when its bytes are not on this device. */
export const pictureOf = async (id: string, size: 'thumbnail' | 'full'): Promise<Blob | null> => {
  const found = await (size === 'full' ? getPhoto(logId.value, id) : getThumbnail(logId.value, id));
  return found ? new Blob([found.bytes], { type: found.type }) : null;
};

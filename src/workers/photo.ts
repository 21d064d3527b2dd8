// Shrinks one photo per message. In a worker, because a page that draws nothing may delay a canvas for a second.
import { sha256 } from '../domain/sha256.ts';
import type { PhotoAnswer, PhotoProblem, ShrunkPhoto } from './photo-message.ts';

declare const self: DedicatedWorkerGlobalScope;

const LONGEST_SIDE = 2048;
const LONGEST_SIDE_OF_THUMBNAIL = 320;
const QUALITY = 0.85;
const MOST_BYTES = 60 * 1024 * 1024;

/** Turns the picture upright. Browsers without the option do that by themselves. */
const decode = async (file: Blob): Promise<ImageBitmap> => {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch (error) {
    if (error instanceof TypeError) return createImageBitmap(file);
    throw error;
  }
};

/** Draws the picture again and encodes it, so that nothing but its pixels is stored: no place, no camera. */
const draw = async (picture: ImageBitmap, longestSide: number) => {
  const scale = Math.min(1, longestSide / Math.max(picture.width, picture.height));
  const width = Math.max(1, Math.round(picture.width * scale));
  const height = Math.max(1, Math.round(picture.height * scale));
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { alpha: false });
  if (!context) throw new RangeError('no canvas of this size');
  context.fillStyle = 'white';
  context.fillRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(picture, 0, 0, width, height);
  const jpeg = await canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY });
  return { width, height, bytes: await jpeg.arrayBuffer() };
};

const shrink = async (file: Blob): Promise<PhotoAnswer> => {
  const refused = (error: PhotoProblem): PhotoAnswer => ({ ok: false, error });
  if (file.size > MOST_BYTES) return refused('too-big');
  let picture: ImageBitmap;
  try {
    picture = await decode(file);
  } catch {
    return refused('not-a-picture');
  }
  try {
    const full = await draw(picture, LONGEST_SIDE);
    const thumbnail = await draw(picture, LONGEST_SIDE_OF_THUMBNAIL);
    const value: ShrunkPhoto = {
      type: 'image/jpeg',
      ...full,
      sha256: sha256(full.bytes),
      thumbnail: thumbnail.bytes,
    };
    return { ok: true, value };
  } catch {
    return refused('too-big');
  } finally {
    picture.close();
  }
};

self.addEventListener('message', async (event: MessageEvent<Blob>) => {
  const answer = await shrink(event.data);
  self.postMessage(answer, answer.ok ? [answer.value.bytes, answer.value.thumbnail] : []);
});

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { PhotoAnswer } from '../../src/workers/photo-message.ts';
import { DIST } from '../tools/serve.mjs';

/** The built photo worker, as the app loads it, relative to the app. */
export const photoWorker = (): string => {
  const found = readdirSync(join(DIST, 'assets')).filter(
    (name) =>
      name.endsWith('.js') && readFileSync(join(DIST, 'assets', name), 'utf8').includes('convertToBlob'),
  );
  expect(found).toHaveLength(1);
  return `assets/${found[0]}`;
};

/** These run in the page: they use nothing from outside themselves. */

/** Hands a file (base64) to the worker; bytes come back as base64. */
export const shrinkInPage = async (worker: string, file: string) => {
  const bytes = Uint8Array.from(atob(file), (c) => c.charCodeAt(0));
  const running = new Worker(worker, { type: 'module' });
  const data = await new Promise<PhotoAnswer>((resolve, reject) => {
    running.onmessage = (event) => resolve(event.data);
    running.onerror = reject;
    running.postMessage(new Blob([bytes]));
  });
  running.terminate();
  const text = (buffer: ArrayBuffer) =>
    btoa(Array.from(new Uint8Array(buffer), (byte) => String.fromCharCode(byte)).join(''));
  return data.ok
    ? { ...data.value, bytes: text(data.value.bytes), thumbnail: text(data.value.thumbnail) }
    : { refused: data.error };
};

/** A JPEG (base64) whose left half is red and whose right half is blue. */
export const redAndBlueInPage = (width: number, height: number): string => {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  context.fillStyle = 'red';
  context.fillRect(0, 0, width / 2, height);
  context.fillStyle = 'blue';
  context.fillRect(width / 2, 0, width / 2, height);
  return canvas.toDataURL('image/jpeg', 0.95).split(',')[1] ?? '';
};

/** Size of a JPEG (base64), and its colour a quarter down from the top and a quarter up from the bottom. */
export const lookInPage = async (jpeg: string) => {
  const bytes = Uint8Array.from(atob(jpeg), (c) => c.charCodeAt(0));
  const picture = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
  const canvas = document.createElement('canvas');
  canvas.width = picture.width;
  canvas.height = picture.height;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  context.drawImage(picture, 0, 0);
  const name = (y: number) => {
    const [r = 0, , b = 0] = context.getImageData(picture.width / 2, y, 1, 1).data;
    return r > b ? 'red' : 'blue';
  };
  return {
    width: picture.width,
    height: picture.height,
    top: name(picture.height / 4),
    bottom: name((picture.height * 3) / 4),
  };
};

import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { PhotoAnswer } from '../../src/workers/photo-message.ts';
import { openPhone } from '../tools/browser.mjs';
import { DIST, serve } from '../tools/serve.mjs';
import { CAMERA, withExif } from './exif-jpeg.ts';

/** The built worker, as the app loads it. */
const workerFile = (): string => {
  const found = readdirSync(join(DIST, 'assets')).filter(
    (name) =>
      name.endsWith('.js') && readFileSync(join(DIST, 'assets', name), 'utf8').includes('convertToBlob'),
  );
  expect(found).toHaveLength(1);
  return `assets/${found[0]}`;
};

const answerTo = (page: Page, file: Buffer) =>
  page.evaluate(
    async ([url, base64]) => {
      const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
      const worker = new Worker(url, { type: 'module' });
      const data = await new Promise<PhotoAnswer>((resolve, reject) => {
        worker.onmessage = (event) => resolve(event.data);
        worker.onerror = reject;
        worker.postMessage(new Blob([bytes]));
      });
      worker.terminate();
      const text = (buffer: ArrayBuffer) =>
        btoa(Array.from(new Uint8Array(buffer), (byte) => String.fromCharCode(byte)).join(''));
      return data.ok
        ? { ...data.value, bytes: text(data.value.bytes), thumbnail: text(data.value.thumbnail) }
        : { refused: data.error };
    },
    [workerFile(), file.toString('base64')] as const,
  );

const shrink = async (page: Page, file: Buffer) => {
  const answer = await answerTo(page, file);
  if ('refused' in answer) throw new Error(answer.refused);
  return answer;
};

/** A JPEG whose left half is red and whose right half is blue. */
const redAndBlue = async (page: Page, width: number, height: number): Promise<Buffer> =>
  Buffer.from(
    await page.evaluate(
      ([w, h]) => {
        const canvas = document.createElement('canvas');
        canvas.width = w;
        canvas.height = h;
        const context = canvas.getContext('2d');
        if (!context) throw new Error('no canvas');
        context.fillStyle = 'red';
        context.fillRect(0, 0, w / 2, h);
        context.fillStyle = 'blue';
        context.fillRect(w / 2, 0, w / 2, h);
        return canvas.toDataURL('image/jpeg', 0.95).split(',')[1] ?? '';
      },
      [width, height] as const,
    ),
    'base64',
  );

/** Size, and the colour a quarter down from the top and a quarter up from the bottom, without applying any orientation. */
const look = (page: Page, base64: string) =>
  page.evaluate(async (text) => {
    const bytes = Uint8Array.from(atob(text), (c) => c.charCodeAt(0));
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
  }, base64);

let server: Awaited<ReturnType<typeof serve>>;
let phone: Awaited<ReturnType<typeof openPhone>>;
beforeAll(async () => {
  server = await serve({ port: 5327 });
  phone = await openPhone();
  await phone.page.goto(server.url);
});
afterAll(async () => {
  await phone.context.close();
  await server.stop();
});

test('a photo is stored upright, without metadata, with its own hash, and no larger than asked', async () => {
  const { page } = phone;
  const taken = withExif(await redAndBlue(page, 3000, 1500), 6);
  expect(taken.includes(CAMERA)).toBe(true);
  const kept = await shrink(page, taken);
  expect(kept).toMatchObject({ width: 1024, height: 2048 });
  const bytes = Buffer.from(kept.bytes, 'base64');
  expect(bytes.subarray(0, 3)).toEqual(Buffer.from([0xff, 0xd8, 0xff]));
  for (const trace of ['Exif', CAMERA, 'http://ns.adobe.com'])
    expect(bytes.includes(trace), trace).toBe(false);
  expect(kept.sha256).toBe(createHash('sha256').update(bytes).digest('hex'));
  expect(await look(page, kept.bytes)).toEqual({ width: 1024, height: 2048, top: 'red', bottom: 'blue' });
  expect(await look(page, kept.thumbnail)).toEqual({ width: 160, height: 320, top: 'red', bottom: 'blue' });
});

test('a small photo is not blown up, and upside down is turned round', async () => {
  const { page } = phone;
  const turned = await shrink(page, withExif(await redAndBlue(page, 200, 100), 8));
  expect(turned).toMatchObject({ width: 100, height: 200 });
  expect(await look(page, turned.bytes)).toMatchObject({ top: 'blue', bottom: 'red' });
});

test('what is no picture, or half a picture, is refused with a reason', async () => {
  const { page } = phone;
  const whole = await redAndBlue(page, 400, 200);
  const files = {
    words: Buffer.from('not a picture'),
    nothing: Buffer.alloc(0),
    head: whole.subarray(0, 100),
    half: whole.subarray(0, whole.length / 2),
  };
  for (const [name, file] of Object.entries(files))
    expect(await answerTo(page, file), name).toEqual({ refused: 'not-a-picture' });
});

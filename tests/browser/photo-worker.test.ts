import { createHash } from 'node:crypto';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openPhone } from '../tools/browser.mjs';
import { serve } from '../tools/serve.mjs';
import { CAMERA, withExif } from './exif-jpeg.ts';
import { callInPage } from './page-state.ts';
import { lookInPage, photoWorker, redAndBlueInPage, shrinkInPage } from './photo-in-page.ts';

const shrink = async (page: Page, file: Buffer) => {
  const answer = await answerTo(page, file);
  if ('refused' in answer) throw new Error(answer.refused);
  return answer;
};
const answerTo = (page: Page, file: Buffer) =>
  callInPage(page, shrinkInPage, photoWorker(), file.toString('base64'));
const redAndBlue = async (page: Page, width: number, height: number) =>
  Buffer.from(await callInPage(page, redAndBlueInPage, width, height), 'base64');
const look = (page: Page, jpeg: string) => callInPage(page, lookInPage, jpeg);

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

import { expect, test } from 'vitest';
import { freshProfile } from '../../tools/browser.mjs';
import { serve } from '../../tools/serve.mjs';
import { startWebkit } from '../../tools/webkit.mjs';
import { CAMERA, withExif } from '../exif-jpeg.ts';
import { lookInPage, photoWorker, redAndBlueInPage, shrinkInPage } from '../photo-in-page.ts';

const button = (name: string) => `//button[normalize-space()="${name}"]`;
const field = (label: string) => `//input[@id=//label[normalize-space()="${label}"]/@for]`;
const atStep = (step: string) => document.querySelector(`main[data-step="${step}"]`) !== null;
const hasHeading = (name: string) =>
  [...document.querySelectorAll('h1')].some((heading) => heading.textContent === name);

test('WebKit: plan, set up, a photo; a second start with the server dead finds all of it', async () => {
  const server = await serve({ port: 5338 });
  const webkit = await startWebkit({ port: 5339 });
  const profile = freshProfile();
  const first = await webkit.openSession(profile);
  await first.go(server.url);
  await first.until(() => 'started' in document.documentElement.dataset);
  await first.until(async () => {
    await navigator.serviceWorker.ready;
    return navigator.serviceWorker.controller?.state === 'activated';
  });
  await first.press(button('New box'));
  await first.type(field('Opening'), '2');
  await first.type(field('Wood'), 'Boxwood');
  await first.press(button('Plan it'));
  await first.until(hasHeading, 'Box 1');
  await first.go(`${server.url}#/bench/set-up-recess`);
  await first.press(button('Start the set-up'));
  await first.until(atStep, 'isolate');
  await first.press(button('Pass'));
  await first.until(atStep, 'protect');
  const set = await first.run(() => location.href);

  const picture = await first.run(redAndBlueInPage, 300, 150);
  const taken = withExif(Buffer.from(picture, 'base64'), 6);
  const kept = await first.run(shrinkInPage, photoWorker(), taken.toString('base64'));
  expect(Buffer.from(kept.bytes, 'base64').includes(CAMERA)).toBe(false);
  expect(await first.run(lookInPage, kept.bytes)).toEqual({
    width: 150,
    height: 300,
    top: 'red',
    bottom: 'blue',
  });
  await first.close();
  await server.stop();

  const second = await webkit.openSession(profile);
  await second.go(set);
  await second.until(atStep, 'protect');
  await second.go(`${server.url}#/boxes`);
  await second.until(hasHeading, 'Boxes');
  await second.close();
});

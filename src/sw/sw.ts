import { clientsClaim } from 'workbox-core';
import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';
import { PRECACHED, ROOT_PAGE, TAKE_OVER } from './names.ts';

declare const self: ServiceWorkerGlobalScope;

// The scope root and what is listed are answered from the cache; anything else goes its own way, untouched.
precacheAndRoute(PRECACHED, { directoryIndex: ROOT_PAGE, cleanURLs: false });
cleanupOutdatedCaches();

// The very first page is taken on, so that its late parts are there offline without a reload.
clientsClaim();

// A new version waits for its turn: taking over by itself would pull the files from under an open set-up.
self.addEventListener('message', (event) => {
  if ((event.data as { type?: unknown } | null)?.type === TAKE_OVER) self.skipWaiting();
});

import { clientsClaim } from 'workbox-core';
import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';
import { PRECACHED, ROOT_PAGE, TAKE_OVER } from './names.ts';

declare const self: ServiceWorkerGlobalScope;

// The scope root and the listed files are answered from the cache; every other request goes to the network.
precacheAndRoute(PRECACHED, { directoryIndex: ROOT_PAGE, cleanURLs: false });
cleanupOutdatedCaches();

// Also controls the page that registered it, so that parts loaded later work offline without a reload.
clientsClaim();

// A new version waits until a page asks for it, because it replaces the files that an open set-up may still load.
self.addEventListener('message', (event) => {
  if ((event.data as { type?: unknown } | null)?.type === TAKE_OVER) self.skipWaiting();
});

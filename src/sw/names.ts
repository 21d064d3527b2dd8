/** Written in at build: every file of the app, with the hash of its bytes unless its name has it. */
declare const __PRECACHED__: readonly { readonly url: string; readonly revision: string | null }[];
export const PRECACHED = [...__PRECACHED__];

/** The page that stands for the scope root. */
export const ROOT_PAGE = 'index.html';

/** What a page may say to the worker; the word is workbox-window's. */
export const TAKE_OVER = 'SKIP_WAITING';

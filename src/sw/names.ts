/** Filled in by the build: every file that is stored for offline use, with the hash of its bytes unless its name has one. */
declare const __PRECACHED__: readonly { readonly url: string; readonly revision: string | null }[];
export const PRECACHED = [...__PRECACHED__];

/** The page that answers requests for the scope root. */
export const ROOT_PAGE = 'index.html';

/** The one message that the worker obeys; the text is workbox-window's. */
export const TAKE_OVER = 'SKIP_WAITING';

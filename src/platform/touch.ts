/**
 * Lets a button look pressed under the finger on iPhones too: Safari there gives :active only to a page that listens for
 * touches (from memory; not tried on one).
 */
export const showTouches = (): void => document.addEventListener('touchstart', () => {}, { passive: true });

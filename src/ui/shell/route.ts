import { signal } from '@preact/signals';

/** Where the user is: the parts of the hash after '#/'. "#/boxes/abc" is ['boxes', 'abc']. */
export const route = signal<readonly string[]>(parse(location.hash));

/** A screen that takes the whole glass, without the bar of places. */
export const isWhole = signal(false);

function parse(hash: string): readonly string[] {
  const parts = hash
    .replace(/^#\/?/, '')
    .split('/')
    .filter(Boolean)
    .map((part) => {
      try {
        return decodeURIComponent(part);
      } catch {
        return part;
      }
    });
  return parts.length > 0 ? parts : ['bench'];
}

export const hrefTo = (...parts: readonly string[]): string =>
  `#/${parts.map((part) => encodeURIComponent(part)).join('/')}`;

export const go = (...parts: readonly string[]): void => {
  location.hash = hrefTo(...parts);
};

/** The same, without leaving the present page in the history. */
export const goInstead = (...parts: readonly string[]): void => {
  location.replace(hrefTo(...parts));
};

addEventListener('hashchange', () => {
  route.value = parse(location.hash);
});

/** For a button of a set-up: a key held down says it once. */
export const onceWhileHeld = (event: KeyboardEvent): void => {
  if (event.repeat && (event.key === 'Enter' || event.key === ' ')) event.preventDefault();
};

/** Draws with the next frame, and not before; returns how to call it off. */
export const atNextFrame = (draw: () => void): (() => void) => {
  const asked = requestAnimationFrame(draw);
  return () => cancelAnimationFrame(asked);
};

/** Does what may take its time once the next frame is shown. */
export const afterNextFrame = (work: () => void): void => {
  requestAnimationFrame(() => setTimeout(work));
};

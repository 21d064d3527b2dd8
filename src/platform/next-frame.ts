/** Runs a function with the next frame. Returns a function that cancels it. */
export const atNextFrame = (draw: () => void): (() => void) => {
  const asked = requestAnimationFrame(draw);
  return () => cancelAnimationFrame(asked);
};

/** Runs a function that may be slow, after the next frame is shown. */
export const afterNextFrame = (work: () => void): void => {
  requestAnimationFrame(() => setTimeout(work));
};

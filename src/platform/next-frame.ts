/** Draws with the next frame, and not before; returns how to call it off. */
export const atNextFrame = (draw: () => void): (() => void) => {
  const asked = requestAnimationFrame(draw);
  return () => cancelAnimationFrame(asked);
};

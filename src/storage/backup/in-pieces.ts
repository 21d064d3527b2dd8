/** Items worked on at once: a frame's worth, or little more, on a phone. */
const PIECE = 500;

/** Works through a long list piece by piece, so that the page stays responsive between them. */
export const inPieces = async <T>(
  items: readonly T[],
  work: (piece: readonly T[], from: number) => Promise<unknown>,
): Promise<void> => {
  for (let from = 0; from < items.length; from += PIECE) await work(items.slice(from, from + PIECE), from);
};

/** Lets the page handle events before going on. Never inside a transaction, which would end meanwhile. */
export const aTurn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

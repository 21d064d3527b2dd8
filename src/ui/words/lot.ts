/** What the lot of a trial asks of the box on the bench. */
export const lotWords = (sentence: string, lot: 'with' | 'without'): string =>
  lot === 'with'
    ? `Trial: do “${sentence}” on this box.`
    : `Trial: leave “${sentence}” out on this box (tap Skip).`;

/** The same at the step itself. */
export const lotAtStep = { with: 'Trial: do it.', without: 'Trial: skip it.' } as const;

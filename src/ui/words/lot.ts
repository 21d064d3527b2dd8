/** What the lot of an experiment asks of the box on the bench. */
export const lotWords = (sentence: string, lot: 'with' | 'without'): string =>
  lot === 'with' ? `Test: do “${sentence}” on this box.` : `Test: skip “${sentence}” on this box.`;

/** The same at the step itself. */
export const lotAtStep = { with: 'Test: do it.', without: 'Test: skip it.' } as const;

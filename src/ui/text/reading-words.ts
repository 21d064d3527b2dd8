export const readingWords = {
  turns: 'Turns to the stop',
  turnsHint: '3 1/2, or 3.5',
  gap: { gap: 'Thickest that goes in', over: 'Over a length of' },
  sweep: { gap: 'Difference in a sweep', over: 'Length of the arm' },
  keep: 'Keep it',
  without: 'Without',
} as const;

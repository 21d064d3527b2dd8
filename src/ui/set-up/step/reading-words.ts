/** One thickness at hand by the lathe. `key` is what the button shows, `text` what is kept and said. */
interface Gauge {
  readonly key: string;
  readonly text: string;
}

/** Copy paper and a bank card (ISO/IEC 7810 ID-1: 0.76 mm) lie in every shop; the rest is a feeler set. Common practice, no source. */
export const GAUGES: Readonly<Record<'in' | 'mm', readonly Gauge[]>> = {
  mm: [
    { key: 'none', text: '0 mm' },
    { key: 'paper', text: '0.10 mm' },
    { key: 'card', text: '0.76 mm' },
    ...['0.05', '0.15', '0.20', '0.30', '0.40', '0.50'].map((size) => ({ key: size, text: `${size} mm` })),
  ],
  in: [
    { key: 'none', text: '0 in' },
    { key: 'paper', text: '0.004 in' },
    { key: 'card', text: '0.030 in' },
    ...['2', '6', '8', '10', '15', '20'].map((thou) => ({ key: thou, text: `${thou} thou` })),
  ],
};

export const readingWords = {
  turns: 'Turns to the stop',
  turnsHint: '3 1/2, or 3.5',
  turnsOf: (count: string) => `${count} turns`,
  gap: { gap: 'Or type it', over: 'Over a length of' },
  sweep: { gap: 'Difference in a sweep', over: 'Length of the arm' },
  thickest: { in: 'Just goes in, thou', mm: 'Just goes in, mm' },
  gauge: (key: string, text: string) =>
    key === 'none' ? 'none: nothing goes in' : key === 'paper' || key === 'card' ? `${key}, ${text}` : text,
  keep: 'Keep it',
  without: 'Without',
  other: 'Other',
} as const;

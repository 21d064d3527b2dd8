import type { Span } from '../../domain/setup/time.ts';

/** 4:12, or 1:04:12 past the hour. */
export const clockWords = (ms: number): string => {
  const seconds = Math.max(0, Math.floor(ms / 1000));
  const [h, m, s] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60];
  const two = (n: number) => String(n).padStart(2, '0');
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
};

/** A span in words: exact, between two bounds, or not known. */
export const spanWords = (span: Span): string => {
  if (span.exact) return clockWords(span.max);
  return span.max <= 0 ? 'not known' : `between ${clockWords(span.min)} and ${clockWords(span.max)}`;
};

/** 10:42, in the phone's own way of writing a time of day. */
export const timeOfDay = (at: number): string =>
  new Intl.DateTimeFormat(undefined, { hour: 'numeric', minute: '2-digit' }).format(at);

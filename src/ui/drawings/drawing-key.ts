/** The drawings of the set-up steps. A procedure's step names the one it wants; a key never changes once used. */
export const DRAWING_KEYS = [
  'isolate',
  'protect',
  'board',
  'cone',
  'square-banjo',
  'lock-post',
  'gap',
  'seat-chuck',
  'cutter',
  'banjo-back',
  'shake',
  'pick-up',
  'touch-off',
  'dry-run',
  'clear',
  'bar-grip',
  'bar-lock',
  'bar-slide',
  'power-on',
  'cranking',
] as const;

export type DrawingKey = (typeof DRAWING_KEYS)[number];

export const isDrawingKey = (key: string): key is DrawingKey =>
  (DRAWING_KEYS as readonly string[]).includes(key);

/** What may be wrong with a joint. Lean of a jig that stays put makes no taper, so it is no cause of dragging more each turn. */
export type Cause =
  | 'flanks-tight'
  | 'flanks-loose'
  | 'crests-rub'
  | 'fuzz-or-chips'
  | 'finish-film'
  | 'tapered-bore'
  | 'tapered-tenon'
  | 'gives-under-load'
  | 'creep'
  | 'lean-mismatch'
  | 'bottoming'
  | 'shallow-relief'
  | 'last-thread-run-out'
  | 'dent-or-burr'
  | 'eccentric'
  | 'spindle-float'
  | 'rechuck-tilt'
  | 'shoulder-not-flat'
  | 'shoulder-struck'
  | 'oval-wood'
  | 'wall-squeezed'
  | 'slipped'
  | 'low-engagement'
  | 'no-lead-in'
  | 'cross-started'
  | 'weak-wood'
  | 'hot-cut';

/** What to do about it, in the order of the bench: what costs least and cannot spoil the piece comes first. */
export const benchOrder = [
  'measure-again',
  'brush-out',
  'find-dent',
  'start-backwards',
  'on-and-off-by-hand',
  'wax',
  'slacken-jaws',
  'line-up-grain',
  'chamfer-start',
  'same-setting-again',
  'check-parallel',
  'check-give',
  'check-creep',
  'check-chuck-seat',
  'check-spindle-float',
  'check-lean',
  'trim-last-thread',
  'deepen-relief',
  'clear-floor',
  'ease-crests',
  'face-shoulder',
  'rub-flanks',
  'pick-up-first',
  'deepen',
  'harden-and-recut',
  'slower-or-sharper',
  'new-tenon',
] as const;
export type RemedyKey = (typeof benchOrder)[number];

/** Remedies that open tight flanks, mildest first. */
const easing = ['brush-out', 'on-and-off-by-hand', 'wax', 'same-setting-again'] as const;

/** What is worth doing against each cause. */
export const remediesAgainst: Readonly<Record<Cause, readonly RemedyKey[]>> = {
  'flanks-tight': [...easing, 'deepen'],
  'flanks-loose': ['new-tenon'],
  'crests-rub': ['brush-out', 'ease-crests', 'wax'],
  'fuzz-or-chips': [...easing],
  'finish-film': ['on-and-off-by-hand', 'wax', 'rub-flanks'],
  'tapered-bore': ['brush-out', 'wax', 'check-parallel', 'ease-crests'],
  'tapered-tenon': ['brush-out', 'wax', 'check-parallel', 'ease-crests'],
  'gives-under-load': ['same-setting-again', 'check-give', 'deepen'],
  creep: ['check-creep', 'pick-up-first', 'deepen'],
  'lean-mismatch': ['check-lean', 'deepen'],
  bottoming: ['brush-out', 'clear-floor'],
  'shallow-relief': ['brush-out', 'deepen-relief'],
  'last-thread-run-out': ['trim-last-thread'],
  'dent-or-burr': ['brush-out', 'find-dent'],
  eccentric: ['check-chuck-seat', 'ease-crests'],
  'spindle-float': ['check-spindle-float', 'deepen'],
  'rechuck-tilt': ['check-chuck-seat', 'face-shoulder'],
  'shoulder-not-flat': ['face-shoulder'],
  'shoulder-struck': ['face-shoulder'],
  'oval-wood': ['line-up-grain', 'wax', 'deepen'],
  'wall-squeezed': ['slacken-jaws', 'same-setting-again'],
  slipped: ['pick-up-first', 'new-tenon'],
  'low-engagement': ['new-tenon'],
  'no-lead-in': ['brush-out', 'chamfer-start'],
  'cross-started': ['brush-out', 'start-backwards', 'chamfer-start'],
  'weak-wood': ['harden-and-recut', 'slower-or-sharper'],
  'hot-cut': ['slower-or-sharper'],
};

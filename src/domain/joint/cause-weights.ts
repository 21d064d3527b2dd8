import type { Cause } from './advice-table.ts';
import type { Evidence } from './trial-evidence.ts';

interface Weighing {
  /** How readily one thinks of it before anything is told. */
  readonly prior: number;
  /** Weight for (above nothing) or against (below); about 1 hints, 2 points, 3 all but settles. */
  readonly weights: Readonly<Partial<Record<Evidence, number>>>;
}

/** Told of a lid that runs loose: what contradicts a cause of tightness. */
const runsLoose = { 'rattles-sideways': -3, 'end-play': -2, free: -3, 'play-large': -2 } as const;
/** Told of a lid that is tight: what contradicts a cause of looseness. */
const runsTight = {
  'stiff-all-the-way': -3,
  'drags-more-each-turn': -3,
  'stops-dead': -1,
  'will-not-start': -2,
  'play-none': -2,
} as const;

/** How evidence weighs for each cause. Weights are judgement from the mechanism of each cause, not counted from boxes. */
export const weighings: Readonly<Record<Cause, Weighing>> = {
  'flanks-tight': {
    prior: 0.5,
    weights: {
      ...runsLoose,
      'stiff-all-the-way': 2,
      'drags-more-each-turn': 1.5,
      'will-not-start': 0.7,
      'marks-on-flank': 1.5,
      'marks-on-crest': -1.5,
      'marks-at-all-along': 0.5,
      'play-none': 1.5,
      'play-right': -1.5,
      'sizes-flanks-tight': 2.5,
      'sizes-flanks-right': -1.5,
      'sizes-flanks-loose': -2.5,
      'stops-dead': -0.5,
      'tight-once-a-turn': -1,
      'tight-twice-a-turn': -1,
      'tight-four-times-a-turn': -1,
      'deepening-gained-nothing': -2,
      'after-finish': -0.5,
    },
  },
  'flanks-loose': {
    prior: 0,
    weights: {
      ...runsTight,
      'rattles-sideways': 2,
      'end-play': 2,
      'play-large': 2,
      'play-right': -1.5,
      'sizes-flanks-loose': 2,
      'sizes-flanks-right': -1,
      'sizes-flanks-tight': -2,
    },
  },
  'crests-rub': {
    prior: 0,
    weights: {
      ...runsLoose,
      'end-play': 0,
      'marks-on-crest': 2.5,
      'marks-on-flank': -2,
      'stiff-all-the-way': 0.7,
      'drags-more-each-turn': 0.7,
      'will-not-start': 0.7,
      'sizes-crests-cross': 3,
      'sizes-crests-clear': -2,
      'play-right': 1,
      'deepening-gained-nothing': 1,
    },
  },
  'fuzz-or-chips': {
    prior: 0.2,
    weights: {
      ...runsLoose,
      gritty: 1.8,
      furry: 2,
      chipped: 0.5,
      torn: 0.5,
      'stiff-all-the-way': 0.6,
      'drags-more-each-turn': 0.2,
      'sizes-flanks-right': 0.5,
    },
  },
  'finish-film': {
    prior: -3,
    weights: {
      ...runsLoose,
      'after-finish': 4,
      'stiff-all-the-way': 1.5,
      'drags-more-each-turn': 1,
      'play-none': 0.5,
      'sizes-flanks-right': 0.8,
      'marks-on-flank': 0.5,
    },
  },
  'tapered-bore': {
    prior: 0,
    weights: {
      ...runsLoose,
      'drags-more-each-turn': 1.5,
      'bore-narrows': 2.5,
      'sizes-crests-cross': 1.5,
      'marks-on-crest': 1.5,
      'marks-on-flank': -0.5,
      'sizes-crests-clear': -1,
      'bore-parallel': -3,
      'bore-opens': -1,
      'marks-at-by-shoulder': 0.5,
      'stops-midway': 0.5,
      'will-not-start': -1,
    },
  },
  'tapered-tenon': {
    prior: 0,
    weights: {
      ...runsLoose,
      'drags-more-each-turn': 1.4,
      'tenon-thick-at-shoulder': 2.5,
      'sizes-crests-cross': 1.5,
      'marks-on-crest': 1.5,
      'marks-on-flank': -0.5,
      'sizes-crests-clear': -1,
      'tenon-parallel': -3,
      'tenon-thin-at-shoulder': -1,
      'marks-at-by-shoulder': 0.5,
      'stops-midway': 0.5,
      'will-not-start': -1,
    },
  },
  'gives-under-load': {
    prior: 0,
    weights: {
      ...runsLoose,
      'drags-more-each-turn': 1.1,
      'bore-parallel': 0.7,
      'tenon-parallel': 0.7,
      'marks-at-by-shoulder': 0.3,
    },
  },
  creep: {
    prior: 0,
    weights: {
      ...runsLoose,
      'drags-more-each-turn': 1,
      'bore-parallel': 0.5,
      'tenon-parallel': 0.5,
      'deepening-gained-nothing': 0.5,
    },
  },
  'lean-mismatch': {
    prior: -0.5,
    weights: {
      ...runsLoose,
      'drags-more-each-turn': -4,
      'stiff-all-the-way': 0.7,
      'marks-on-flank': 0.7,
      'marks-on-crest': -1,
      'sizes-flanks-right': 1.2,
      'sizes-flanks-loose': 1.2,
      'sizes-flanks-tight': -1,
      'play-none': 0.7,
    },
  },
  bottoming: {
    prior: 0,
    weights: {
      'stops-dead': 1.5,
      'gap-all-round': 1.5,
      'floor-near': 3,
      'floor-clear': -3,
      'stops-late': 0.8,
      'stops-early': -1.5,
      'drags-more-each-turn': -1,
      'marks-on-flank': -0.5,
    },
  },
  'shallow-relief': {
    prior: 0,
    weights: {
      'stops-dead': 1.3,
      'gap-all-round': 1,
      'stops-late': 1,
      'stops-early': -1.5,
      'marks-at-by-shoulder': 1.2,
      'floor-clear': 0.7,
      'floor-near': -0.5,
    },
  },
  'last-thread-run-out': {
    prior: 0,
    weights: {
      'stops-dead': 1,
      'open-one-side': 1.4,
      'stops-late': 1,
      'stops-early': -1.5,
      'marks-at-by-shoulder': 1.2,
      'floor-clear': 0.5,
    },
  },
  'dent-or-burr': {
    prior: 0.2,
    weights: {
      'tight-once-a-turn': 1.8,
      chipped: 0.8,
      gritty: 0.4,
      'marks-at-start': 0.5,
      'rattles-sideways': -1,
    },
  },
  eccentric: {
    prior: 0,
    weights: {
      'tight-once-a-turn': 1.4,
      'proud-outside': 2.2,
      'marks-on-crest': 0.8,
      'marks-on-flank': -0.5,
    },
  },
  'spindle-float': {
    prior: 0,
    weights: { 'tight-once-a-turn': 1.2, rocks: 0.7, 'open-one-side': 0.7, 'marks-on-flank': 0.4 },
  },
  'rechuck-tilt': {
    prior: 0,
    weights: { 'open-one-side': 2, rocks: 1.4, 'tight-once-a-turn': 0.5, 'proud-outside': 0.5, flush: -2 },
  },
  'shoulder-not-flat': {
    prior: 0,
    weights: { rocks: 1.7, 'open-one-side': 0.8, 'gap-all-round': -0.5, flush: -2 },
  },
  'shoulder-struck': {
    prior: 0,
    weights: { 'shoulder-hit': 3, 'gap-all-round': 0.7, 'open-one-side': 0.7, flush: -1 },
  },
  'oval-wood': {
    prior: 0,
    weights: {
      'tight-twice-a-turn': 2.5,
      'bore-oval': 2,
      'bore-round': -2,
      'tight-once-a-turn': -1,
      'tight-four-times-a-turn': -1,
    },
  },
  'wall-squeezed': {
    prior: 0,
    weights: {
      'tight-four-times-a-turn': 2.5,
      'wall-thin': 1.5,
      'wall-stout': -1.5,
      'tight-once-a-turn': -1,
      'tight-twice-a-turn': -0.5,
    },
  },
  slipped: {
    prior: 0,
    weights: { 'thin-or-double-cut': 3, 'rattles-sideways': 0.5, 'jumps-a-thread': 0.7, 'end-play': 0.7 },
  },
  'low-engagement': {
    prior: 0,
    weights: { 'jumps-a-thread': 2.5, 'sizes-engagement-low': 2.5, 'rattles-sideways': 0.7 },
  },
  'no-lead-in': {
    prior: 0,
    weights: {
      'will-not-start': 1.8,
      'marks-at-start': 1,
      'stops-early': 0.8,
      'cross-threaded': 0.5,
      'stops-late': -1.5,
      'sizes-flanks-tight': -0.5,
    },
  },
  'cross-started': {
    prior: 0,
    weights: { 'cross-threaded': 3, 'will-not-start': 0.8, 'jumps-a-thread': 0.5 },
  },
  'weak-wood': {
    prior: 0,
    weights: { torn: 2.2, chipped: 1.4, furry: 0.3 },
  },
  'hot-cut': { prior: 0, weights: { burnt: 3 } },
};

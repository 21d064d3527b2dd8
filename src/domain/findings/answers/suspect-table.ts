import type { Symptom } from '../rows/joint-row.ts';

/** What may have gone wrong with one joint. */
export type Cause =
  | 'too-tight'
  | 'too-loose'
  | 'leaning'
  | 'creep'
  | 'slipped'
  | 'chuck-not-home'
  | 'off-centre'
  | 'gone-oval'
  | 'squeezed'
  | 'bottoming'
  | 'crests-rub'
  | 'turned-tapered'
  | 'wood-crumbles'
  | 'chips-in-thread';

/** Where a row of the table comes from. */
export type Basis = 'geometry' | 'common-practice';

export interface CauseRow {
  readonly cause: Cause;
  /** How often it is behind a joint that is not right, before anything is known; the rest is "none of these". */
  readonly prior: number;
  readonly basis: Basis;
  /** Chance of each symptom under it; a symptom not named has `ELSEWHERE`. */
  readonly shows: Partial<Readonly<Record<Symptom, number>>>;
  /** Chance that marks, where any were noted, are on the crests, and that they are at the start, by the shoulder, all along. */
  readonly onCrests: number;
  readonly where: readonly [start: number, byShoulder: number, allAlong: number];
}

/** Chance of a symptom that nothing ties to the cause. */
export const ELSEWHERE = 0.02;
/** Chance of each symptom when it is none of these. */
export const UNTIED = 0.06;

const EVEN: readonly [number, number, number] = [0.33, 0.33, 0.34];

/**
 * Likelihoods are judgement, ordered by mechanics: geometry says which symptoms a cause can give, practice how often it does.
 * Common practice, no source, except where geometry is named.
 */
export const CAUSES: readonly CauseRow[] = [
  {
    cause: 'too-tight',
    prior: 0.17,
    basis: 'geometry',
    shows: {
      'stiff-all-the-way': 0.6,
      'will-not-start': 0.3,
      'drags-more-each-turn': 0.25,
      'gap-all-round': 0.15,
      burnt: 0.06,
    },
    onCrests: 0.2,
    where: [0.15, 0.1, 0.75],
  },
  {
    cause: 'too-loose',
    prior: 0.12,
    basis: 'geometry',
    shows: { 'end-play': 0.6, 'rattles-sideways': 0.5, 'jumps-a-thread': 0.12, rocks: 0.12 },
    onCrests: 0.3,
    where: EVEN,
  },
  {
    cause: 'leaning',
    prior: 0.06,
    basis: 'geometry',
    shows: {
      'stiff-all-the-way': 0.5,
      'will-not-start': 0.25,
      'drags-more-each-turn': 0.12,
      'open-one-side': 0.1,
    },
    onCrests: 0.25,
    where: [0.1, 0.1, 0.8],
  },
  {
    cause: 'creep',
    prior: 0.08,
    basis: 'geometry',
    shows: {
      'drags-more-each-turn': 0.65,
      'will-not-start': 0.12,
      'thin-or-double-cut': 0.15,
      'open-one-side': 0.1,
      'gap-all-round': 0.15,
    },
    onCrests: 0.25,
    where: [0.05, 0.8, 0.15],
  },
  {
    cause: 'slipped',
    prior: 0.07,
    basis: 'geometry',
    shows: {
      'thin-or-double-cut': 0.75,
      'end-play': 0.3,
      'jumps-a-thread': 0.15,
      chipped: 0.2,
      'rattles-sideways': 0.15,
    },
    onCrests: 0.4,
    where: EVEN,
  },
  {
    cause: 'chuck-not-home',
    prior: 0.09,
    basis: 'geometry',
    shows: { 'open-one-side': 0.7, rocks: 0.25, 'tight-once-a-turn': 0.25, 'proud-outside': 0.15 },
    onCrests: 0.5,
    where: [0.1, 0.6, 0.3],
  },
  {
    cause: 'off-centre',
    prior: 0.06,
    basis: 'geometry',
    shows: { 'tight-once-a-turn': 0.6, 'proud-outside': 0.45, 'open-one-side': 0.08 },
    onCrests: 0.8,
    where: [0.2, 0.1, 0.7],
  },
  {
    cause: 'gone-oval',
    prior: 0.06,
    basis: 'geometry',
    shows: { 'tight-twice-a-turn': 0.8, 'stiff-all-the-way': 0.1 },
    onCrests: 0.4,
    where: [0.2, 0.1, 0.7],
  },
  {
    cause: 'squeezed',
    prior: 0.03,
    basis: 'common-practice',
    shows: { 'tight-four-times-a-turn': 0.7, 'tight-twice-a-turn': 0.15 },
    onCrests: 0.4,
    where: [0.5, 0.1, 0.4],
  },
  {
    cause: 'bottoming',
    prior: 0.07,
    basis: 'geometry',
    shows: { 'stops-dead': 0.75, 'gap-all-round': 0.6, 'shoulder-hit': 0.2 },
    onCrests: 0.3,
    where: [0.05, 0.9, 0.05],
  },
  {
    cause: 'crests-rub',
    prior: 0.06,
    basis: 'geometry',
    shows: { 'stiff-all-the-way': 0.5, 'drags-more-each-turn': 0.25, burnt: 0.12, furry: 0.1 },
    onCrests: 0.9,
    where: [0.15, 0.15, 0.7],
  },
  {
    cause: 'turned-tapered',
    prior: 0.04,
    basis: 'geometry',
    shows: { 'drags-more-each-turn': 0.7, 'gap-all-round': 0.15 },
    onCrests: 0.75,
    where: [0.05, 0.8, 0.15],
  },
  {
    cause: 'wood-crumbles',
    prior: 0.09,
    basis: 'common-practice',
    shows: { chipped: 0.55, torn: 0.3, furry: 0.25, 'jumps-a-thread': 0.1, gritty: 0.1 },
    onCrests: 0.6,
    where: [0.4, 0.2, 0.4],
  },
  {
    cause: 'chips-in-thread',
    prior: 0.04,
    basis: 'common-practice',
    shows: { gritty: 0.8, 'stops-dead': 0.1, 'stiff-all-the-way': 0.1, 'cross-threaded': 0.05 },
    onCrests: 0.4,
    where: EVEN,
  },
];

import { CAUSES, type Cause } from './causes.ts';
import type { Evidence } from './diagnosis.ts';
import type { TrialEvidence } from './evidence.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import { MISSED, MOVED } from './log-factors.ts';
import { noReadings, type Readings, readingsDensity } from './readings.ts';
import { emptyStanding, standingOf } from './standing.ts';
import type { Field, SetUpLog } from './view.ts';
import { emptyChances, marksChance, WORDS, wordChances } from './words-chance.ts';

type Piece = Evidence extends infer E ? (E extends Evidence ? Omit<E, 'ratio'> : never) : never;

const READING_FIELD: Readonly<Record<keyof Readings, Field>> = {
  endPlay: 'endPlay',
  turnsOn: 'turnsOn',
  bottomGap: 'bottomGap',
  crestRecess: 'crestFlat',
  crestTenon: 'crestFlat',
  boreTaper: 'boreTaper',
  tenonTaper: 'tenonTaper',
  outOfRound: 'outOfRound',
};

/** A word left out is worth naming only where it would have been expected at least this often. */
const EXPECTED = 0.3;
const FLOOR = 1e-6;

/** For each piece of what was said at the last trial: how likely it is for each of the likely joints. */
export interface PieceChances {
  readonly piece: Piece;
  readonly chance: Float64Array;
}

export const piecesOf = (
  trial: TrialEvidence,
  joints: readonly Latent[],
  box: JointNumbers,
): readonly PieceChances[] => {
  const at = emptyStanding();
  const chances = emptyChances();
  const found: { piece: Piece; chance: Float64Array; of: (j: number) => number }[] = [];
  const add = (piece: Piece, of: (j: number) => number): void => {
    found.push({ piece, chance: new Float64Array(joints.length), of });
  };
  WORDS.forEach((word, w) => {
    const said = trial.said[w] as number;
    if (said > 0) add({ kind: 'said', word }, () => chances.of[w] as number);
    else if (said === 0) add({ kind: 'not-said', word }, () => 1 - (chances.of[w] as number));
  });
  const { marks } = trial;
  if (marks !== null) add({ kind: 'marks' }, (j) => marksChance(marks, joints[j] as Latent, at, chances));
  for (const key of Object.keys(READING_FIELD) as (keyof Readings)[]) {
    if (Number.isNaN(trial.readings[key])) continue;
    const alone = { ...noReadings, [key]: trial.readings[key] };
    add({ kind: 'reading', field: READING_FIELD[key] }, (j) =>
      readingsDensity(alone, joints[j] as Latent, box, at),
    );
  }
  joints.forEach((joint, j) => {
    standingOf(joint, box, at);
    wordChances(joint, box, at, chances);
    for (const { chance, of } of found) chance[j] = Math.max(FLOOR, of(j));
  });
  return found;
};

/**
 * Likelihood ratio of each piece for a cause against all others. The likely joints have the piece in their weights already; the harmonic
 * mean takes it out again. What the set-up log says counts by its factor.
 */
export const evidenceFor = (
  cause: Cause,
  pieces: readonly PieceChances[],
  shares: Float64Array,
  log: SetUpLog,
): readonly Evidence[] => {
  const count = CAUSES.length;
  const own = CAUSES.indexOf(cause);
  const found: Evidence[] = [];
  for (const { piece, chance } of pieces) {
    let [mine, theirs, mineInverse, theirsInverse, expected] = [0, 0, 0, 0, 0];
    for (let j = 0; j < chance.length; j++) {
      const share = shares[j * count + own] as number;
      const of = chance[j] as number;
      mine += share;
      theirs += 1 - share;
      mineInverse += share / of;
      theirsInverse += (1 - share) / of;
      expected = Math.max(expected, 1 - of);
    }
    if (mine <= 0 || theirs <= 0) continue;
    if (piece.kind === 'not-said' && expected < EXPECTED) continue;
    found.push({ ...piece, ratio: (mine / mineInverse) * (theirsInverse / theirs) } as Evidence);
  }
  for (const step of new Set(log.missed)) {
    const ratio = Object.hasOwn(MISSED, step) ? MISSED[step]?.[cause] : undefined;
    if (ratio !== undefined) found.push({ kind: 'missed', step, ratio });
  }
  for (const what of new Set(log.moved)) {
    const ratio = Object.hasOwn(MOVED, what) ? MOVED[what]?.[cause] : undefined;
    if (ratio !== undefined) found.push({ kind: 'moved', what, ratio });
  }
  return found;
};

const WORTH_SAYING = 1.25;

export const speaksFor = (of: readonly Evidence[]): readonly Evidence[] =>
  of.filter(({ ratio }) => ratio >= WORTH_SAYING).sort((a, b) => b.ratio - a.ratio);
export const speaksAgainst = (of: readonly Evidence[]): readonly Evidence[] =>
  of.filter(({ ratio }) => ratio <= 1 / WORTH_SAYING).sort((a, b) => a.ratio - b.ratio);

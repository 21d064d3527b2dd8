import { CAUSES, type Cause, causeIndex, upsetBy } from '../../../src/domain/diagnosis/causes.ts';
import { drawJoint, samplingFor } from '../../../src/domain/diagnosis/draw-joint.ts';
import { Draws } from '../../../src/domain/diagnosis/draws.ts';
import type { JointNumbers } from '../../../src/domain/diagnosis/joint-numbers.ts';
import { emptyLatent } from '../../../src/domain/diagnosis/latent.ts';
import { emptyStanding, standingOf } from '../../../src/domain/diagnosis/standing.ts';
import {
  emptyChances,
  WORD_COUNT,
  WORDS,
  type Word,
  wordChances,
} from '../../../src/domain/diagnosis/words-chance.ts';

const JOINTS = 400;

/**
 * By how much a cause makes each word likelier than everyday errors do, as a difference of chances, over joints drawn around a box's
 * numbers: what the model says a cause can show.
 */
export const symptomsOf = (cause: Cause, box: JointNumbers): Readonly<Record<Word, number>> => {
  const nothingElse = CAUSES.map((each) => (each === 'nothing-wrong' ? 1 : 0));
  const sampling = samplingFor(nothingElse, JOINTS);
  const draws = new Draws(1);
  const joint = emptyLatent();
  const at = emptyStanding();
  const chances = emptyChances();
  const lifted = new Float64Array(WORD_COUNT);
  const add = (sign: number): void => {
    standingOf(joint, box, at);
    wordChances(joint, box, at, chances);
    for (let w = 0; w < WORD_COUNT; w++)
      lifted[w] = (lifted[w] as number) + (sign * (chances.of[w] as number)) / sampling.count;
  };
  for (let number = 0; number < sampling.count; number++) {
    drawJoint(number, sampling, box, draws, joint);
    add(-1);
    upsetBy(causeIndex[cause], joint, box, draws);
    add(1);
  }
  return Object.fromEntries(WORDS.map((word, w) => [word, lifted[w]])) as Record<Word, number>;
};

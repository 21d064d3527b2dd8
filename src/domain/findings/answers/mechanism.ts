import { goingOn, seated, threads } from '../../box/trial-words.ts';
import type { Guard } from '../../setup/procedure.ts';
import type { Symptom } from '../rows/joint-row.ts';

/**
 * Whether geometry lets a missed step show as a symptom. `explains`: it can. `cannot`: it can not. `either`: it may follow
 * indirectly, so it counts neither for nor against the step.
 */
type Mechanism = 'explains' | 'either' | 'cannot';

interface Reach {
  readonly explains: readonly Symptom[];
  readonly either: readonly Symptom[];
}

/** What a stiff or stuck lid brings along without being its cause: forced threads, a shoulder that stays open. */
const FORCED: readonly Symptom[] = ['stops-dead', 'gap-all-round', 'cross-threaded', 'burnt'];

/**
 * By what a step guards against; whatever is in neither list it cannot do.
 * A constant lean or tilt leaves a perfect helix whose teeth lean: it eats play, so a lid may bind or not start; it makes no
 * taper, no stiff spot, cannot tilt a lid by itself (though it takes away the play that would let one rock flush), and does
 * not tear wood. Creep during the cut changes depth along the thread: a true taper. A depth error is size, either way. A slip
 * between passes thins the ridge: play, double threads. A chuck not home tilts the shoulder and moves the thread aside.
 */
const REACH: Readonly<Record<Guard, Reach>> = {
  lean: {
    explains: ['will-not-start', 'stiff-all-the-way'],
    either: ['drags-more-each-turn', 'open-one-side', 'rocks', 'shoulder-hit', ...FORCED],
  },
  tilt: {
    explains: ['will-not-start', 'stiff-all-the-way'],
    either: ['drags-more-each-turn', 'open-one-side', 'rocks', ...FORCED],
  },
  creep: {
    explains: ['drags-more-each-turn', 'will-not-start', 'stiff-all-the-way', 'thin-or-double-cut'],
    either: ['open-one-side', 'rocks', 'rattles-sideways', 'end-play', ...FORCED],
  },
  slip: {
    explains: ['thin-or-double-cut', 'end-play', 'rattles-sideways', 'jumps-a-thread'],
    either: ['chipped', 'gap-all-round', 'shoulder-hit', 'stops-dead', 'cross-threaded'],
  },
  'double-cut': {
    explains: ['thin-or-double-cut', 'end-play', 'rattles-sideways', 'jumps-a-thread'],
    either: ['chipped', 'cross-threaded'],
  },
  depth: {
    explains: [
      'will-not-start',
      'stiff-all-the-way',
      'drags-more-each-turn',
      'end-play',
      'rattles-sideways',
      'jumps-a-thread',
    ],
    either: ['chipped', 'rocks', ...FORCED],
  },
  'run-out': { explains: ['tight-once-a-turn', 'furry'], either: ['gritty', 'torn', 'chipped', 'burnt'] },
  'lid-not-flush': {
    explains: ['open-one-side', 'rocks', 'tight-once-a-turn'],
    either: ['drags-more-each-turn', 'proud-outside'],
  },
  'step-outside': { explains: ['proud-outside', 'tight-once-a-turn'], either: ['open-one-side', 'rocks'] },
  'shoulder-or-floor-hit': {
    explains: ['shoulder-hit', 'stops-dead'],
    either: ['gap-all-round', 'open-one-side', 'thin-or-double-cut'],
  },
  injury: { explains: [], either: [] },
  dust: { explains: [], either: [] },
};

/** What missing a step with these guards can do to a symptom; the strongest of its guards counts. */
export const mechanism = (guards: readonly Guard[], symptom: Symptom): Mechanism => {
  const reaches = guards.map((guard) => REACH[guard]);
  if (reaches.some((reach) => reach.explains.includes(symptom))) return 'explains';
  return reaches.some((reach) => reach.either.includes(symptom)) ? 'either' : 'cannot';
};

/** All symptoms a step can explain, and all that it cannot: for the words beside a link. */
export const mechanismOf = (
  guards: readonly Guard[],
): { readonly explains: readonly Symptom[]; readonly cannot: readonly Symptom[] } => ({
  explains: SYMPTOMS.filter((symptom) => mechanism(guards, symptom) === 'explains'),
  cannot: SYMPTOMS.filter((symptom) => mechanism(guards, symptom) === 'cannot'),
});

export const SYMPTOMS: readonly Symptom[] = [...goingOn, ...seated, ...threads].filter(
  (word): word is Symptom => word !== 'free' && word !== 'flush' && word !== 'sound',
);

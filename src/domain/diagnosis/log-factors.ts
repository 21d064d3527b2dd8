import type { Movement } from '../setup/procedure.ts';
import type { Cause } from './causes.ts';
import type { SetUpLog } from './view.ts';

type Factors = Readonly<Partial<Record<Cause, number>>>;

/** By how much a step that was missed makes a cause likelier. Judgement, ordered by mechanics, no source. */
export const MISSED: Readonly<Record<string, Factors>> = {
  'pick-up': { slip: 3 },
  'seat-chuck': { tilt: 3, eccentric: 2.5 },
  'lock-post': { creep: 3 },
  'dry-run': { struck: 3, 'last-thread': 1.7, bottoming: 1.5 },
  gap: { lean: 2, creep: 1.6 },
  board: { lean: 2 },
  cone: { lean: 2 },
  'square-banjo': { lean: 1.6 },
  'banjo-back': { slip: 2 },
  shake: { creep: 2, spring: 1.4 },
  'touch-off': { tight: 2, loose: 2 },
  cutter: { float: 1.3 },
};

/** The same for what moved. */
export const MOVED: Readonly<Record<Movement, Factors>> = {
  'it-grabbed': { slip: 3, creep: 1.7, eccentric: 1.7, 'weak-wood': 1.5 },
  'banjo-moved': { slip: 2.5, creep: 1.5 },
  'post-loosened': { lean: 2, slip: 2, creep: 2 },
  'chuck-off': { tilt: 2.5, eccentric: 2 },
  'dial-knocked': { tight: 2.2, loose: 2.2 },
  'cutter-changed': { tight: 1.5, loose: 1.5 },
  'headstock-swung': { lean: 2.5 },
  'dont-know': { slip: 1.5 },
};

const DONE = 0.9;

const own = <T>(table: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(table, key) ? table[key] : undefined;

/** The largest factor counts in full, each further one half as much as the one before: they tell of the same morning. */
const together = (factors: readonly number[]): number =>
  [...factors].sort((a, b) => b - a).reduce((product, factor, i) => product * factor ** (0.5 ** i), 1);

/** By how much the set-up log makes a cause likelier than it is on a quiet day. */
export const logFactor = (cause: Cause, log: SetUpLog): number => {
  const missed = new Set(log.missed);
  const against = [
    ...[...missed].map((step) => own(MISSED, step)?.[cause]),
    ...[...new Set<string>(log.moved)].map((what) => own<Factors>(MOVED, what)?.[cause]),
  ].filter((factor) => factor !== undefined);
  const done = [...new Set(log.done)].filter(
    (step) => !missed.has(step) && own(MISSED, step)?.[cause],
  ).length;
  return together(against) * DONE ** Math.min(3, done);
};

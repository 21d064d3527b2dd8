import { benchStep, steps } from '../../../src/domain/joint/dial.ts';
import { seededRandom } from '../../../src/domain/random.ts';
import { mm } from '../../../src/domain/units/brands.ts';
import type { AdvisedMove, AdviserFor } from './adviser.ts';
import { type Feel, faultsOf, feelOf, type Hand } from './feel.ts';
import { isCut, make, mayCut, minutes } from './moves.ts';
import { plainMove } from './simple-advisers.ts';
import { trueCauses } from './truth.ts';
import { SLOPE } from './workpiece.ts';
import type { Bench } from './workshop.ts';

const PARTS = ['tenon', 'recess'] as const;

/** Everything that could be done, with amounts as fine as the bench allows. */
const possible = (bench: Bench): readonly AdvisedMove[] => {
  const { record, work, turner } = bench;
  const step = benchStep[record.bench.unit];
  const by = (count: number) => steps(count, step);
  const cuts = PARTS.flatMap((part) =>
    [false, true].flatMap((reset) => [
      plainMove('same-setting-again', { part, reset }),
      plainMove('harden-and-recut', { part, reset }),
      ...[1, 2, 3, 4, 6].map((count) => plainMove('deepen', { part, by: by(count), reset })),
    ]),
  );
  const free = feelOf(work, turner.hand).free;
  const middle = (turner.hand.low + turner.hand.top) / 2;
  const tenons = [0, 0.1, 0.2].flatMap((deeper) =>
    [0, -2, 2].map((more) => {
      const depth = record.joint.plannedDepth + deeper;
      // What the room would be with a sound tenon of this depth, and what its size must then be.
      const size =
        work.tenon.diameter +
        free -
        middle +
        2 * (depth - work.tenon.depth) -
        work.tenon.slip / SLOPE +
        more * step;
      return plainMove('new-tenon', { part: 'tenon', size: mm(size), depth: mm(depth) });
    }),
  );
  const least = work.recess.diameter + 0.45 * 2 * 0.75 * 0.866 * work.pitch;
  return [
    ...(['leave-it', 'start-backwards', 'brush-out', 'on-and-off-by-hand', 'wax', 'find-dent'] as const).map(
      (kind) => plainMove(kind),
    ),
    ...(['chamfer-start', 'trim-last-thread', 'deepen-relief', 'true-bore', 'true-tenon'] as const).map(
      (kind) => plainMove(kind),
    ),
    ...PARTS.map((part) => plainMove('slacken-jaws', { part })),
    ...[0.5, 1, 1.5].map((more) => plainMove('clear-floor', { by: mm(more) })),
    ...PARTS.flatMap((part) => [2, 4, 8].map((count) => plainMove('face-shoulder', { part, by: by(count) }))),
    ...PARTS.flatMap((part) => [1, 2, 4].map((count) => plainMove('ease-crests', { part, by: by(count) }))),
    ...(record.bench.finished ? PARTS.map((part) => plainMove('rub-flanks', { part, by: mm(0.02) })) : []),
    ...cuts.filter((cut) => mayCut(record, cut) && !(cut.reset && mayCut(record, { ...cut, reset: false }))),
    ...tenons.filter(({ size }) => (size ?? 0) >= least),
  ];
};

/** Luck that the tries did not meet must not spoil a part either. */
const tooNear = ({ free, crest }: Feel, hand: Hand, { part }: AdvisedMove): boolean =>
  free > hand.top || crest[part ?? 'tenon'] < 0.12;

const TRIES = 6;
const TRY_MINUTES = 2;

/**
 * Sees the true joint and tries every move on copies of it: of those that spoil nothing, the likeliest to set the lid right, or else the
 * one that lessens the faults most for its minutes. No adviser can be expected to do better than about this.
 */
export const seeing: AdviserFor = (unseen) => ({
  name: 'sees the truth',
  advise: (view) => {
    const bench = unseen();
    const { hand } = bench.turner;
    const before = faultsOf(feelOf(bench.work, hand));
    let best: { readonly move: AdvisedMove; readonly worth: number; readonly chance: number } | null = null;
    for (const [i, move] of possible(bench).entries()) {
      let [mended, sound, spoilt] = [0, 0, false];
      for (let luck = 0; luck < TRIES && !spoilt; luck++) {
        const { bench: after, ruin, needless } = make(bench, move, seededRandom(view.seed + luck, 1000 + i));
        const felt = feelOf(after.work, hand);
        const faults = faultsOf(felt);
        mended += before - faults;
        sound += faults === 0 ? 1 : 0;
        spoilt = ruin !== null || needless || (isCut(move) && tooNear(felt, hand, move));
        if (luck === 1 && mended <= 0) break;
      }
      if (spoilt) continue;
      const chance = sound / TRIES;
      const worth =
        (chance * (3 + before) + Math.max(0, mended / TRIES)) / (minutes(move) + TRY_MINUTES + 20);
      if (best === null || worth > best.worth) best = { move, worth, chance };
    }
    const causes = trueCauses(bench.work, hand);
    return {
      causes: causes.map((cause) => ({ means: [cause], share: 1 / causes.length })),
      likely: true,
      move: best && { ...best.move, chance: best.chance },
      next: null,
      ask: null,
    };
  },
});

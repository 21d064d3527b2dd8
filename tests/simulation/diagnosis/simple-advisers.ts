import type { MoveKind } from '../../../src/domain/diagnosis/view.ts';
import { benchStep } from '../../../src/domain/joint/dial.ts';
import type { Advice, AdvisedMove, AdviserFor } from './adviser.ts';

export const plainMove = (kind: MoveKind, more: Partial<AdvisedMove> = {}): AdvisedMove => ({
  kind,
  part: null,
  by: null,
  size: null,
  depth: null,
  reset: false,
  chance: null,
  ...more,
});

const saying = (move: AdvisedMove | null): Advice => ({
  causes: [],
  likely: false,
  move,
  next: null,
  ask: null,
});

/** Knows one thing to do, and it harms nobody. */
export const waxOnly: AdviserFor = () => ({ name: 'wax only', advise: () => saying(plainMove('wax')) });

/** Says nothing at all: what a lid does when it is only tried again. */
export const silent: AdviserFor = () => ({ name: 'no advice', advise: () => saying(plainMove('leave-it')) });

/** Deepens the tenon by four steps, whatever is felt, whatever holds: it proves that ruin is seen. */
export const alwaysDeepens: AdviserFor = () => ({
  name: 'always deepens',
  advise: ({ bench }) => {
    const by = benchStep[bench.unit] * 4;
    return saying(plainMove('deepen', { part: 'tenon', by: by as AdvisedMove['by'] }));
  },
});

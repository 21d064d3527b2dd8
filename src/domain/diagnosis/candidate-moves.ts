import { benchStep, steps } from '../joint/dial.ts';
import type { Part } from '../setup/events.ts';
import { mm } from '../units/brands.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Move } from './moves.ts';
import type { MoveKind } from './view.ts';

/** What moves are drawn up from. */
export interface Bench {
  readonly unit: keyof typeof benchStep;
  readonly onJig: Part | null;
  readonly holds: boolean;
  readonly finished: boolean;
}

const plain = (kind: MoveKind, part: Part | null = null, by: number | null = null): Move => ({
  kind,
  part,
  by: by === null ? null : mm(by),
  size: null,
  depth: null,
  reset: false,
});

const amounts = (unit: keyof typeof benchStep, counts: readonly number[]): readonly number[] =>
  counts.map((count) => steps(count, benchStep[unit]));

const RUB_STEP = 0.01;

/** Cuts with the jig: each amount up to half the wanted clearance, and one step in any case. */
const cuts = (bench: Bench, wanted: number): Move[] => {
  const step = benchStep[bench.unit];
  const most = Math.min(8, Math.max(1, Math.floor(wanted / 2 / step + 1e-6)));
  const depths = Array.from({ length: most }, (_, i) => steps(i + 1, step));
  const on = (part: Part): Move[] => [
    plain('same-setting-again', part),
    plain('harden-and-recut', part),
    ...depths.map((by) => plain('deepen', part, by)),
  ];
  const bare = [...on('tenon'), ...on('recess')];
  return bench.holds ? bare : [...bare, ...on('tenon').map((move) => ({ ...move, reset: true }))];
};

/** Sizes around the one that would give the wanted clearance, at each depth worth cutting. */
const newTenons = (bench: Bench, box: JointNumbers, aim: Aim): Move[] => {
  const step = benchStep[bench.unit];
  const depths = [box.plannedDepth, aim.depthTenon, box.plannedDepth - 2 * step].filter((depth) => depth > 0);
  const moves: Move[] = [];
  for (const depth of new Set(depths.map((value) => Number(value.toFixed(4))))) {
    const around = Math.round((aim.sizeAtNothing + 2 * depth) / step);
    for (let i = -3; i <= 6; i++)
      moves.push({
        ...plain('new-tenon', 'tenon'),
        size: mm(steps(around + i, step)),
        depth: mm(depth),
      });
  }
  return moves;
};

/** Where a new tenon should land: the diameter that would give the wanted clearance at no depth at all, and the depth cut so far. */
export interface Aim {
  readonly sizeAtNothing: number;
  readonly depthTenon: number;
}

/** Every move that the bench allows at all, in whole steps; limits come later. */
export const movesFor = (bench: Bench, box: JointNumbers, aim: Aim): readonly Move[] => {
  const { unit, finished } = bench;
  return [
    ...(
      [
        'leave-it',
        'start-backwards',
        'brush-out',
        'on-and-off-by-hand',
        'wax',
        'slacken-jaws',
        'find-dent',
        'chamfer-start',
        'trim-last-thread',
        'deepen-relief',
        'true-bore',
        'true-tenon',
      ] as const
    ).map((kind) => plain(kind)),
    ...amounts(unit, [10, 20, 30]).map((by) => plain('clear-floor', null, by)),
    ...amounts(unit, [2, 4, 6, 8]).map((by) => plain('face-shoulder', null, by)),
    ...(['tenon', 'recess'] as const).flatMap((part) =>
      amounts(unit, [1, 2, 4]).map((by) => plain('ease-crests', part, by)),
    ),
    ...(finished ? [1, 2, 3].map((count) => plain('rub-flanks', 'tenon', steps(count, RUB_STEP))) : []),
    ...cuts(bench, box.wanted),
    ...newTenons(bench, box, aim),
  ];
};

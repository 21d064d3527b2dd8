import { groupBy } from '../../group-by.ts';
import type { Millimetres } from '../../units/brands.ts';
import { crestsHeld, inTimeOrder, type JointRow, type JointTable } from '../rows/joint-row.ts';
import type { Interval, Proportion } from '../statistics/counts.ts';
import { wilson } from '../statistics/intervals.ts';
import { chanceAtLeast, neverRising, type PooledShare, pooledShares } from '../statistics/pooled-shares.ts';

/** One wood at one pitch. */
export interface WoodAtPitch {
  readonly wood: string;
  readonly pitch: Millimetres;
  /** A hardener went on, so the wood alone did not hold it. */
  readonly hardened: boolean;
  /** Joints whose crests held, of those tried. */
  readonly held: Proportion;
  /** Held share by its own counts alone (90 %). */
  readonly alone: Interval;
  /** Held share, pooled with other woods (90 %). */
  readonly pooled: Omit<PooledShare, 'belief'>;
  /** Right at the first trial, eased once included; faults of size and alignment count here. */
  readonly right: Proportion;
}

export interface WoodRecord {
  readonly wood: string;
  readonly group: string;
  readonly hardness: number | null;
  readonly boxes: number;
  /** Under five boxes: listed apart, by its hardness. */
  readonly littleTried: boolean;
  /** The finest pitch that holds without hardener, and how sure; null is "not known". */
  readonly finest: { readonly pitch: Millimetres; readonly chance: number } | null;
  readonly pitches: readonly WoodAtPitch[];
}

export interface WoodsByPitch {
  readonly woods: readonly WoodRecord[];
  /** Joints in none of these, by reason. */
  readonly silent: { readonly 'never-tried': number };
}

const FEW = 5;
/** A wood holds a pitch when at least this share of its threads come out whole... */
const HOLDS_FROM = 0.8;
/** ...and the log is this sure of it. */
const SURE = 0.8;
const LEVEL = 0.9;

/** Each wood's record by pitch. Joints with a hardener are kept apart; they count for the wood that carries the thread: a ring's, where there is one. */
export const woodsByPitch = (table: JointTable): WoodsByPitch => {
  const rows = inTimeOrder(table.rows).filter((row) => row.firstTry !== 'unknown');
  const groups = groupBy(
    rows,
    (row) => `${row.wood}\u0000${row.hardener !== 'none'}\u0000${row.pitch.toFixed(3)}`,
  );
  const cells = [...groups.values()].map((joints) => ({
    joints,
    first: joints[0] as JointRow,
    held: { events: joints.filter(crestsHeld).length, total: joints.length },
  }));
  const shares = pooledShares(
    cells.map((cell) => cell.held),
    LEVEL,
  );
  const listed = cells.map(({ joints, first, held }, i) => {
    const { belief, ...pooled } = shares[i] as PooledShare;
    const at: WoodAtPitch = {
      wood: first.wood,
      pitch: first.pitch,
      hardened: first.hardener !== 'none',
      held,
      alone: wilson(held, LEVEL),
      pooled,
      right: {
        events: joints.filter((row) => row.firstTry === 'right' || row.firstTry === 'eased').length,
        total: joints.length,
      },
    };
    return { at, belief, first };
  });
  const names = [...new Set(listed.map(({ at }) => at.wood))].sort();
  return {
    woods: names.map((wood) =>
      recordOf(
        wood,
        listed.filter(({ at }) => at.wood === wood),
      ),
    ),
    silent: { 'never-tried': table.rows.length - rows.length },
  };
};

interface Listed {
  readonly at: WoodAtPitch;
  readonly belief: Float64Array;
  readonly first: JointRow;
}

const recordOf = (wood: string, cells: readonly Listed[]): WoodRecord => {
  const byPitch = [...cells].sort(
    (a, b) => b.at.pitch - a.at.pitch || Number(a.at.hardened) - Number(b.at.hardened),
  );
  const boxes = cells.reduce((sum, { at }) => sum + at.held.total, 0);
  return {
    wood,
    group: cells[0]?.first.woodGroup ?? '',
    hardness: cells[0]?.first.hardness ?? null,
    boxes,
    littleTried: boxes < FEW,
    finest: boxes < FEW ? null : finestThatHolds(byPitch.filter(({ at }) => !at.hardened)),
    pitches: byPitch.map(({ at }) => at),
  };
};

/** Coarse to fine, and a finer thread never holds better than a coarser one in the same wood. */
const finestThatHolds = (cells: readonly Listed[]): WoodRecord['finest'] => {
  const beliefs = neverRising(cells.map((cell) => cell.belief));
  for (let i = cells.length - 1; i >= 0; i--) {
    const chance = chanceAtLeast(beliefs[i] as Float64Array, HOLDS_FROM);
    if (chance >= SURE) return { pitch: (cells[i] as Listed).at.pitch, chance };
  }
  return null;
};

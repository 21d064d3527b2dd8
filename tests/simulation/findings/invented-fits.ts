import type { ClearanceTrial, JointRow, JointTable } from '../../../src/domain/findings/rows/joint-row.ts';
import { type Random, seededRandom } from '../../../src/domain/random.ts';
import { mm } from '../../../src/domain/units/brands.ts';

const PLAIN: Omit<JointRow, 'id' | 'wood' | 'pitch' | 'hardness'> = {
  log: 'invented',
  boxNumber: 1,
  day: '2026-01-01',
  cluster: 'c',
  rig: 'rig',
  experience: 1,
  woodGroup: 'hardwood',
  hardener: 'none',
  insertRing: false,
  steps: { recess: {}, tenon: {} },
  firstTry: 'right',
  symptoms: [],
  clearanceTrials: [],
  tipFlatKnown: true,
};

export const plainRow = (row: Partial<JointRow> & { readonly id: string }): JointRow => ({
  ...PLAIN,
  wood: 'wood',
  hardness: 5000,
  pitch: mm(2.54),
  ...row,
});

/** Gamma by Marsaglia and Tsang; shapes under one by their boost. */
const gamma = (random: Random, shape: number): number => {
  if (shape < 1) return gamma(random, shape + 1) * random.unit() ** (1 / shape);
  const d = shape - 1 / 3;
  for (;;) {
    const z = random.normal(0, 1);
    const v = (1 + z / Math.sqrt(9 * d)) ** 3;
    if (v > 0 && Math.log(random.unit()) < (z * z) / 2 + d - d * v + d * Math.log(v)) return d * v;
  }
};
export const beta = (random: Random, a: number, b: number): number => {
  const [x, y] = [gamma(random, a), gamma(random, b)];
  return x / (x + y);
};

/** True held share of each wood-pitch cell, drawn from the prior, and the counts seen: 1 to 15 joints a cell. */
export const inventedCells = (
  cells: number,
  seed: number,
  stream: number,
): readonly { readonly share: number; readonly events: number; readonly total: number }[] => {
  const random = seededRandom(seed, stream);
  const m = beta(random, 2, 1.5);
  const k = 8 * Math.exp(random.normal(0, 1));
  return Array.from({ length: cells }, () => {
    const share = beta(random, m * k, (1 - m) * k);
    const total = random.whole(1, 15);
    const events = Array.from({ length: total }).filter(() => random.chance(share)).length;
    return { share, events, total };
  });
};

/** What is true of a workshop's clearances: mean wanted, its spread, half the band that feels right. */
export interface TrueClearance {
  readonly mean: number;
  readonly spread: number;
  readonly band: number;
}

/** The usual clearance at 10 to the inch, which the prior is centred on. */
const GEOMETRIC = 0.35;

export const drawnClearance = (random: Random): TrueClearance => ({
  mean: random.normal(GEOMETRIC, 0.08),
  spread: 0.04 * Math.exp(random.normal(0, 0.5)),
  band: 0.06 * Math.exp(random.normal(0, 0.4)),
});

/**
 * Trials of joints cut near the usual clearance: each joint wants its own; a tight one is deepened by 0.05 to 0.1 mm and tried
 * again, four times at most. One joint in ten says tight, right or slack for another reason.
 */
export const inventedTrials = (truth: TrueClearance, joints: number, random: Random): JointTable => ({
  rows: Array.from({ length: joints }, (_, i) => {
    const wants = random.normal(truth.mean, truth.spread);
    const clearanceTrials: ClearanceTrial[] = [];
    let clearance = random.normal(GEOMETRIC - 0.04, 0.08);
    if (random.chance(0.1))
      clearanceTrials.push({
        clearance: mm(clearance),
        felt: random.pick(['tight', 'right', 'slack']),
        fit: 0,
      });
    else
      for (let trial = 0; trial < 4; trial++) {
        const felt =
          wants > clearance + truth.band ? 'tight' : wants < clearance - truth.band ? 'slack' : 'right';
        clearanceTrials.push({ clearance: mm(clearance), felt, fit: 0 });
        if (felt !== 'tight') break;
        clearance += random.between(0.05, 0.1);
      }
    return plainRow({ id: `joint-${i}`, boxNumber: i + 1, clearanceTrials });
  }),
  steps: [],
  leftOut: {},
});

/**
 * Woods of one workshop: hardness 1,800 to 11,000 N, crests hold with log odds 1 + 0.8 per doubling of hardness + 0.7 per doubling
 * of pitch + an effect of each wood (standard deviation 0.8); 3 to 15 joints each. And one more wood, never tried.
 */
export const inventedWoods = (
  woods: number,
  random: Random,
): {
  readonly table: JointTable;
  readonly next: { readonly hardness: number; readonly pitch: number; readonly share: number };
} => {
  const [intercept, byHardness, byPitch] = [
    random.normal(1, 1),
    random.normal(0.5, 0.7),
    random.normal(0.5, 0.7),
  ];
  const draw = () => ({
    hardness: Math.exp(random.between(Math.log(1800), Math.log(11_000))),
    own: random.normal(0, 0.8),
  });
  const shareOf = ({ hardness, own }: ReturnType<typeof draw>, pitch: number) => {
    const eta = intercept + own + byHardness * Math.log2(hardness / 5000) + byPitch * Math.log2(pitch / 1.8);
    return 1 / (1 + Math.exp(-eta));
  };
  const rows = Array.from({ length: woods }, (_, w) => {
    const wood = draw();
    return Array.from({ length: random.whole(3, 15) }, (_, i) => {
      const pitch = random.pick([2.54, 1.5875, 1.27]);
      const held = random.chance(shareOf(wood, pitch));
      return plainRow({
        id: `joint-${w}-${i}`,
        wood: `wood-${w}`,
        hardness: wood.hardness,
        pitch: mm(pitch),
        firstTry: held ? 'right' : 'failed',
        symptoms: held ? [] : ['torn'],
      });
    });
  }).flat();
  const untried = draw();
  return {
    table: { rows, steps: [], leftOut: {} },
    next: { hardness: untried.hardness, pitch: 1.5875, share: shareOf(untried, 1.5875) },
  };
};

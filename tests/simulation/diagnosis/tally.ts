import type { AdviserFor } from './adviser.ts';
import { RUINS, type Ruin } from './moves.ts';
import { MOST_MOVES, type Played, play, type Way } from './play.ts';
import { TRUE_CAUSES, type TrueCause } from './truth.ts';
import type { Manners } from './turner.ts';
import { UPSETS, type UpsetName } from './upsets.ts';

/** Hits among cases. */
export interface Count {
  readonly hits: number;
  readonly of: number;
}

const count = <T>(cases: readonly T[], hit: (each: T) => boolean): Count => ({
  hits: cases.filter(hit).length,
  of: cases.length,
});

export const share = ({ hits, of }: Count): number => (of === 0 ? Number.NaN : hits / of);

export interface Tenth {
  readonly from: number;
  readonly came: Count;
}

/** Every row of the acceptance, and what stands behind it. */
export interface Tally {
  readonly boxes: number;
  /** Of boxes that have a true cause. */
  readonly firstTrue: Count;
  readonly oneOfTwoTrue: Count;
  readonly firstTrueCommon: Count;
  readonly oneOfTwoTrueCommon: Count;
  readonly likelySaid: Count;
  readonly likelyTrue: Count;
  /** Right after at most 1, 2, ... 6 moves. */
  readonly rightAfter: readonly Count[];
  readonly wrongly: Count;
  readonly stuck: Count;
  readonly ruined: Count;
  readonly ruins: Readonly<Record<Ruin, number>>;
  readonly ruinedBoxes: readonly number[];
  readonly cutsWithoutSetting: number;
  readonly moves: number;
  readonly newTenons: number;
  readonly needless: number;
  readonly needlessBoxes: readonly number[];
  readonly questionsPerBox: number;
  /** One standard deviation between boxes. */
  readonly questionsSpread: number;
  readonly chances: readonly Tenth[];
  /** Share of the first cause: was it a true one; was it the weightiest. */
  readonly sharesTrue: readonly Tenth[];
  readonly sharesMain: readonly Tenth[];
  readonly byUpset: readonly (readonly [UpsetName | 'none', Count])[];
  readonly byCause: readonly (readonly [TrueCause, { readonly firstTrue: Count; readonly right: Count }])[];
  readonly moveKinds: readonly (readonly [string, Count])[];
  readonly milliseconds: { readonly median: number; readonly most95: number };
  readonly seconds: number;
}

/**
 * True causes that have a name in all three lists of causes: those of this design, of the trial-fit advice and of the suspects. Where a
 * box has another one, the three cannot be compared.
 */
const NAMED_BY_ALL: ReadonlySet<TrueCause> = new Set([
  'too-tight',
  'too-loose',
  'lean',
  'creep',
  'slipped',
  'tilted',
  'off-centre',
  'oval',
  'pinched',
  'bottoms',
  'crests-rub',
  'tapered-bore',
  'tapered-tenon',
  'weak-wood',
  'fuzz-or-chips',
]);

const tenths = (cases: readonly (readonly [number, boolean])[]): readonly Tenth[] =>
  Array.from({ length: 10 }, (_, i) => ({
    from: i / 10,
    came: count(
      cases.filter(([said]) => Math.min(9, Math.floor(said * 10 + 1e-9)) === i),
      ([, came]) => came,
    ),
  })).filter(({ came }) => came.of > 0);

const names = (played: Played, place: number, among: readonly TrueCause[]): boolean =>
  played.first.causes[place]?.means.some((cause) => among.includes(cause)) ?? false;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export const tallyOf = (all: readonly Played[], seconds: number): Tally => {
  const caused = all.filter(({ truth }) => truth.length > 0);
  const common = caused.filter(({ truth }) => truth.every((cause) => NAMED_BY_ALL.has(cause)));
  const first = (played: Played) => names(played, 0, played.truth);
  const oneOfTwo = (played: Played) => first(played) || names(played, 1, played.truth);
  const likely = caused.filter((played) => played.first.likely && played.first.causes.length > 0);
  const moves = all.flatMap((played) => played.moves);
  const withShare = caused.flatMap((played) => {
    const said = played.first.causes[0]?.share;
    return said === undefined ? [] : [{ played, said }];
  });
  const right = (most: number) => (played: Played) => played.rightAfter !== null && played.rightAfter <= most;
  const times = all.flatMap(({ milliseconds }) => milliseconds).sort((a, b) => a - b);
  const meanQuestions = mean(all.map(({ questions }) => questions));
  const ruined = all.filter(({ ruin }) => ruin !== null);
  return {
    boxes: all.length,
    firstTrue: count(caused, first),
    oneOfTwoTrue: count(caused, oneOfTwo),
    firstTrueCommon: count(common, first),
    oneOfTwoTrueCommon: count(common, oneOfTwo),
    likelySaid: { hits: likely.length, of: caused.length },
    likelyTrue: count(likely, first),
    rightAfter: Array.from({ length: MOST_MOVES }, (_, i) => count(all, right(i + 1))),
    wrongly: count(
      all.filter(({ rightAfter }) => rightAfter !== null),
      ({ wrongly }) => wrongly,
    ),
    stuck: count(all, ({ stuck }) => stuck),
    ruined: { hits: ruined.length, of: all.length },
    ruins: Object.fromEntries(
      RUINS.map((ruin) => [ruin, all.filter((played) => played.ruin === ruin).length]),
    ) as Record<Ruin, number>,
    ruinedBoxes: ruined.map(({ index }) => index),
    cutsWithoutSetting: moves.filter(({ withoutSetting }) => withoutSetting).length,
    moves: moves.length,
    newTenons: moves.filter(({ move }) => move.kind === 'new-tenon').length,
    needless: moves.filter(({ needless }) => needless).length,
    needlessBoxes: all
      .filter((played) => played.moves.some(({ needless }) => needless))
      .map(({ index }) => index),
    questionsPerBox: meanQuestions,
    questionsSpread: Math.sqrt(mean(all.map(({ questions }) => (questions - meanQuestions) ** 2))),
    chances: tenths(
      moves.flatMap(({ move, worked }) => (move.chance === null ? [] : [[move.chance, worked] as const])),
    ),
    sharesTrue: tenths(withShare.map(({ played, said }) => [said, first(played)])),
    sharesMain: tenths(
      withShare.map(({ played, said }) => [said, names(played, 0, played.truth.slice(0, 1))]),
    ),
    byUpset: (['none', ...UPSETS] as const).map((name) => [
      name,
      count(
        all.filter(({ upsets }) => (name === 'none' ? upsets.length === 0 : upsets.includes(name))),
        right(3),
      ),
    ]),
    byCause: TRUE_CAUSES.map((cause) => {
      const boxes = caused.filter(({ truth }) => truth[0] === cause);
      return [cause, { firstTrue: count(boxes, first), right: count(boxes, right(3)) }];
    }),
    moveKinds: [...new Set(moves.map(({ move }) => move.kind))].map((kind) => [
      kind,
      count(
        moves.filter(({ move }) => move.kind === kind),
        ({ worked }) => worked,
      ),
    ]),
    milliseconds: {
      median: times[Math.floor(times.length / 2)] ?? 0,
      most95: times[Math.floor(times.length * 0.95)] ?? 0,
    },
    seconds,
  };
};

/** Plays boxes 0 to `boxes` - 1 of a workshop. */
export const playAll = (
  adviser: AdviserFor,
  { boxes, seed, manners, way = 'as advised' }: { boxes: number; seed: number; manners: Manners; way?: Way },
): Tally => {
  const from = performance.now();
  const all = Array.from({ length: boxes }, (_, index) => play(adviser, { seed, index, manners, way }));
  return tallyOf(all, (performance.now() - from) / 1000);
};

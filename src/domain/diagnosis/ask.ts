import { SLOPE } from '../joint/profile.ts';
import type { Part } from '../setup/events.ts';
import { CAUSE_COUNT } from './causes.ts';
import { type Plan, planFrom } from './choose.ts';
import type { Answer, Question } from './diagnosis.ts';
import type { Facts } from './facts.ts';
import type { JointNumbers } from './joint-numbers.ts';
import type { Latent } from './latent.ts';
import type { Outcome } from './outcomes.ts';
import { noReadings, type Readings, readingsDensity, turnsPredicted } from './readings.ts';
import { emptyStanding, type Standing, standingOf } from './standing.ts';
import { type DiagnosisView, FIELDS, type Field, type MoveKind } from './view.ts';
import {
  emptyChances,
  marksChance,
  SEATED_FROM,
  THREADS_FROM,
  WORD_COUNT,
  WORDS,
  type Word,
  wordChances,
} from './words-chance.ts';

/** Minutes that it takes to look or to measure. Judgement, no source. */
const COST: Readonly<Record<Field, number>> = {
  seated: 0.2,
  threads: 0.2,
  marks: 0.6,
  endPlay: 0.6,
  turnsOn: 0.4,
  crestFlat: 0.8,
  bottomGap: 1.2,
  boreTaper: 1.4,
  tenonTaper: 1.2,
  outOfRound: 1.6,
};
/** A question must save this many minutes beyond its own cost. */
const WORTHWHILE = 1;
const TYPICAL = 5;
const MOST_QUESTIONS = 2;
/** Words count by this power, as in the trial's own evidence. */
const WORD_POWER = 0.8;

/** Fields of the last trial and of the pieces that were not answered yet. */
const untold = (view: DiagnosisView, facts: Facts): readonly Field[] => {
  const { joint, trials } = view;
  const last = trials.at(-1);
  if (!last) return [];
  const told: Readonly<Record<Field, boolean>> = {
    seated: last.seated !== null,
    threads: last.threads.length > 0,
    marks: last.marks !== null,
    endPlay: last.endPlay !== null,
    turnsOn: last.turnsOn !== null,
    // The other crest is asked about even where one was seen at this trial.
    crestFlat: last.crestFlat !== null && !facts.slipOrBlunt,
    bottomGap: last.bottomGap !== null,
    boreTaper: joint.boreTaper !== null,
    tenonTaper: joint.tenonTaper !== null,
    outOfRound: joint.outOfRound !== null,
  };
  const asked = view.asked ?? [];
  if (asked.length >= MOST_QUESTIONS) return [];
  return FIELDS.filter(
    (field) => !told[field] && (!asked.includes(field) || (field === 'crestFlat' && facts.slipOrBlunt)),
  );
};

/** The piece whose crest is worth seeing: the one that would be cut, then the other: a slip thins one crest, a blunt tip both. */
const crestPart = ({ bench, seen }: Facts): Part => {
  const first = bench.holds && bench.onJig === 'recess' ? 'recess' : 'tenon';
  const other = first === 'recess' ? 'tenon' : 'recess';
  return seen[first] && !seen[other] ? other : first;
};

const READING: Readonly<Partial<Record<Field, (part: Part) => keyof Readings>>> = {
  endPlay: () => 'endPlay',
  turnsOn: () => 'turnsOn',
  crestFlat: (part) => (part === 'recess' ? 'crestRecess' : 'crestTenon'),
  bottomGap: () => 'bottomGap',
  boreTaper: () => 'boreTaper',
  tenonTaper: () => 'tenonTaper',
  outOfRound: () => 'outOfRound',
};

const numberOf = (field: Field, part: Part, joint: Latent, box: JointNumbers, at: Standing): number => {
  switch (field) {
    case 'endPlay':
      return Math.round(100 * at.play) / 100;
    case 'turnsOn':
      return Math.round(4 * turnsPredicted(joint, box, at)) / 4;
    case 'crestFlat':
      return Math.max(0, Math.round(20 * (part === 'recess' ? at.flatRecess : at.flatTenon)) / 20);
    case 'bottomGap':
      return Math.round(10 * joint.floor) / 10;
    case 'boreTaper':
      return Math.round(20 * joint.taperBore) / 20;
    case 'tenonTaper':
      return Math.round(20 * joint.taperTenon) / 20;
    default:
      return Math.round(20 * joint.oval) / 20;
  }
};

const NOTICED = 0.4;

/** What a turner with this joint would most likely answer. */
const typicalAnswer = (
  field: Field,
  part: Part,
  joint: Latent,
  box: JointNumbers,
  at: Standing,
  of: Float64Array,
  late: boolean,
): Answer => {
  const wordsIn = (from: number, to: number): readonly Word[] =>
    WORDS.slice(from, to).filter((word, i) => word !== 'sound' && (of[from + i] as number) > NOTICED);
  if (field === 'seated') {
    let best = SEATED_FROM;
    for (let i = SEATED_FROM; i < THREADS_FROM; i++) if ((of[i] as number) > (of[best] as number)) best = i;
    return { kind: 'words', words: [WORDS[best] as Word] };
  }
  if (field === 'threads') {
    const words = wordsIn(THREADS_FROM, WORD_COUNT);
    return { kind: 'words', words: words.length > 0 ? words : ['sound'] };
  }
  if (field === 'marks')
    return {
      kind: 'marks',
      on: -2 * (late ? at.gapDeep : at.gap) > joint.low - (late ? at.deep : at.one) ? 'crest' : 'flank',
      at: late ? 'by-shoulder' : 'all-along',
    };
  return { kind: 'number', value: numberOf(field, part, joint, box, at) };
};

/** All that is needed of the likely joints to weigh an answer, kept for each. */
interface Likely {
  readonly standings: readonly Standing[];
  readonly words: readonly Float64Array[];
  readonly chances: readonly ReturnType<typeof emptyChances>[];
}

const likelyOf = (joints: readonly Latent[], box: JointNumbers): Likely => {
  const standings = joints.map(() => emptyStanding());
  const chances = joints.map(() => emptyChances());
  joints.forEach((joint, j) => {
    const at = standings[j] as Standing;
    standingOf(joint, box, at);
    wordChances(joint, box, at, chances[j] as ReturnType<typeof emptyChances>);
  });
  return { standings, chances, words: chances.map(({ of }) => of) };
};

const weightsAfter = (
  answer: Answer,
  field: Field,
  part: Part,
  joints: readonly Latent[],
  box: JointNumbers,
  { standings, chances, words }: Likely,
): Float64Array => {
  const weights = new Float64Array(joints.length);
  const key = READING[field]?.(part);
  const readings = answer.kind === 'number' && key ? { ...noReadings, [key]: answer.value } : noReadings;
  const said = answer.kind === 'words' ? new Set<Word>(answer.words) : new Set<Word>();
  for (let j = 0; j < joints.length; j++) {
    const joint = joints[j] as Latent;
    if (answer.kind === 'number')
      weights[j] = readingsDensity(readings, joint, box, standings[j] as Standing);
    else if (answer.kind === 'marks')
      weights[j] =
        marksChance(answer, joint, standings[j] as Standing, chances[j] as ReturnType<typeof emptyChances>) **
        WORD_POWER;
    else {
      const of = words[j] as Float64Array;
      let product = 1;
      if (field === 'seated') product = of[WORDS.indexOf(answer.words[0] as Word)] as number;
      else
        for (let i = THREADS_FROM; i < WORD_COUNT; i++)
          if (WORDS[i] !== 'sound')
            product *= said.has(WORDS[i] as Word) ? (of[i] as number) : 1 - (of[i] as number);
      weights[j] = product ** WORD_POWER;
    }
  }
  return weights;
};

const entropyOf = (weights: Float64Array, shares: Float64Array): number => {
  const of = new Float64Array(CAUSE_COUNT);
  let sum = 0;
  for (let j = 0; j < weights.length; j++) {
    const weight = weights[j] as number;
    sum += weight;
    for (let c = 0; c < CAUSE_COUNT; c++)
      of[c] = (of[c] as number) + weight * (shares[j * CAUSE_COUNT + c] as number);
  }
  let entropy = 0;
  for (const value of of) if (value > 0) entropy -= (value / sum) * Math.log(value / sum);
  return entropy;
};

/** What limits would see after an answer. */
const factsAfter = (facts: Facts, field: Field, part: Part, answer: Answer): Facts => {
  if (answer.kind !== 'number') return facts;
  if (field === 'endPlay') return { ...facts, imagined: true, felt: answer.value / SLOPE };
  if (field === 'bottomGap') return { ...facts, imagined: true, floor: Math.min(facts.floor, answer.value) };
  if (field !== 'crestFlat') return facts;
  const other = part === 'tenon' ? 'recess' : 'tenon';
  return {
    ...facts,
    imagined: true,
    slipOrBlunt: facts.slipOrBlunt && part === 'tenon',
    crest: { [part]: answer.value, [other]: facts.crest[other] ?? answer.value } as Facts['crest'],
  };
};

/** The reading without which a limit bars a move. */
const LIFTS: Readonly<Record<string, Field>> = {
  'play-not-felt': 'endPlay',
  'new-tenon-play-not-felt': 'endPlay',
  'crest-not-seen': 'crestFlat',
  'crest-unsure': 'crestFlat',
  'slip-or-blunt': 'crestFlat',
  'crest-for-picking-up': 'crestFlat',
  'no-crest-contact': 'marks',
};

/** A barred move must beat the best legal one by this factor before it is asked for. */
const BETTER = 1.15;

/** The field that may lift the bar from a move that would be worth more than the best legal one. */
const liftedBy = ({ barred, best }: Asking, open: readonly Field[]): Field | null => {
  let [most, field] = [BETTER * best, null as Field | null];
  for (const { worth, why } of barred) {
    const lift = LIFTS[why];
    if (lift && open.includes(lift) && worth > most) [most, field] = [worth, lift];
  }
  return field;
};

export interface Asking {
  readonly view: DiagnosisView;
  readonly facts: Facts;
  readonly joints: readonly Latent[];
  readonly box: JointNumbers;
  /** Share of each cause in each joint, joint by joint. */
  readonly shares: Float64Array;
  readonly plan: Plan;
  /** The outcomes that stay legal under other facts. */
  readonly legalUnder: (facts: Facts) => readonly Outcome[];
  /** What each barred move would be worth, and the best legal one. */
  readonly barred: readonly { readonly worth: number; readonly why: string }[];
  readonly best: number;
}

interface Asked {
  readonly question: Question | null;
  readonly tellsApart: Field | null;
}

/** The question that saves most beyond its own cost, and the one that would tell most about the cause. */
export const askFor = (asking: Asking): Asked => {
  const { view, facts, joints, box, shares, plan, legalUnder } = asking;
  const likely = likelyOf(joints, box);
  const even = new Float64Array(joints.length).fill(1);
  const now = entropyOf(even, shares);
  const part = crestPart(facts);
  const open = untold(view, facts);
  const lift = liftedBy(asking, open);
  let question: Question | null = null;
  let [most, tellsApart, drop] = [WORTHWHILE, null as Field | null, 0.02];
  for (const field of open) {
    let [minutes, entropy] = [0, 0];
    const answers: { answer: Answer; move: MoveKind | null }[] = [];
    for (let k = 0; k < TYPICAL; k++) {
      const j = Math.floor(((k + 0.5) / TYPICAL) * joints.length);
      const chances = likely.chances[j] as ReturnType<typeof emptyChances>;
      const answer = typicalAnswer(
        field,
        part,
        joints[j] as Latent,
        box,
        likely.standings[j] as Standing,
        chances.of,
        chances.late > chances.tight,
      );
      const weights = weightsAfter(answer, field, part, joints, box, likely);
      const after = planFrom(legalUnder(factsAfter(facts, field, part, answer)), weights, 4);
      minutes += after.minutes / TYPICAL;
      entropy += entropyOf(weights, shares) / TYPICAL;
      if (!answers.some((one) => JSON.stringify(one.answer) === JSON.stringify(answer)))
        answers.push({ answer, move: after.moves[0]?.move.kind ?? null });
    }
    const saved = field === lift ? Number.POSITIVE_INFINITY : plan.minutes - minutes - COST[field];
    if (saved > most)
      [most, question] = [saved, { field, part: field === 'crestFlat' ? part : null, answers }];
    if (now - entropy > drop) [drop, tellsApart] = [now - entropy, field];
  }
  return { question, tellsApart };
};

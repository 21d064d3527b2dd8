import { ASSUMED } from '../../../domain/box/assumed.ts';
import type { Rig } from '../../../domain/box/records.ts';
import { LONGEST } from '../../../domain/log/bounds.ts';
import type { Result } from '../../../domain/result.ts';
import type { Length } from '../../../domain/units/length.ts';
import { readCount, readLength, readPitch } from '../../../domain/units/read-quantity.ts';
import { readName } from '../../../domain/units/read-text.ts';
import { usualFigure } from '../../bench/plan/words.ts';
import { questionWords, type RigQuestion, rigOptions, rigWords } from './words.ts';

type Unit = 'in' | 'mm';
type Asked = ReturnType<typeof questionWords>[RigQuestion];

/** A question's words, with the usual figures in the user's unit. */
export const askedIn = (unit: Unit): Readonly<Record<RigQuestion, Asked>> =>
  questionWords({
    cutterRadius: usualFigure(ASSUMED.cutterRadius, unit),
    tipFlat: usualFigure(ASSUMED.tipFlat, unit),
    aheadOfTooth: usualFigure(ASSUMED.aheadOfTooth, unit),
    travelPerTurn: usualFigure(ASSUMED.travelPerTurn, unit),
  });

/** Questions of a few answers, each as it is stored. */
export type ChoiceQuestion = keyof typeof rigOptions;
export const isChoice = (question: RigQuestion): question is ChoiceQuestion => question in rigOptions;

/** The change that a chosen answer makes to a rig. */
export const chosen = (question: ChoiceQuestion, value: string): Partial<Rig> =>
  question === 'banjos' ? { banjos: value === '2' ? 2 : 1 } : { [question]: value };

/** What a length of the rig may be, mm. */
const RANGES = {
  cutterRadius: { min: 2, max: 60 },
  tipFlat: { min: 0, max: 1 },
  aheadOfTooth: { min: 0, max: 20 },
  travelPerTurn: { min: 0.25, max: 10 },
  slideTravel: { min: 10, max: 600 },
} as const;
const COUNTS = {
  teeth: { min: 1, max: 24 },
  marksPerTurn: { min: 2, max: 500 },
  chucks: { min: 1, max: 12 },
} as const;
export type TypedQuestion = Exclude<RigQuestion, ChoiceQuestion>;

const keyed = <T>(result: Result<T>, change: (value: T) => Partial<Rig>): Result<Partial<Rig>> =>
  result.ok ? { ok: true, value: change(result.value) } : result;

/** The change that a typed answer makes to a rig, or why it was refused. */
export const readAnswer = (question: TypedQuestion, typed: string, unit: Unit): Result<Partial<Rig>> => {
  switch (question) {
    case 'name':
      return keyed(readName(question, typed, LONGEST.name), (name) => ({ name }));
    case 'pitch':
      return keyed(readPitch(question, typed, 'tpi'), (pitch) => ({ pitch }));
    case 'teeth':
    case 'marksPerTurn':
    case 'chucks':
      return keyed(readCount(question, typed, COUNTS[question]), (count) => ({ [question]: count }));
    case 'tipFlat':
      return keyed(readLength(question, typed, unit, RANGES.tipFlat), (tipFlat) => ({
        tipFlat,
        tipFlatFrom: 'told',
      }));
    default:
      return keyed(readLength(question, typed, unit, RANGES[question]), (length) => ({ [question]: length }));
  }
};

/** The answer not known any more. */
export const forgotten = (question: RigQuestion): Partial<Rig> =>
  question === 'tipFlat' ? { tipFlat: null, tipFlatFrom: null } : { [question]: null };

const isLength = (value: unknown): value is Length =>
  typeof value === 'object' && value !== null && 'text' in value;

/** An answer as it was given; null when it is not known yet. */
export const answerText = (rig: Rig, question: RigQuestion): string | null => {
  const value = rig[question];
  if (value === null) return null;
  if (isLength(value)) return value.text;
  if (isChoice(question))
    return Object.entries(rigOptions[question]).find(([key]) => key === String(value))?.[1] ?? null;
  return String(value);
};

/** The same with where it comes from. */
export const answerWords = (rig: Rig, question: RigQuestion): string => {
  const text = answerText(rig, question) ?? rigWords.unknown;
  return question === 'tipFlat' && rig.tipFlatFrom === 'scrap-pair' ? `${text}, ${rigWords.scrapFrom}` : text;
};

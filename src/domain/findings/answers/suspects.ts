import type { Marks } from '../../box/records.ts';
import type { Movement } from '../../setup/procedure.ts';
import type { Symptom } from '../rows/joint-row.ts';
import { SYMPTOMS } from './mechanism.ts';
import { CAUSES, type Cause, type CauseRow, ELSEWHERE, UNTIED } from './suspect-table.ts';

/** What is known of one joint that was not right. */
export interface Case {
  readonly symptoms: readonly Symptom[];
  readonly marks: Marks | null;
  /** Step keys missed and done for either part. */
  readonly missed: readonly string[];
  readonly done: readonly string[];
  /** What moved during its set-ups. */
  readonly moved: readonly Movement[];
  /** Findings of the measurements; null or absent where nothing was measured. */
  readonly measured: {
    /** Diametral flank clearance, mm, and what would suit. */
    readonly clearance?: number;
    readonly suits?: number;
    /** Least radial crest gap, mm. */
    readonly crestGap?: number;
    /** Mouth less relief of the bore, or end less shoulder of the tenon, mm, whichever is larger. */
    readonly taper?: number;
    /** Along less across, mm. */
    readonly oval?: number;
  };
}

/** What spoke for or against a suspect. */
export type Clue =
  | { readonly kind: 'symptom'; readonly symptom: Symptom }
  | { readonly kind: 'missed' | 'done'; readonly step: string }
  | { readonly kind: 'moved'; readonly what: Movement }
  | { readonly kind: 'measured'; readonly what: keyof Case['measured'] }
  | { readonly kind: 'marks' };

export interface Suspect {
  readonly cause: Cause | 'none-of-these';
  /** Chance in 100, rounded to 10: no finer than the table behind it. */
  readonly chance: number;
  /** Unrounded, 0 to 1, for comparing. */
  readonly weight: number;
  /** What speaks for it, strongest first. */
  readonly clues: readonly Clue[];
}

/** How much likelier a cause becomes. A detector (gap, shake) that was missed is only absent evidence, so it weighs little. */
interface Hint {
  readonly clue: Clue;
  readonly of: readonly Cause[];
  readonly times: number;
}

const IF_MISSED: Readonly<Record<string, readonly [readonly Cause[], number]>> = {
  board: [['leaning'], 2.5],
  cone: [['leaning'], 2.5],
  'square-banjo': [['leaning'], 2],
  gap: [['leaning', 'creep'], 2],
  'seat-chuck': [['chuck-not-home', 'off-centre'], 3],
  'banjo-back': [['slipped'], 2.5],
  shake: [['creep'], 2],
  'pick-up': [['slipped'], 4],
  'touch-off': [['too-tight', 'too-loose'], 2.5],
  'dry-run': [['bottoming'], 2.5],
};
/** Done rather than missed speaks against the same causes, less strongly: it may have been done badly. */
const IF_DONE = 0.8;

const IF_MOVED: Readonly<Record<Movement, readonly [readonly Cause[], number]>> = {
  'banjo-moved': [['slipped', 'creep'], 2.5],
  'post-loosened': [['leaning', 'creep', 'slipped'], 2],
  'chuck-off': [['chuck-not-home', 'off-centre'], 2.5],
  'cutter-changed': [['too-tight', 'too-loose', 'slipped'], 1.5],
  'dial-knocked': [['too-tight', 'too-loose'], 2.5],
  'headstock-swung': [['leaning'], 2.5],
  'it-grabbed': [['slipped', 'creep', 'off-centre'], 2.5],
  'dont-know': [['slipped', 'creep'], 1.5],
};

/**
 * The suspects for one joint, likeliest first; their weights and that of "none of these" sum to 1. Symptoms multiply the
 * table's chances (those not seen count too), then what was missed, done, moved and measured multiplies again. No symptom
 * at all, no suspects.
 */
export const suspects = (joint: Case, table: readonly CauseRow[] = CAUSES): readonly Suspect[] => {
  if (joint.symptoms.length === 0) return [];
  const hints = hintsOf(joint);
  const rest = 1 - table.reduce((sum, row) => sum + row.prior, 0);
  const none = {
    cause: 'none-of-these' as const,
    weight: Math.max(0.02, rest) * tellsNone(joint),
    clues: [] as Clue[],
  };
  const named = table.map((row) => {
    const own = hints.filter((hint) => hint.of.includes(row.cause));
    return {
      cause: row.cause,
      weight: own.reduce((weight, { times }) => weight * times, row.prior * tells(row, joint)),
      clues: [...symptomClues(row, joint), ...own.filter(({ times }) => times > 1).map(({ clue }) => clue)],
    };
  });
  const all = [...named, none].reduce((sum, { weight }) => sum + weight, 0);
  return [...named, none]
    .map((suspect) => {
      const weight = suspect.weight / all;
      return { ...suspect, weight, chance: Math.round(weight * 10) * 10 };
    })
    .sort((a, b) => b.weight - a.weight);
};

/** Chance of exactly these symptoms and marks under a cause. */
const tells = (row: CauseRow, { symptoms, marks }: Case): number => {
  let chance = 1;
  for (const symptom of SYMPTOMS) {
    const p = row.shows[symptom] ?? ELSEWHERE;
    chance *= symptoms.includes(symptom) ? p : 1 - p;
  }
  if (!marks) return chance;
  const [start, byShoulder, allAlong] = row.where;
  const where = marks.at === 'start' ? start : marks.at === 'by-shoulder' ? byShoulder : allAlong;
  return chance * (marks.on === 'crest' ? row.onCrests : 1 - row.onCrests) * where;
};

const tellsNone = ({ symptoms, marks }: Case): number =>
  SYMPTOMS.reduce((chance, s) => chance * (symptoms.includes(s) ? UNTIED : 1 - UNTIED), 1) *
  (marks ? 0.5 / 3 : 1);

const symptomClues = (row: CauseRow, { symptoms, marks }: Case): readonly Clue[] => {
  const shown = symptoms
    .filter((symptom) => (row.shows[symptom] ?? 0) >= 0.1)
    .sort((a, b) => (row.shows[b] ?? 0) - (row.shows[a] ?? 0))
    .map((symptom): Clue => ({ kind: 'symptom', symptom }));
  const onMarks = marks && (marks.on === 'crest' ? row.onCrests : 1 - row.onCrests) > 0.6;
  return onMarks ? [...shown, { kind: 'marks' }] : shown;
};

const hintsOf = ({ missed, done, moved, measured }: Case): readonly Hint[] => {
  const hints: Hint[] = [];
  const add = (clue: Clue, of: readonly Cause[], times: number) => hints.push({ clue, of, times });
  for (const step of missed) {
    const known = IF_MISSED[step];
    if (known) add({ kind: 'missed', step }, ...known);
  }
  for (const step of done) {
    const known = IF_MISSED[step];
    if (known && !missed.includes(step)) add({ kind: 'done', step }, known[0], IF_DONE);
  }
  for (const what of new Set(moved)) add({ kind: 'moved', what }, ...IF_MOVED[what]);
  return [...hints, ...measuredHints(measured)];
};

/** Tenths of a millimetre that a hand feels. */
const FELT = 0.05;

const measuredHints = (m: Case['measured']): readonly Hint[] => {
  const hints: Hint[] = [];
  const add = (what: keyof Case['measured'], of: readonly Cause[], times: number) =>
    hints.push({ clue: { kind: 'measured', what }, of, times });
  if (m.clearance !== undefined) {
    const over = m.clearance - (m.suits ?? 0.2);
    if (m.clearance <= 0) add('clearance', ['too-tight'], 6);
    else if (over < -2 * FELT) add('clearance', ['too-tight'], 3);
    else if (over > 2 * FELT) add('clearance', ['too-loose'], 3);
    else add('clearance', ['too-tight', 'too-loose'], 0.5);
  }
  if (m.crestGap !== undefined)
    add('crestGap', ['crests-rub'], m.crestGap < 0 ? 5 : m.crestGap < FELT ? 1.5 : 0.4);
  if (m.taper !== undefined) add('taper', ['turned-tapered'], Math.abs(m.taper) > FELT ? 4 : 0.5);
  if (m.oval !== undefined) add('oval', ['gone-oval', 'squeezed'], Math.abs(m.oval) > FELT ? 3 : 0.7);
  return hints;
};

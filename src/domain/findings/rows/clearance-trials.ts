import type { Box, Rig, Trial } from '../../box/records.ts';
import type { GoingOn } from '../../box/trial-words.ts';
import { fitOf } from '../../joint/fit.ts';
import type { Part } from '../../setup/events.ts';
import { type Millimetres, mm } from '../../units/brands.ts';
import type { ClearanceTrial } from './joint-row.ts';

/** Tip flat reckoned with while nobody knows it, mm (common practice, no source). The same going in and coming out, so it cancels for one rig. */
const ASSUMED_TIP_FLAT: Millimetres = mm(0.2);

const SIZE: Partial<Readonly<Record<GoingOn, ClearanceTrial['verdict']>>> = {
  'stiff-all-the-way': 'tight',
  'drags-more-each-turn': 'tight',
  free: 'right',
  'rattles-sideways': 'slack',
  'end-play': 'slack',
};

/** Faults that hide what the size would have been. */
const HIDES: ReadonlySet<string> = new Set([
  'stops-dead',
  'tight-once-a-turn',
  'tight-twice-a-turn',
  'tight-four-times-a-turn',
  'gritty',
  'jumps-a-thread',
  'rocks',
  'cross-threaded',
  'thin-or-double-cut',
]);

/** What a trial says of size, or null. A lid that will not start is tight only if the pieces truly overlap. */
const verdictOf = (trial: Trial, clearance: number): ClearanceTrial['verdict'] | null => {
  const told = [...trial.goingOn, ...(trial.seated ? [trial.seated] : []), ...trial.threads];
  if (told.some((word) => HIDES.has(word))) return null;
  if (trial.right) return 'right';
  if (trial.goingOn.includes('will-not-start')) return clearance <= 0 ? 'tight' : null;
  const verdicts = new Set(trial.goingOn.map((word) => SIZE[word]).filter((v) => v !== undefined));
  // Tight and slack at once is about something else than size; free with play is slack.
  if (verdicts.has('tight') && verdicts.size > 1) return null;
  return verdicts.has('slack') ? 'slack' : ([...verdicts][0] ?? null);
};

/** The trials of a box that say something of size, with the clearance as it was at each. */
export const clearanceTrialsOf = (box: Box, rig: Rig): readonly ClearanceTrial[] => {
  const bore = mean(box.bore.flatMap((r) => (r.across ? [r.along.mm, r.across.mm] : [r.along.mm])));
  const tenon = mean(box.tenon.map((r) => r.diameter.mm));
  if (bore === null || tenon === null) return [];
  let fit = 0;
  return box.trials.flatMap((trial) => {
    if (trial.afterFinish) fit++;
    const recessDepth = depthAt(box, 'recess', trial.seq);
    const tenonDepth = depthAt(box, 'tenon', trial.seq);
    if (recessDepth === null || tenonDepth === null) return [];
    const tipFlat = rig.tipFlat?.mm ?? ASSUMED_TIP_FLAT;
    const found = fitOf({
      pitch: box.plan.pitch.mm,
      recess: { diameter: mm(bore), depth: recessDepth, tipFlat },
      tenon: { diameter: mm(tenon), depth: tenonDepth, tipFlat },
    });
    if (!found.ok) return [];
    const { clearance } = found.value;
    const verdict = verdictOf(trial, clearance);
    return verdict ? [{ clearance, verdict, fit }] : [];
  });
};

const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;

/** The deepest that part had been cut by then. */
const depthAt = (box: Box, part: Part, seq: number): Millimetres | null => {
  const depths = box.cuts.filter((cut) => cut.part === part && cut.seq <= seq).map((cut) => cut.depth.mm);
  return depths.length === 0 ? null : mm(Math.max(...depths));
};

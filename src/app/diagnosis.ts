import type { Box, Trial } from '../domain/box/records.ts';
import { inSequence } from '../domain/box/sequence.ts';
import type { Diagnosis } from '../domain/diagnosis/diagnosis.ts';
import { diagnosisView } from '../domain/diagnosis/diagnosis-view.ts';
import type { DiagnosisView } from '../domain/diagnosis/view.ts';
import { ok, type Result } from '../domain/result.ts';
import type { RunState } from '../domain/setup/fold.ts';
import { threadingNature } from '../domain/wood/threading-nature.ts';
import { diagnoseApart } from '../platform/diagnosis-worker.ts';
import type { BoxOnHand } from './boxes.ts';
import { calculateBox } from './calculated.ts';
import { settings } from './session.ts';

/** What is likely wrong with a box at a trial, and what that was worked out from. */
export interface Diagnosed {
  readonly view: DiagnosisView;
  readonly diagnosis: Diagnosis;
  /** Which way the dial goes deeper in the recess, against the tenon; null where the rig does not say. */
  readonly recessDial: 'same' | 'other' | null;
}

/** The trial that a box's page and the Bench speak of: the newest that was not right, or null. */
export const trialToExplain = ({ trials }: Pick<Box, 'trials'>): Trial | null =>
  inSequence(trials).findLast(({ right }) => !right) ?? null;

/**
 * The one diagnosis of a box at a trial, for the Bench and for the box's page. A refusal says which sizes do not go together.
 */
export const diagnosisOf = async (
  { id, box }: BoxOnHand,
  runs: ReadonlyMap<string, RunState>,
  trialId: string,
): Promise<Result<Diagnosed | null>> => {
  const { unit } = settings.value;
  const calculated = await calculateBox(box);
  if (!calculated.ok) return calculated;
  const { speciesTable } = await import('../domain/wood/species-table.ts');
  const view = diagnosisView({
    boxId: id,
    box,
    calculated: calculated.value,
    runs,
    trialId,
    unit,
    learned: null,
    fragilityOf: (wood) =>
      threadingNature(wood, speciesTable.find(({ key }) => key === wood)?.hardness?.newton ?? null),
  });
  if (!view) return ok(null);
  const diagnosis = await diagnoseApart(view);
  if (!diagnosis.ok) return diagnosis;
  return ok({ view, diagnosis: diagnosis.value, recessDial: calculated.value.given.rig.recessDial });
};

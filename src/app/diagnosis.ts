import type { Trial } from '../domain/box/records.ts';
import type { Diagnosis } from '../domain/diagnosis/diagnosis.ts';
import { diagnosisView } from '../domain/diagnosis/diagnosis-view.ts';
import type { DiagnosisView } from '../domain/diagnosis/view.ts';
import { ok, type Result } from '../domain/result.ts';
import { threadingNature } from '../domain/wood/threading-nature.ts';
import { diagnoseApart } from '../platform/diagnosis-worker.ts';
import { boxById, runsOf } from './boxes.ts';
import { calculateBox } from './calculated.ts';
import { settings } from './session.ts';

/** What a diagnosis of a box at a trial is worked out from, and the words of the steps it may name. */
interface ToDiagnose {
  readonly trial: Trial;
  readonly view: DiagnosisView;
  readonly sentenceOf: (step: string) => string;
}

/** What is likely wrong with a box at a trial: the same for the Bench and for the box's page. */
export interface Diagnosed extends ToDiagnose {
  readonly diagnosis: Diagnosis;
}

/** Reads what to diagnose; null when there is no such trial. A refusal says which sizes do not go together. */
export const toDiagnose = async (boxId: string, trialId: string): Promise<Result<ToDiagnose> | null> => {
  const box = (await boxById(boxId))?.box;
  const trial = box?.trials.find(({ id }) => id === trialId);
  if (!box || !trial) return null;
  const calculated = await calculateBox(box);
  if (!calculated.ok) return calculated;
  const runs = await runsOf(box);
  const { speciesTable } = await import('../domain/wood/species-table.ts');
  const view = diagnosisView({
    boxId,
    box,
    calculated: calculated.value,
    runs,
    trialId,
    unit: settings.value.unit,
    learned: null,
    fragilityOf: (wood) =>
      threadingNature(wood, speciesTable.find(({ key }) => key === wood)?.hardness?.newton ?? null),
  });
  if (!view) return null;
  const sentences = new Map(
    [...runs.values()].flatMap(({ steps }) => steps.map(({ step }) => [step.key, step.sentence] as const)),
  );
  return ok({
    trial,
    view,
    sentenceOf: (step) => sentences.get(step) ?? step,
  });
};

/** The one diagnosis, worked out beside the page; null where that failed. */
export const diagnosed = async (asked: ToDiagnose): Promise<Result<Diagnosed> | null> => {
  const diagnosis = await diagnoseApart(asked.view).catch(() => null);
  if (!diagnosis) return null;
  return diagnosis.ok ? ok({ ...asked, diagnosis: diagnosis.value }) : diagnosis;
};

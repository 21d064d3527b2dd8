import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type Diagnosed, diagnosed, toDiagnose } from '../../../app/diagnosis.ts';
import type { Result } from '../../../domain/result.ts';
import { useLive } from '../../parts/use-live.ts';

/** The diagnosis of a box at a trial; undefined until it is there, null where it failed. While a new one is worked out the last stands. */
export const useDiagnosis = (boxId: string, trialId: string): Result<Diagnosed> | null | undefined => {
  const asked = useLive(toDiagnose, ['box', 'events', 'rig', 'instrument', 'wood'], boxId, trialId).value;
  const answer = useSignal<Result<Diagnosed> | null | undefined>(undefined);
  useEffect(() => {
    if (!asked?.ok) {
      answer.value = asked ?? undefined;
      return;
    }
    let isCurrent = true;
    diagnosed(asked.value).then((found) => {
      if (isCurrent) answer.value = found;
    });
    return () => {
      isCurrent = false;
    };
  }, [asked]);
  return answer.value;
};

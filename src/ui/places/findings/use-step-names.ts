import { allProcedures } from '../../../app/procedures.ts';
import { logId } from '../../../app/session.ts';
import { useLive } from '../../parts/use-live.ts';

/** What a step says, by its key: from the procedures of this log. */
export const useStepNames = (): ((key: string) => string) => {
  const procedures = useLive(allProcedures, ['procedure', 'log'], logId.value).value;
  const names = new Map(
    procedures?.flatMap(({ procedure }) => procedure.steps.map((step) => [step.key, step.sentence] as const)),
  );
  return (key) => names.get(key) ?? key;
};

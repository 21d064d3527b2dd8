import { type BoxOnHand, changeBox } from '../../../app/boxes.ts';
import { woodsToChoose } from '../../../app/woods-to-choose.ts';
import type { Given } from '../../../domain/box/given.ts';
import { useLive } from '../../parts/use-live.ts';
import { PlanQuestions } from './form.tsx';
import { textsOf } from './texts.ts';
import { planWords as words } from './words.ts';

interface Props {
  readonly onHand: BoxOnHand;
  readonly given: Given;
  readonly onKept: () => void;
}

/** The questions of a plan again, answered as it stands. */
const PlanChange = ({ onHand: { id, box }, given, onKept }: Props) => {
  const woods = useLive(woodsToChoose, ['wood']).value;
  if (!woods) return <div aria-busy="true" />;
  return (
    <PlanQuestions
      id={`plan ${id}`}
      initial={textsOf(box.plan, box.name, woods)}
      given={given}
      woods={woods}
      act={words.keep}
      onPlan={async (plan, name) => {
        const saved = await changeBox(id, (now) => ({ ...now, plan, name }));
        if (saved) onKept();
        return saved;
      }}
    />
  );
};

export default PlanChange;

import { CauseList } from '../bench/trial/cause-list.tsx';
import { useDiagnosis } from '../bench/trial/use-diagnosis.ts';
import { boxesWords as words } from './words.ts';

/** For a box that did not fit: what may be behind it, as the Bench has it. */
const LikelyCauses = ({ id, trialId }: { id: string; trialId: string }) => {
  const found = useDiagnosis(id, trialId);
  if (!found?.ok) return null;
  return (
    <section>
      <h2>{words.likelyCauses}</h2>
      <p class="soft">{words.aboutCauses}</p>
      <CauseList found={found.value} />
    </section>
  );
};

export default LikelyCauses;

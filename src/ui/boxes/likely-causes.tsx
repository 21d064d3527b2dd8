import { diagnosisOf } from '../../app/diagnosis.ts';
import { CauseList } from '../bench/trial/cause-list.tsx';
import { useLive } from '../parts/use-live.ts';
import { boxesWords as words } from './words.ts';

/** For a box that did not fit: what may be behind it, as the Bench has it. */
const LikelyCauses = ({ id, trialId }: { id: string; trialId: string }) => {
  const found = useLive(
    () => diagnosisOf(id, trialId),
    ['box', 'events', 'rig', 'instrument', 'wood'],
    `${id} ${trialId}`,
  ).value;
  if (!found?.ok || !found.value) return null;
  return (
    <section>
      <h2>{words.likelyCauses}</h2>
      <p class="soft">{words.aboutCauses}</p>
      <CauseList found={found.value} />
    </section>
  );
};

export default LikelyCauses;

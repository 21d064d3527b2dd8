import type { Found as FoundInLog } from '../../app/findings.ts';
import { Lazy } from '../shell/lazy.tsx';
import { LastBoxes } from './last-boxes.tsx';
import { Lead } from './lead.tsx';
import { StepLinkList } from './step-link-list.tsx';
import { stepNames } from './step-name.ts';

/** What to change tomorrow, one's own last boxes and the steps; the figures follow. */
const Found = ({ found }: { found: FoundInLog }) => {
  const nameOf = stepNames(found.steps);
  return (
    <>
      <Lead found={found} nameOf={nameOf} />
      {found.lastAlike && <LastBoxes alike={found.lastAlike} />}
      <StepLinkList links={found.links} nameOf={nameOf} />
      <Lazy key="figures" load={() => import('./figures.tsx')} props={{ found }} />
    </>
  );
};

export default Found;

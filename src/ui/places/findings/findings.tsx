import './findings.css';
import { useEffect } from 'preact/hooks';
import { changes } from '../../../app/changes.ts';
import { cancelFindings, findings, findingsFailed, progress, reckonFindings } from '../../../app/findings.ts';
import { logId } from '../../../app/session.ts';
import { Later } from '../../shell/later.tsx';
import { findingsWords as words } from '../../text/findings-words.ts';
import { AllowanceList } from './allowance-list.tsx';
import { LastBoxes } from './last-boxes.tsx';
import { Lead } from './lead.tsx';
import { LeftOut } from './left-out.tsx';
import { RowsOut } from './rows-out.tsx';
import { StepLinkList } from './step-link-list.tsx';
import { TimeList } from './time-list.tsx';
import { WoodList } from './wood-list.tsx';

/** What the log says, words first, numbers one tap away. */
const Findings = () => {
  const seen = [logId.value, changes.box.value, changes.events.value, changes.rig.value].join(' ');
  useEffect(() => {
    reckonFindings();
  }, [seen]);

  const found = findings.value;
  if (findingsFailed.value)
    return (
      <main class="page findings">
        <h1>{words.title}</h1>
        <p role="alert">{words.failed}</p>
        <button type="button" onClick={() => reckonFindings()}>
          {words.tryAgain}
        </button>
      </main>
    );
  return (
    <main class="page findings" aria-busy={!found}>
      <h1>{words.title}</h1>
      {progress.value !== null && <Progress share={progress.value} />}
      {!found && progress.value === null && <p>{words.wait}</p>}
      {found && found.table.rows.length === 0 && <p>{words.none}</p>}
      {found && found.table.rows.length > 0 && (
        <>
          <Lead found={found} />
          <LastBoxes />
          <StepLinkList links={found.links} />
          <AllowanceList found={found.allowances} />
          <WoodList woods={found.woods} />
          <TimeList times={found.times} />
          <Later key="both-ways" load={() => import('./both-ways.tsx')} props={{ table: found.table }} />
          <LeftOut table={found.table} />
          <RowsOut table={found.table} />
        </>
      )}
    </main>
  );
};

const Progress = ({ share }: { share: number }) => (
  <div class="row">
    <p role="status">{words.progress(share)}</p>
    <button type="button" onClick={cancelFindings}>
      {words.cancel}
    </button>
  </div>
);

export default Findings;

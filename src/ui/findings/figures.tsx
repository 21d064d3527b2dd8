import type { Found } from '../../app/findings.ts';
import { AllowanceList } from './allowance-list.tsx';
import { Experiment } from './experiment.tsx';
import { RowsOut } from './rows-out.tsx';
import { stepNames } from './step-name.ts';
import { TimeList } from './time-list.tsx';
import { WoodList } from './wood-list.tsx';

/** Clearance, woods and time: below the first screen, and drawn after it. */
const Figures = ({ found }: { found: Found }) => (
  <>
    <AllowanceList found={found.allowances} />
    <WoodList woods={found.woods} byHardness={found.byHardness} />
    <TimeList times={found.times} nameOf={stepNames(found.steps)} />
    <Experiment found={found} />
    <RowsOut />
  </>
);

export default Figures;

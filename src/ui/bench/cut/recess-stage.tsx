import type { StageProps } from '../stage-props.ts';
import { CutStage } from './stage.tsx';

const CutRecessStage = (props: StageProps) => <CutStage {...props} part="recess" />;
export default CutRecessStage;

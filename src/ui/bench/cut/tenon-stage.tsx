import type { StageProps } from '../stage-props.ts';
import { CutStage } from './stage.tsx';

const CutTenonStage = (props: StageProps) => <CutStage {...props} part="tenon" />;
export default CutTenonStage;

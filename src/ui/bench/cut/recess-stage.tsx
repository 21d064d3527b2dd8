import type { StageProps } from '../bench.tsx';
import { CutStage } from './stage.tsx';

const CutRecessStage = (props: StageProps) => <CutStage {...props} part="recess" />;
export default CutRecessStage;

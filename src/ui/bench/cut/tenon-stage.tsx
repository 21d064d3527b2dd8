import type { StageProps } from '../bench.tsx';
import { CutStage } from './stage.tsx';

const CutTenonStage = (props: StageProps) => <CutStage {...props} part="tenon" />;
export default CutTenonStage;

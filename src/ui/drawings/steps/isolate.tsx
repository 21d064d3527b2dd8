import { Collet, Cutter } from '../kit/lathe-above.tsx';
import { BedSide, HeadstockSide } from '../kit/lathe-side.tsx';
import { Arrow, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Plug, Socket } from '../kit/tools.tsx';

/** Plug out of the wall, spindle empty, cutter on the bed. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="isolate"
    labelled={labelled}
    labels={[
      [34, 28, 'look'],
      [236, 40],
      [352, 70, 'look', 'end'],
    ]}
  >
    <path d="M124 72C160 72 132 138 156 138" stroke-width="5" />
    <BedSide bed={152} x1={148} />
    <HeadstockSide x={156} y={82} w={72} bed={152} />
    <Collet x={242} y={82} />
    <Socket x={14} y={72} />
    <Plug x={88} y={72} />
    <Cutter x={320} y={136} r={16} shank={30} />
    <Look>
      <Arrow from={[40, 40]} to={[80, 40]} />
      <Turn at={[284, 132]} r={38} ry={52} from={-78} to={-18} />
    </Look>
  </Sheet>
);

import { Fist } from '../kit/hands.tsx';
import { Banjo, Chuck, Crank, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Ghost, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Plug } from '../kit/tools.tsx';

/** The whole cut by hand with the power off, the turns counted. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="dry-run"
    labelled={labelled}
    labels={[
      [8, 148],
      [196, 30, 'look', 'end'],
      [96, 178, 'look'],
    ]}
  >
    <Bed y={92} />
    <Headstock y={72} w={36} />
    <Collet x={57} y={72} />
    <Cutter x={94} y={72} />
    <Ghost>
      <path d="M72 92v34h34V92z" />
    </Ghost>
    <Banjo x={200} y={108} w={28} lever={false} />
    <Jig x={184} y={108} screw={36} />
    <Chuck x={184} y={108} />
    <Work x={112} y={108} l={32} r={16} />
    <Crank x={278} y={108} arm={24} />
    <Fist at="translate(300 132)" />
    <g transform="translate(28 166) scale(.72)">
      <path d="M36 0h20c10 0 8 8 20 8" stroke-width="5" />
      <Plug x={0} y={0} />
    </g>
    <Look>
      <Turn at={[278, 108]} r={16} ry={42} from={-50} to={-220} />
      <Arrow from={[164, 156]} to={[96, 156]} />
      <Turn at={[218, 24]} r={10} from={-80} to={220} />
      <Turn at={[252, 24]} r={10} from={-80} to={220} />
      <Turn at={[286, 24]} r={10} from={-80} to={220} />
    </Look>
  </Sheet>
);

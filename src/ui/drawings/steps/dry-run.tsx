import { Fist } from '../kit/hands.tsx';
import { Banjo, Chuck, Crank, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Ghost, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Unplugged } from '../kit/tools.tsx';

/** The whole cut by hand with the power off, the turns counted. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="dry-run"
    labelled={labelled}
    labels={[
      [8, 142, 'look'],
      [232, 34, 'look', 'end'],
      [98, 180, 'look'],
    ]}
  >
    <Bed y={92} />
    <Headstock y={72} w={36} />
    <Collet x={57} y={72} />
    <Cutter x={94} y={72} />
    <Ghost>
      <path d="M72 92h16v7h12v-7h6v34H72z" />
    </Ghost>
    <Banjo x={200} y={108} w={28} lever={false} />
    <Jig x={184} y={108} screw={36} />
    <Chuck x={184} y={108} />
    <Work x={112} y={108} l={32} r={16} />
    <Crank x={278} y={108} arm={24} />
    <Fist at="translate(300 132)" />
    <Unplugged at="translate(10 166)" />
    <Look>
      <Turn at={[278, 108]} r={16} ry={42} from={-50} to={-220} />
      <Arrow from={[150, 148]} to={[82, 148]} />
      <path d="M246 16v24M258 16v24M270 16v24M282 16v24" />
    </Look>
  </Sheet>
);

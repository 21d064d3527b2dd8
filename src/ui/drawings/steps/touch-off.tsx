import { Fist } from '../kit/hands.tsx';
import { Chuck, Work } from '../kit/jig-above.tsx';
import { Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Dots, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Cutter turned by hand until it ticks the work; dial at nought. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="touch-off"
    labelled={labelled}
    labels={[
      [178, 62, 'look'],
      [88, 22],
      [324, 152, 'look', 'middle'],
    ]}
  >
    <Headstock y={50} x={8} w={52} />
    <Collet x={73} y={50} />
    <Cutter x={124} y={50} r={30} shank={34} />
    <Chuck x={226} y={112} jaws={22} />
    <Work x={112} y={112} l={84} r={31} />
    <Fist at="translate(88 50)" />
    <Look>
      <Turn at={[124, 46]} r={14} ry={40} from={-140} to={30} />
      <path d="M110 70l-8-8M140 70l8-8M104 82l-9 0M146 82h9" />
    </Look>
    <Dots at={[[124, 81]]} />
    <circle cx="312" cy="90" r="38" fill="var(--sheet)" />
    <circle cx="312" cy="90" r="9" fill="var(--ground)" />
  </Sheet>
);

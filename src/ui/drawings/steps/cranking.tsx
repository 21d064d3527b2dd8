import { Fist, FlatHand } from '../kit/hands.tsx';
import { Banjo, Chuck, Crank, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** One hand on the crank, the other on the body of the jig. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="cranking"
    labelled={labelled}
    labels={[
      [300, 40, 'look'],
      [250, 178, 'look'],
      [176, 24, 'aside', 'end'],
    ]}
  >
    <Bed y={86} />
    <Headstock y={66} w={36} />
    <Collet x={57} y={66} />
    <Cutter x={94} y={66} />
    <Banjo x={200} y={86} w={28} lever={false} />
    <Jig x={184} y={102} screw={36} />
    <Chuck x={184} y={102} />
    <Work x={104} y={102} l={42} r={16} />
    <Crank x={278} y={102} arm={24} />
    <Fist at="translate(300 126)" />
    <FlatHand at="translate(208 94) rotate(64)" />
    <Look>
      <Turn at={[278, 102]} r={18} ry={50} from={-50} to={-225} />
      <Turn at={[94, 66]} r={11} ry={28} from={-150} to={40} />
      <path d="M189 8v172" stroke-dasharray="8 6" />
    </Look>
  </Sheet>
);

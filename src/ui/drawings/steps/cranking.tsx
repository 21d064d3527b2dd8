import { FlatHand, Fist } from '../kit/hands.tsx';
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
      [300, 34, 'look'],
      [206, 34],
      [100, 176, 'look'],
    ]}
  >
    <Bed />
    <Headstock y={76} />
    <Collet x={71} y={76} />
    <Cutter x={108} y={76} />
    <Banjo x={206} y={102} lever={false} />
    <Jig x={190} y={102} screw={48} />
    <Chuck x={190} y={102} />
    <Work x={112} y={102} l={34} />
    <Crank x={298} y={102} arm={24} />
    <Fist at="translate(316 126)" />
    <FlatHand at="translate(210 96) rotate(60)" />
    <Look>
      <Turn at={[298, 102]} r={18} ry={46} from={-60} to={-230} />
      <path d="M194 8v170" stroke-dasharray="8 6" />
    </Look>
  </Sheet>
);

import { Fist } from '../kit/hands.tsx';
import { Banjo, Chuck, Crank, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Dots, Ghost, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** The whole cut by hand with the power off, the turns counted. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="dry-run"
    labelled={labelled}
    labels={[
      [8, 178],
      [262, 34, 'look'],
      [108, 176, 'look'],
    ]}
  >
    <Bed />
    <Headstock y={76} />
    <Collet x={71} y={76} />
    <Cutter x={108} y={76} />
    <Banjo x={206} y={112} lever={false} />
    <Jig x={190} y={112} screw={48} />
    <Chuck x={190} y={112} />
    <Work x={116} y={112} l={34} r={16} />
    <Crank x={298} y={112} arm={24} />
    <Fist at="translate(318 136)" />
    <Look>
      <Turn at={[298, 112]} r={18} ry={44} from={-60} to={-230} />
      <Arrow from={[150, 162]} to={[96, 162]} />
    </Look>
    <Dots at={[[116, 96]]} />
    <Ghost>
      <path d="M96 96v32" />
    </Ghost>
  </Sheet>
);

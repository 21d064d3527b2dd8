import { FlatHand } from '../kit/hands.tsx';
import { Banjo, Chuck, Crank, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Key } from '../kit/tools.tsx';

/** Key and spindle pin out; hands behind the line of the chuck. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="clear"
    labelled={labelled}
    labels={[
      [202, 26, 'look'],
      [64, 176],
      [30, 26],
    ]}
  >
    <Bed />
    <Headstock y={86} />
    <Collet x={71} y={86} />
    <Cutter x={108} y={86} />
    <Banjo x={206} y={100} lever={false} />
    <Jig x={190} y={100} screw={48} />
    <Chuck x={190} y={100} />
    <Work x={124} y={120} l={34} />
    <Crank x={298} y={100} arm={24} />
    <FlatHand at="translate(202 130) rotate(40)" />
    <Key at="translate(130 150) rotate(60)" />
    <Look>
      <path d="M194 8v170" stroke-dasharray="8 6" />
      <Arrow from={[34, 60]} to={[34, 32]} />
    </Look>
  </Sheet>
);

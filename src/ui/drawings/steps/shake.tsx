import { PointingHand } from '../kit/hands.tsx';
import { Banjo, Chuck, Jig, Work } from '../kit/jig-above.tsx';
import { Bed } from '../kit/lathe-above.tsx';
import { Arrow, Dots, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Unplugged } from '../kit/tools.tsx';

/** Power off, one finger at the chuck, pushing and pulling. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="shake"
    labelled={labelled}
    labels={[
      [8, 30, 'look'],
      [12, 172],
    ]}
  >
    <Bed y={70} />
    <Banjo x={204} y={70} lever={false} />
    <Jig x={188} y={70} />
    <Chuck x={188} y={70} />
    <Work x={130} y={70} />
    <PointingHand at="translate(172 106) rotate(62)" />
    <Unplugged at="translate(268 158)" />
    <Look>
      <Arrow from={[142, 116]} to={[142, 160]} both />
    </Look>
    <Dots at={[[172, 105]]} />
  </Sheet>
);

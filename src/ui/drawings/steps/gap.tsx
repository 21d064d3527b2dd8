import { PointingHand } from '../kit/hands.tsx';
import { Banjo, Jig } from '../kit/jig-above.tsx';
import { Bed, Board, Faceplate, Headstock, Tailstock } from '../kit/lathe-above.tsx';
import { Arrow, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Cone backed off; a card tried at the corners between board and jig. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="gap"
    labelled={labelled}
    labels={[
      [172, 30, 'look'],
      [240, 66, 'look'],
      [148, 152, 'look'],
    ]}
  >
    <Bed />
    <Headstock />
    <Faceplate x={71} />
    <Board x={79} y={18} h={156} />
    <Banjo x={104} lever={false} />
    <Jig x={90} />
    <Tailstock x={240} />
    <PointingHand at="translate(98 20) scale(.66)" />
    <Look>
      <path d="M94 10v40M94 182v-40" stroke-width="5" stroke-linecap="butt" />
      <Arrow from={[94, 48]} to={[94, 70]} />
      <Arrow from={[94, 144]} to={[94, 122]} />
      <Arrow from={[234, 78]} to={[280, 78]} />
    </Look>
  </Sheet>
);

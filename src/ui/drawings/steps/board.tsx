import { Board, Faceplate } from '../kit/lathe-above.tsx';
import { BedSide, HeadstockSide } from '../kit/lathe-side.tsx';
import { Arrow, Dots, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** The board flat to the faceplate and down on the bed, from the side. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="board"
    labelled={labelled}
    labels={[
      [178, 60, 'look'],
      [196, 138, 'look'],
      [40, 26],
    ]}
  >
    <BedSide bed={150} />
    <HeadstockSide y={86} w={74} />
    <Faceplate x={96} y={86} r={48} />
    <Board x={104} y={10} h={140} w={16} />
    <Look>
      <Arrow from={[172, 66]} to={[128, 66]} />
      <Arrow from={[172, 106]} to={[128, 106]} />
      <Arrow from={[112, -30]} to={[112, -4]} />
      <path d="M104 40V132M104 150h16" />
    </Look>
    <Dots at={[[104, 42], [104, 130], [112, 150]]} />
  </Sheet>
);

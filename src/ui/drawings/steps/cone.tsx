import { Banjo, Crank, Jig } from '../kit/jig-above.tsx';
import { Bed, Board, Faceplate, Headstock, Tailstock } from '../kit/lathe-above.tsx';
import { Arrow, Dots, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** The cone nips the jig flat to the board; the handle is off. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="cone"
    labelled={labelled}
    labels={[
      [96, 40, 'look'],
      [214, 66, 'look'],
      [252, 178],
    ]}
  >
    <Bed />
    <Headstock />
    <Faceplate x={71} />
    <Board x={79} y={18} h={156} />
    <Banjo x={104} lever={false} />
    <Jig x={90} />
    <Tailstock x={198} />
    <Crank x={214} y={140} arm={22} />
    <Look>
      <Arrow from={[254, 76]} to={[208, 76]} />
      <Arrow from={[204, 112]} to={[212, 132]} />
    </Look>
    <Dots
      at={[
        [90, 71],
        [90, 121],
        [200, 96],
      ]}
    />
  </Sheet>
);

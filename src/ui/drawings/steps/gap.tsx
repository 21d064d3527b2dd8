import { Banjo, Jig } from '../kit/jig-above.tsx';
import { Bed, Board, Faceplate, Headstock, Tailstock } from '../kit/lathe-above.tsx';
import { Arrow, Dots, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Cone backed off; a card tried at the corners between board and jig. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="gap"
    labelled={labelled}
    labels={[
      [116, 34, 'look'],
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
    <Look>
      <path d="M94 62l11-44h6l-11 44zM94 130l11 44h6l-11-44z" fill="var(--sheet)" stroke-width="2" />
      <Arrow from={[234, 78]} to={[280, 78]} />
    </Look>
    <Dots
      at={[
        [91, 71],
        [91, 121],
      ]}
    />
  </Sheet>
);

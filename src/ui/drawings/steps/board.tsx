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
      [242, 92, 'look'],
      [172, 143, 'look'],
      [54, 28],
    ]}
  >
    <BedSide bed={150} />
    <HeadstockSide x={24} y={86} w={96} />
    <Faceplate x={134} y={86} r={48} />
    <Board x={142} y={34} h={116} w={20} />
    <Look>
      <Arrow from={[232, 62]} to={[172, 62]} />
      <Arrow from={[232, 110]} to={[172, 110]} />
      <Arrow from={[152, 3]} to={[152, 28]} />
      <path d="M142 44V130M142 150h20" />
    </Look>
    <Dots
      at={[
        [142, 46],
        [142, 126],
        [152, 150],
      ]}
    />
  </Sheet>
);

import { Banjo, Chuck, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Dots, Ghost, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Square } from '../kit/tools.tsx';

/** The banjo, everything on it, back to the square that stayed. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="banjo-back"
    labelled={labelled}
    labels={[
      [60, 172, 'look'],
      [274, 164, 'look'],
    ]}
  >
    <Bed />
    <Headstock />
    <Collet x={71} />
    <Cutter x={108} r={20} />
    <Ghost>
      <path d="M266 22h74v126h-74z" />
    </Ghost>
    <Square x={186} y={122} blade={106} stock={110} />
    <Banjo x={188} lever={false} />
    <Jig x={176} screw={44} />
    <Chuck x={176} />
    <Work x={122} />
    <Look>
      <Arrow from={[330, 134]} to={[232, 134]} />
    </Look>
    <Dots
      at={[
        [187, 54],
        [187, 140],
      ]}
    />
  </Sheet>
);

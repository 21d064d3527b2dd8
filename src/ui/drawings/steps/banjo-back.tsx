import { Banjo, Chuck, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Dots, Ghost, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Square } from '../kit/tools.tsx';

/** The banjo, everything on it, back to the square that stayed. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="banjo-back"
    labelled={labelled}
    labels={[
      [60, 172, 'look'],
      [240, 28, 'look'],
      [276, 174, 'look'],
    ]}
  >
    <Bed />
    <Headstock />
    <Collet x={71} />
    <Cutter x={108} r={20} />
    <Ghost>
      <path d="M298 56a8 8 0 0 1 8-8h18a8 8 0 0 1 8 8v15h12v50h-12v31a8 8 0 0 1-8 8h-18a8 8 0 0 1-8-8v-31h-12v-50h12z" />
    </Ghost>
    <Square x={186} y={122} blade={106} stock={110} />
    <Banjo x={188} />
    <Jig x={176} screw={44} />
    <Chuck x={176} />
    <Work x={122} />
    <Look>
      <Arrow from={[296, 40]} to={[232, 40]} />
      <Turn at={[205, 154]} r={66} from={-32} to={-8} />
      <path d="M186 18v105H78" />
    </Look>
    <Dots
      at={[
        [187, 54],
        [187, 140],
      ]}
    />
  </Sheet>
);

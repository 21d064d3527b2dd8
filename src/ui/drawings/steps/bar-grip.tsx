import { Banjo, Chuck, Jig } from '../kit/jig-above.tsx';
import { Bed, Collet, Headstock } from '../kit/lathe-above.tsx';
import { Dots } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** One true bar in the collet and in the jig's chuck. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="bar-grip"
    labelled={labelled}
    labels={[
      [70, 62, 'look'],
      [206, 52, 'look'],
      [112, 172],
    ]}
  >
    <Bed />
    <Headstock />
    <path d="M60 90h196v12h-196z" fill="var(--sheet)" />
    <Collet x={71} />
    <Banjo x={272} lever={false} />
    <Jig x={252} screw={40} />
    <Chuck x={252} jaws={6} />
    <Dots at={[[86, 96], [214, 96]]} />
  </Sheet>
);

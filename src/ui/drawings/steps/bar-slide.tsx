import { Banjo, Chuck, Jig } from '../kit/jig-above.tsx';
import { Bed, Collet, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Dots, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Jaws slackened, the bar slides. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="bar-slide"
    labelled={labelled}
    labels={[
      [206, 36, 'look'],
      [96, 62, 'look'],
    ]}
  >
    <Bed />
    <Headstock />
    <path d="M60 90h196v12h-196z" fill="var(--sheet)" />
    <Collet x={71} />
    <Banjo x={272} lever={false} />
    <Jig x={252} screw={40} />
    <Chuck x={252} jaws={14} />
    <Look>
      <Arrow from={[112, 74]} to={[180, 74]} both />
      <Arrow from={[214, 62]} to={[214, 46]} />
    </Look>
    <Dots at={[[214, 96]]} />
  </Sheet>
);

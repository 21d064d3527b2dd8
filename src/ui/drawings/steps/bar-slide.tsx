import { Banjo, Jig } from '../kit/jig-above.tsx';
import { Bed, Collet, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Jaws slackened, the bar slides. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="bar-slide"
    labelled={labelled}
    labels={[
      [222, 22, 'look', 'end'],
      [94, 58, 'look'],
    ]}
  >
    <Bed />
    <Headstock />
    <path d="M60 90h196v12h-196z" fill="var(--sheet)" />
    <Collet x={71} />
    <Banjo x={272} lever={false} />
    <Jig x={252} screw={40} />
    <path d="M222 62h30v68h-30z" fill="var(--sheet)" />
    <path d="M244 62v68" stroke="var(--line)" />
    <path d="M206 64h16v14h-16zM206 114h16v14h-16z" fill="var(--sheet)" stroke="var(--blue)" />
    <Look>
      <Arrow from={[112, 96]} to={[192, 96]} both />
      <Arrow from={[214, 58]} to={[214, 34]} />
      <Arrow from={[214, 134]} to={[214, 158]} />
    </Look>
  </Sheet>
);

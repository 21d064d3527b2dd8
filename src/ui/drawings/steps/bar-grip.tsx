import { Banjo, Chuck, Jig } from '../kit/jig-above.tsx';
import { Bed, Collet, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Dots, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** One true bar in the collet and in the jig's chuck. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="bar-grip"
    labelled={labelled}
    labels={[
      [58, 42, 'look'],
      [182, 42, 'look'],
      [104, 172],
    ]}
  >
    <Bed />
    <Headstock />
    <path d="M60 90h196v12h-196z" fill="var(--wood)" />
    <Collet x={71} />
    <Banjo x={272} lever={false} />
    <Jig x={252} screw={40} />
    <Chuck x={252} jaws={6} />
    <path d="M4 96h354" stroke="var(--blue)" stroke-width="1.5" stroke-dasharray="18 5 4 5" />
    <Look>
      <Arrow from={[84, 52]} to={[84, 76]} />
      <Arrow from={[84, 140]} to={[84, 116]} />
      <Arrow from={[214, 52]} to={[214, 74]} />
      <Arrow from={[214, 140]} to={[214, 118]} />
    </Look>
    <Dots
      at={[
        [84, 96],
        [214, 96],
      ]}
    />
  </Sheet>
);

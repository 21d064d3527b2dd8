import { Banjo, Chuck, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** First start: slowest, and out of the line of the cutter. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="power-on"
    labelled={labelled}
    labels={[
      [118, 22, 'look'],
      [8, 24],
      [234, 178, 'look'],
    ]}
  >
    <Bed y={70} />
    <Headstock y={60} />
    <Collet x={71} y={60} />
    <Cutter x={108} y={60} />
    <Banjo x={206} y={80} lever={false} />
    <Jig x={190} y={80} screw={48} />
    <Chuck x={190} y={80} />
    <Work x={126} y={80} />
    <Look>
      <path d="M108 4V182" stroke-dasharray="8 6" />
      <Turn at={[108, 60]} r={12} ry={30} from={-130} to={60} />
    </Look>
    <g fill="var(--sheet)">
      <path d="M196 152c0-12 14-18 34-18s34 6 34 18s-14 14-34 14s-34-2-34-14z" />
      <circle cx="230" cy="146" r="14" />
    </g>
  </Sheet>
);

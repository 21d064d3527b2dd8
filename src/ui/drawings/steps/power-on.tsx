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
      [124, 18, 'look'],
      [6, 180],
      [358, 134, 'look', 'end'],
    ]}
  >
    <Bed y={66} />
    <Headstock y={56} w={44} />
    <Collet x={65} y={56} />
    <Cutter x={108} y={56} r={22} shank={22} />
    <Banjo x={206} y={82} lever={false} />
    <Jig x={190} y={76} screw={48} />
    <Chuck x={190} y={76} />
    <Work x={126} y={76} />
    <Look>
      <path d="M108 4V182" stroke-dasharray="8 6" />
      <Turn at={[108, 56]} r={12} ry={32} from={-150} to={40} />
    </Look>
    <g fill="var(--sheet)">
      <path d="M204 152l8-22a6 6 0 0 1 12 2l-6 22M270 152l-8-22a6 6 0 0 0-12 2l6 22" />
      <path d="M196 160c0-12 18-16 41-16s41 4 41 16s-18 16-41 16s-41-4-41-16z" />
      <path d="M221 154a16 16 0 1 1 32 0a16 16 0 1 1-32 0z" />
      <path d="M233 139l4-6l4 6" />
    </g>
    <g>
      <path d="M12 142a30 30 0 0 1 60 0" stroke="var(--line)" stroke-width="4" />
      <circle cx="42" cy="142" r="17" fill="var(--sheet)" />
      <path d="M42 142L22 142" stroke="var(--blue)" stroke-width="4" />
      <path d="M8 148l-3 10h6zM76 148l-8 14h16z" stroke="none" fill="var(--soft)" />
    </g>
  </Sheet>
);

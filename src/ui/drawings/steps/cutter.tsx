import { Cutter } from '../kit/lathe-above.tsx';
import { Arrow, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Cutter into the collet; nut and draw-bar turned tight. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="cutter"
    labelled={labelled}
    labels={[
      [254, 44, 'look'],
      [6, 34],
      [146, 34],
      [256, 178],
    ]}
  >
    <g fill="var(--sheet)">
      <path d="M76 46h76v92h-76z" />
      <path d="M152 76h18v32h-18z" />
      <path d="M170 68h24l12 8v32l-12 8h-24z" />
      <path d="M22 86h54v12h-54z" />
      <path d="M14 74h14v36h-14z" />
    </g>
    <path d="M98 46v92M130 46v92" stroke="var(--line)" />
    <path d="M76 86h130M76 98h130" stroke="var(--line)" stroke-dasharray="5 4" />
    <path d="M178 68v48M186 68v48" stroke-width="1.3" />
    <Cutter x={276} y={92} r={34} shank={48} />
    <g fill="var(--wood)" transform="rotate(14 300 146)">
      <path d="M266 139h64v13h-64z" />
    </g>
    <Look>
      <Arrow from={[262, 68]} to={[214, 68]} />
      <Arrow from={[326, 142]} to={[356, 150]} />
      <Turn at={[21, 92]} r={13} ry={32} from={-150} to={60} />
      <Turn at={[188, 92]} r={13} ry={40} from={-150} to={60} />
    </Look>
  </Sheet>
);

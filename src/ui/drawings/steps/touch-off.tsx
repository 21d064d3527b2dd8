import { Fist } from '../kit/hands.tsx';
import { Chuck, Work } from '../kit/jig-above.tsx';
import { Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Dots, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Unplugged } from '../kit/tools.tsx';

const marks = Array.from({ length: 20 }, (_, i) => `rotate(${i * 18} 306 92)`);

/** Power off, cutter turned by hand until it ticks the work; dial at zero. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="touch-off"
    labelled={labelled}
    labels={[
      [186, 66, 'look'],
      [8, 178],
      [306, 162, 'look', 'middle'],
    ]}
  >
    <path d="M28 48h16v16h-16z" fill="var(--sheet)" />
    <path d="M16 20h12v72h-12z" fill="var(--sheet)" />
    <Headstock y={56} x={44} w={40} />
    <Collet x={97} y={56} />
    <Cutter x={146} y={56} r={32} shank={30} />
    <Chuck x={240} y={122} jaws={23} />
    <Work x={126} y={122} l={84} r={33} />
    <Fist at="translate(22 92) rotate(82)" />
    <Unplugged at="translate(50 140)" />
    <Look>
      <Turn at={[146, 56]} r={13} ry={40} from={-150} to={40} />
      <Turn at={[22, 50]} r={13} ry={34} from={-150} to={10} />
      <path d="M132 76l-9-7M128 85h-11M162 85h11M161 77l9-7" />
    </Look>
    <Dots at={[[146, 88]]} />
    <g>
      <circle cx="306" cy="92" r="44" fill="var(--sheet)" />
      {marks.map((turn, i) => (
        <path key={turn} d={i % 5 ? 'M306 50v7' : 'M306 50v11'} transform={turn} stroke-width="1.5" />
      ))}
      <circle cx="306" cy="92" r="2" fill="var(--ink)" />
      <path d="M306 66a6 8 0 1 0 .1 0z" stroke-width="2.5" />
      <path d="M306 46l-7-14h14z" fill="var(--blue)" stroke="var(--blue)" />
    </g>
  </Sheet>
);

import { BanjoSide, BedSide, Collar, HeadstockSide, JigSide, LockLever } from '../kit/lathe-side.tsx';
import { Arrow, Dots, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** The bar held at both ends while collar and lock go home. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="bar-lock"
    labelled={labelled}
    labels={[
      [182, 92, 'look', 'end'],
      [358, 132, 'look', 'end'],
      [92, 22],
    ]}
  >
    <BedSide />
    <HeadstockSide y={48} w={48} />
    <path d="M60 43h120v8h-120z" fill="var(--sheet)" />
    <g fill="var(--sheet)">
      <path d="M70 36h14l8 5v13l-8 5h-14zM142 36h14v7h-14zM142 51h14v7h-14zM156 20h24v54h-24z" />
    </g>
    <BanjoSide x={228} />
    <JigSide x={228} y={46} foot={84} />
    <LockLever x={256} y={118} dx={50} dy={-10} />
    <Collar x={228} y={80} />
    <Look>
      <Arrow from={[194, 76]} to={[194, 98]} />
      <Arrow from={[262, 76]} to={[262, 98]} />
      <Turn at={[256, 118]} r={72} from={-38} to={-14} />
    </Look>
    <Dots
      at={[
        [88, 47],
        [148, 47],
        [206, 96],
        [250, 96],
      ]}
    />
  </Sheet>
);

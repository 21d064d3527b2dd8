import { BanjoSide, BedSide, Collar, HeadstockSide, JigSide, LockLever } from '../kit/lathe-side.tsx';
import { Arrow, Dots, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** The bar held at both ends while collar and lock go home. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="bar-lock"
    labelled={labelled}
    labels={[
      [150, 84, 'look', 'end'],
      [300, 92, 'look'],
      [108, 24],
    ]}
  >
    <BedSide />
    <HeadstockSide y={40} w={56} />
    <path d="M78 36h80v8h-80z" fill="var(--sheet)" />
    <BanjoSide x={220} />
    <JigSide x={220} y={40} foot={84} />
    <LockLever x={248} y={118} dx={46} dy={-10} />
    <Collar x={220} y={80} />
    <Look>
      <Arrow from={[186, 68]} to={[186, 92]} />
      <Turn at={[248, 118]} r={68} from={-42} to={-16} />
    </Look>
    <Dots at={[[198, 96], [242, 96]]} />
  </Sheet>
);

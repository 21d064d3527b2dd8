import { BanjoSide, BedSide, Collar, JigSide, LockLever } from '../kit/lathe-side.tsx';
import { Arrow, Dots, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Collar down on the banjo's boss, lock lever tight, from the side. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="lock-post"
    labelled={labelled}
    labels={[
      [2, 84, 'look'],
      [262, 96, 'look'],
      [84, 128, 'aside', 'end'],
    ]}
  >
    <BedSide />
    <BanjoSide x={150} />
    <JigSide x={150} y={32} foot={84} />
    <LockLever x={178} y={118} dx={52} dy={-10} />
    <Collar x={150} y={80} />
    <Look>
      <Arrow from={[116, 66]} to={[116, 92]} />
      <Arrow from={[184, 66]} to={[184, 92]} />
      <Turn at={[178, 118]} r={74} from={-42} to={-16} />
    </Look>
    <Dots
      at={[
        [128, 96],
        [172, 96],
      ]}
    />
  </Sheet>
);

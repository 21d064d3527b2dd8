import { FlatHand } from '../kit/hands.tsx';
import { Banjo, Chuck, Crank, Jig, Work } from '../kit/jig-above.tsx';
import { Bed, Collet, Cutter, Headstock } from '../kit/lathe-above.tsx';
import { Arrow, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Key, Pin } from '../kit/tools.tsx';

/** Key and spindle pin out; hands behind the line of the chuck. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="clear"
    labelled={labelled}
    labels={[
      [206, 24, 'look'],
      [40, 178],
      [8, 22],
    ]}
  >
    <Bed y={92} />
    <Headstock y={86} w={44} />
    <Collet x={65} y={86} />
    <Cutter x={102} y={86} />
    <Banjo x={210} y={92} w={28} lever={false} />
    <Jig x={194} y={98} screw={36} />
    <Chuck x={194} y={98} />
    <Work x={122} y={98} l={32} r={16} />
    <Crank x={288} y={98} arm={24} />
    <FlatHand at="translate(226 122) rotate(66)" />
    <FlatHand at="translate(330 112) scale(-1 1) rotate(66)" />
    <Pin at="translate(86 20)" />
    <Key at="translate(122 160) rotate(-122)" />
    <Look>
      <path d="M199 8v172" stroke-dasharray="8 6" />
      <Arrow from={[58, 70]} to={[58, 24]} />
      <Arrow from={[178, 138]} to={[160, 164]} />
    </Look>
  </Sheet>
);

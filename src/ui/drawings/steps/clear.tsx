import { Fist, FlatHand } from '../kit/hands.tsx';
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
      [134, 170, 'aside', 'end'],
      [62, 24],
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
    <FlatHand at="translate(226 116) rotate(66)" />
    <Fist at="translate(310 122)" />
    <path d="M30 44v18" stroke="var(--line)" stroke-dasharray="4 4" />
    <Pin at="translate(30 14) scale(.78)" />
    <Key at="translate(174 175) rotate(180) scale(.9)" />
    <FlatHand at="translate(16 156) scale(.6)" />
    <path d="M14 180L66 138" stroke-width="5" />
    <Look>
      <path d="M199 8v172" stroke-dasharray="8 6" />
      <Arrow from={[50, 38]} to={[50, 8]} />
      <Arrow from={[146, 142]} to={[146, 176]} />
    </Look>
  </Sheet>
);

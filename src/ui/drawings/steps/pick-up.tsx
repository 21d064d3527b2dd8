import { Arrow, Dots, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** The tip in the old groove, large, free on both sides. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="pick-up"
    labelled={labelled}
    labels={[
      [112, 76, 'look', 'end'],
      [252, 76, 'look'],
      [112, 164, 'aside', 'middle'],
      [246, 30],
    ]}
  >
    <path d="M8 92H25l37 64h10l37-64h31l37 64h10l37-64h31l37 64h10l37-64h15V180H8z" fill="var(--wood)" />
    <path d="M12 168q80 4 160 0t180 2M10 112q8 3 22 3M340 118q8 2 14 0" stroke-width="1" />
    <path d="M130 8h104v47l-50 87h-4l-50-87z" fill="var(--ink)" />
    <Look>
      <Arrow from={[120, 84]} to={[146, 104]} />
      <Arrow from={[244, 84]} to={[218, 104]} />
    </Look>
    <Dots
      at={[
        [156, 110],
        [208, 110],
      ]}
    />
  </Sheet>
);

import { Arrow, Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** The tip in the old groove, large, free on both sides. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="pick-up"
    labelled={labelled}
    labels={[
      [112, 76, 'look', 'end'],
      [252, 76, 'look'],
      [112, 164, 'wood', 'middle'],
      [246, 30],
    ]}
  >
    <path d="M8 92H25l37 64h10l37-64h31l37 64h10l37-64h31l37 64h10l37-64h15V180H8z" fill="var(--wood)" />
    <path d="M12 168q80 4 160 0t180 2M10 112q8 3 22 3M340 118q8 2 14 0" stroke-width="1" />
    <path
      d="M140 92h11.3l28.7 50l-3 14h10l-3-14l28.7-50h11.3l-37 64h-10z"
      fill="var(--blue)"
      fill-opacity=".3"
      stroke="none"
    />
    <path d="M130 8h104v47l-50 87h-4l-50-87z" fill="var(--ink)" />
    <Look>
      <Arrow from={[122, 84]} to={[154, 106]} />
      <Arrow from={[242, 84]} to={[210, 106]} />
    </Look>
  </Sheet>
);

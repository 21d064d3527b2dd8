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
      [14, 172],
      [246, 30],
    ]}
  >
    <path d="M8 92H38l32 56 32-56H134l48 74 0 0 48-74" stroke="none" />
    <path
      d="M8 92H30L62 147h10L104 92H130L177 160h10L234 92H260L292 147h10L334 92H354V180H8z"
      fill="var(--wood)"
    />
    <path d="M12 168q80 4 160 0t180 2M12 120q10 4 30 4M320 134q20 2 34 0" stroke-width="1" />
    <path d="M130 8h104v38l-50 96h-4l-50-96z" fill="var(--ink)" />
    <Look>
      <Arrow from={[120, 84]} to={[146, 104]} />
      <Arrow from={[244, 84]} to={[218, 104]} />
    </Look>
    <Dots
      at={[
        [152, 110],
        [212, 110],
      ]}
    />
  </Sheet>
);

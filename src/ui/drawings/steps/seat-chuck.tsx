import { Arrow, Dots, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Jig's nose wiped, the chuck (in section) going home to the shoulder. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="seat-chuck"
    labelled={labelled}
    labels={[
      [92, 178, 'look', 'middle'],
      [176, 24, 'look'],
      [354, 180, 'look', 'end'],
    ]}
  >
    <g fill="var(--sheet)">
      <path d="M316 76h38v28h-38z" />
      <path d="M324 104l6-28M336 104l6-28" stroke-width="1.3" />
      <path d="M244 40h72v100h-72z" />
      <path d="M230 52h14v76h-14z" />
      <path d="M166 68h64v44h-64z" />
    </g>
    <path d="M172 112l8-44M184 112l8-44M196 112l8-44M208 112l8-44M220 112l6-44" stroke-width="1.4" />
    <g fill="var(--sheet)">
      <path d="M66 22h60v46h-44v44h44v46h-60z" />
      <path d="M38 34h28v24h-28zM38 78h28v24h-28zM38 122h28v24h-28z" />
    </g>
    <path
      d="M72 28l40 34M72 44l28 24M98 28l28 24M72 60l8 8M72 150l30-26M84 158l40-34M72 132l14-14M112 158l14-12"
      stroke="var(--line)"
      stroke-width="1.3"
    />
    <path
      d="M212 44c-8-10-14-14-26-12c-8 16 4 22 0 34c10 6 16 2 24 8c6-4 12 0 18-2c-4-12 4-16-2-26c-6-4-8-4-14-2z"
      fill="var(--sheet)"
    />
    <path d="M194 40c4 8 2 16 6 24M208 46c0 8 4 14 4 22" stroke-width="1.3" />
    <Look>
      <Arrow from={[104, 90]} to={[152, 90]} />
      <Turn at={[26, 90]} r={14} ry={58} from={-120} to={60} />
      <Arrow from={[256, 156]} to={[312, 156]} />
      <path d="M230 54v72M126 24v42M126 114v42" />
    </Look>
    <Dots
      at={[
        [230, 60],
        [230, 120],
        [126, 44],
        [126, 136],
      ]}
    />
  </Sheet>
);

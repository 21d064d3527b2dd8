import { Dots, Look, Turn } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';
import { Square } from '../kit/tools.tsx';

/** Square on the bed's edge, blade along the banjo, from above and close. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="square-banjo"
    labelled={labelled}
    labels={[
      [84, 26, 'look'],
      [282, 172, 'look'],
      [300, 86],
    ]}
  >
    <path d="M8 34H354V54H8zM8 104H354V124H8z" fill="var(--ground)" />
    <g fill="var(--sheet)">
      <path d="M172 18a10 10 0 0 1 10-10h44a10 10 0 0 1 10 10v150a12 12 0 0 1-12 12h-40a12 12 0 0 1-12-12z" />
      <path d="M196 24h16v70h-16z" fill="var(--ground)" />
      <circle cx="204" cy="78" r="17" />
    </g>
    <path d="M196 70l16 16M196 86l16-16" stroke="none" />
    <Square x={170} y={124} blade={112} stock={120} />
    <path d="M204 150h62" stroke-width="7" />
    <circle cx="204" cy="150" r="11" fill="var(--sheet)" />
    <circle cx="270" cy="150" r="8" fill="var(--ink)" />
    <Look>
      <Turn at={[204, 150]} r={66} from={-32} to={-6} />
    </Look>
    <Dots
      at={[
        [171, 28],
        [171, 66],
        [171, 106],
      ]}
    />
  </Sheet>
);

import { Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Shield, hair and sleeve; glove and ring struck out. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="protect"
    labelled={labelled}
    labels={[
      [100, 30, 'look'],
      [4, 26],
      [166, 84],
      [236, 178],
    ]}
  >
    <g fill="var(--sheet)">
      <circle cx="22" cy="74" r="12" />
      <path d="M58 178v-34c-20-8-28-28-28-50c0-28 18-46 44-46c24 0 36 16 36 36l8 18c1 3-1 4-4 5l-4 1v18c0 8-4 10-12 10l-8 0v42z" />
    </g>
    <path d="M34 70c16-2 40-8 52-22M100 92h6M108 118h-10" stroke-width="1.6" />
    <circle cx="98" cy="82" r="2.5" fill="var(--ink)" />
    <Look>
      <path d="M32 66L106 54C132 64 138 112 124 146L104 142" />
      <path d="M72 60a5 5 0 1 0 .1 0z" fill="var(--blue)" />
    </Look>
    <path d="M160 140h60c8-8 20-12 26-14" fill="var(--sheet)" stroke="none" />
  </Sheet>
);

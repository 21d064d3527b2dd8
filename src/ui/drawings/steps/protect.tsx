import { Fist } from '../kit/hands.tsx';
import { Look } from '../kit/marks.tsx';
import { Sheet, type StepDrawingProps } from '../kit/sheet.tsx';

/** Shield, hair and sleeve; glove and ring struck out. */
export default ({ labelled }: StepDrawingProps) => (
  <Sheet
    of="protect"
    labelled={labelled}
    labels={[
      [126, 28, 'look'],
      [4, 24],
      [176, 66, 'look'],
      [354, 178, 'aside', 'end'],
    ]}
  >
    <g fill="var(--sheet)">
      <circle cx="20" cy="78" r="13" />
      <path d="M58 182v-36c-20-8-28-28-28-50c0-28 18-48 44-48c24 0 36 16 36 36l8 18c1 3-1 4-4 5l-4 1v18c0 8-4 10-12 10h-8v46z" />
    </g>
    <path d="M32 76c14 0 30-4 40-10M100 92h6M108 120h-10" stroke-width="1.6" />
    <circle cx="98" cy="86" r="2.5" fill="var(--ink)" />
    <g stroke="var(--blue)" stroke-width="3">
      <path d="M34 74l78-18" stroke-width="7" />
      <path d="M112 54c22 8 34 62 18 108l-30-10c-4-28-6-60-10-92z" />
    </g>
    <g fill="var(--sheet)">
      <Fist at="translate(184 112) scale(1.15)" />
      <path d="M224 98l36-6v40l-36-6z" />
      <path d="M250 84h14a6 6 0 0 1 6 6v44a6 6 0 0 1-6 6h-14a6 6 0 0 1-6-6v-44a6 6 0 0 1 6-6z" />
      <path d="M270 88h22v48h-22" />
    </g>
    <path d="M250 88v48M258 86v52" stroke-width="1.3" />
    <Look>
      <path d="M236 152h30m-9-6l9 6l-9 6" />
    </Look>
    <g fill="var(--sheet)">
      <path
        d="M314 76v-44a5 5 0 0 1 10 0v-14a5 5 0 0 1 10 0v-2a5 5 0 0 1 10 0v6a5 5 0 0 1 10 0v54z"
        transform="translate(-4 14)"
      />
      <path d="M310 58l-12-10c-6-4-10 2-6 8l18 20" />
      <path d="M308 90h44v12h-44z" />
    </g>
    <circle cx="332" cy="140" r="13" stroke-width="5" />
    <path d="M326 122l6-8 8 0 4 6-8 8z" fill="var(--sheet)" />
    <path d="M290 104L358 18M310 158L354 122" stroke="var(--ink)" stroke-width="4" />
  </Sheet>
);

import { type Allowances, allowances } from './allowance.ts';
import type { JointTable } from './joint-row.ts';
import { type StepLinks, stepLinks } from './step-links.ts';
import { type StepTime, stepTimes } from './step-times.ts';
import { type WoodsByPitch, woodsByPitch } from './woods-by-pitch.ts';

/** Everything the findings say of a log. */
export interface Findings {
  readonly table: JointTable;
  readonly links: StepLinks;
  readonly woods: WoodsByPitch;
  readonly allowances: Allowances;
  readonly times: readonly StepTime[];
}

/** Reckons it all, in turn; `onPart` hears the share done before each part, for a page that waits. */
export const findingsOf = (table: JointTable, onPart: (share: number) => void = () => {}): Findings => {
  onPart(0.2);
  const links = stepLinks(table);
  onPart(0.6);
  const woods = woodsByPitch(table);
  onPart(0.8);
  return { table, links, woods, allowances: allowances(table), times: stepTimes(table) };
};

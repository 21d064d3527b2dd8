import type { FirstTry, JointTable } from '../rows/joint-row.ts';
import { type Allowances, allowances } from './allowance.ts';
import { byHardness } from './by-hardness.ts';
import type { ByHardness } from './hardness-lines.ts';
import { type StepLinks, stepLinks } from './step-links.ts';
import { type StepTime, stepTimes } from './step-times.ts';
import { type WoodsByPitch, woodsByPitch } from './woods-by-pitch.ts';

/** Everything the findings say about a log. The rows stay in the worker: a large log has too many to copy to the page. */
export interface Findings {
  readonly rows: number;
  readonly firstTries: Readonly<Record<FirstTry, number>>;
  readonly steps: JointTable['steps'];
  readonly leftOut: JointTable['leftOut'];
  readonly links: StepLinks;
  readonly woods: WoodsByPitch;
  readonly byHardness: ByHardness | null;
  readonly allowances: Allowances;
  readonly times: readonly StepTime[];
}

/** Computes all findings, one after another. `onPart` is called with the share done, 0 to 1. */
export const findingsOf = (table: JointTable, onPart: (share: number) => void = () => {}): Findings => {
  const firstTries = { right: 0, eased: 0, failed: 0, scrapped: 0, unknown: 0 };
  for (const { firstTry } of table.rows) firstTries[firstTry]++;
  const links = stepLinks(table);
  onPart(0.7);
  const woods = woodsByPitch(table);
  onPart(0.8);
  const hardness = byHardness(table);
  onPart(0.85);
  return {
    rows: table.rows.length,
    firstTries,
    steps: table.steps,
    leftOut: table.leftOut,
    links,
    woods,
    byHardness: hardness,
    allowances: allowances(table),
    times: stepTimes(table),
  };
};

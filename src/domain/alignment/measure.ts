import type { Result } from '../result.ts';
import type { Reading } from '../setup/reading.ts';
import { type Millimetres, mm } from '../units/brands.ts';
import { angleFromGap, angleFromSweep, type MeasuredAngle } from './gauge.ts';

/** A reading from which an angle follows. */
export type AngleReading = Exclude<Reading, { readonly kind: 'turns' }>;

/**
 * How well a turner reads (standard uncertainty), mm. Estimates of this project, measured by nobody: paper, feeler or card that
 * "just goes in", a rule along an edge, and a dial indicator.
 */
const READ = { paper: 0.03, shareOfGap: 0.05, rule: 1, indicator: 0.01 } as const;

const gapUncertainty = (gap: number): Millimetres => mm(Math.hypot(READ.paper, READ.shareOfGap * gap));

/** The angle of a reading with its uncertainty, rad. Refuses a gap beyond 50 mm or a length under 1 mm. */
export const measuredAngle = (reading: AngleReading): Result<MeasuredAngle> => {
  if (reading.kind === 'sweep')
    return angleFromSweep(
      { value: reading.difference.mm, uncertainty: mm(READ.indicator) },
      { value: reading.radius.mm, uncertainty: mm(READ.rule) },
    );
  return angleFromGap(
    { value: reading.gap.mm, uncertainty: gapUncertainty(reading.gap.mm) },
    { value: reading.over.mm, uncertainty: mm(READ.rule) },
  );
};

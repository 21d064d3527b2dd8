import { useEffect } from 'preact/hooks';
import { findings, reckonFindings } from '../../../app/findings.ts';
import { settings } from '../../../app/session.ts';
import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import { tenonForClearance } from '../../../domain/joint/fit.ts';
import { amountWords, sizeWords } from '../plan/words.ts';
import { ownAllowanceWords as words } from './own-allowance-words.ts';

/** Beside the geometric tenon, the one that the log's own trials at this pitch speak for; nothing until there are some. */
const OwnAllowance = ({ calculated }: { calculated: CalculatedBox }) => {
  useEffect(() => {
    reckonFindings();
  }, []);
  const { unit } = settings.value;
  const { pair } = calculated;
  const mine = findings.value.found?.allowances.pitches.find(
    (allowance) => allowance.joints > 0 && Math.abs(allowance.pitch - pair.pitch) < 1e-3,
  );
  const tenon = mine && tenonForClearance(pair, mine.clearance.value);
  if (!mine || !tenon?.ok) return null;
  return (
    <p>
      {words.mine(
        sizeWords(tenon.value, unit),
        amountWords(mine.clearance.value, unit),
        amountWords(mine.clearance.low, unit),
        amountWords(mine.clearance.high, unit),
        mine.joints,
      )}
    </p>
  );
};

export default OwnAllowance;

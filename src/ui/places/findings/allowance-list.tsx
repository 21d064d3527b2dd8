import { settings } from '../../../app/session.ts';
import type { Allowance, Allowances } from '../../../domain/findings/allowance.ts';
import { type Millimetres, mm } from '../../../domain/units/brands.ts';
import { writeLength, writePitch } from '../../../domain/units/write-quantity.ts';
import { TrialStrip } from '../../drawings/trial-strip.tsx';
import { findingsWords as words } from '../../text/findings-words.ts';

/** Clearances are spoken of in thou by inch users, in hundredths by the others. */
const clearanceWords = (length: number): string =>
  writeLength(mm(length), settings.value.unit === 'in' ? 'thou' : 'mm');

/** What clearance has worked, by pitch, with every trial behind it. */
export const AllowanceList = ({ found: { pitches, silent } }: { found: Allowances }) => {
  const told = pitches.filter((pitch) => pitch.joints > 0);
  if (told.length === 0) return null;
  return (
    <section>
      <h2>{words.allowance}</h2>
      {told.map((allowance) => (
        <AtPitch key={allowance.pitch} allowance={allowance} />
      ))}
      {silent > 0 && <p class="soft">{words.allowanceSilent(silent)}</p>}
    </section>
  );
};

const AtPitch = ({ allowance }: { allowance: Allowance }) => {
  const { pitch, clearance, geometric, joints, contradictory, marks } = allowance;
  const count = (verdict: string) => marks.filter((mark) => mark.verdict === verdict).length;
  return (
    <article>
      <h3>{words.allowanceAt(writePitch(pitch as Millimetres, 'tpi'), clearanceWords(clearance.value))}</h3>
      <TrialStrip
        marks={marks}
        low={clearance.low}
        high={clearance.high}
        estimate={clearance.value}
        label={words.allowanceStrip(count('tight'), count('right'), count('slack'))}
        axis={clearanceWords}
        words={{ tight: words.tight, right: words.right, slack: words.slack }}
      />
      <p class="soft">
        {words.allowanceBetween(clearanceWords(clearance.low), clearanceWords(clearance.high), joints)}{' '}
        {words.allowanceUsual(clearanceWords(geometric))}
        {contradictory > 0 && ` ${words.allowanceContradictory(contradictory)}`}
      </p>
    </article>
  );
};

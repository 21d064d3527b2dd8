import { settings } from '../../../app/session.ts';
import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import type { MeasuredTenon } from '../../../domain/box/measured.ts';
import { passesTo } from '../../../domain/box/pair.ts';
import { targetFor } from '../../../domain/joint/fit-target.ts';
import type { TenonCheck } from '../../../domain/joint/tenon-check.ts';
import { writePercent } from '../../../domain/units/write-quantity.ts';
import { mendWords } from '../limit-words.ts';
import { fitWords, tenonTaperWords, tenonWords as words } from '../measure-words.ts';
import { BigAnswer } from '../plan/big-answer.tsx';
import { dialWords } from '../plan/rows.ts';
import { amountWords, sizeWords } from '../plan/words.ts';

interface Props {
  readonly calculated: CalculatedBox;
  readonly tenon: MeasuredTenon;
  readonly check: TenonCheck;
}

/** Over, under or on size, what that does to the fit, what must be mended, or the depth that suits it as it is. */
export const TenonVerdict = ({ calculated, tenon, check }: Props) => {
  const { unit } = settings.value;
  const { target, plan } = calculated;
  const { mend, size } = check;
  const band = targetFor(plan.clearance.clearance);
  const [first, second] = tenon.counted;
  const measured = first && !second ? first.diameter.text : sizeWords(tenon.mean, unit);
  return (
    <>
      {size !== 'right' ? (
        <BigAnswer
          before={size === 'over' ? words.over : words.under}
          text={amountWords(Math.abs(check.over), unit)}
        />
      ) : (
        !mend && <p class="on-size">{words.right}</p>
      )}
      {mend && (
        <p class="ask" role="alert">
          {mendWords(mend, calculated, unit)}
        </p>
      )}
      <p>
        {words.measured(measured, sizeWords(target.tenon, unit))}.{' '}
        {check.isWithinError && words.withinError(amountWords(Math.abs(check.over), unit))}
      </p>
      {band.ok && mend?.kind !== 'new-tenon' && (
        <p>
          {words.ifCut} <b>{fitWords(check, band.value, unit)}</b>
        </p>
      )}
      {tenon.taper !== null && <p>{tenonTaperWords(tenon.taper, unit)}</p>}
      {size !== 'right' && !mend && <OtherWay calculated={calculated} check={check} />}
    </>
  );
};

/** The thread cut deeper or shallower instead, so that the clearance is as planned. */
const OtherWay = ({ calculated, check }: Omit<Props, 'tenon'>) => {
  const { unit } = settings.value;
  const passes = passesTo(calculated, check.depth);
  if (!passes.ok) return null;
  const last = passes.value.at(-1);
  const dial = last ? dialWords(last) : null;
  const depth = sizeWords(check.depth, unit);
  const planned = sizeWords(calculated.pair.tenon.depth, unit);
  const isOver = check.size === 'over';
  return (
    <section>
      <h3>{words.instead}</h3>
      <p>
        {isOver ? words.deeper(depth, planned) : words.shallower(depth, planned)} {dial && words.dial(dial)}
      </p>
      {!isOver && <p>{words.engages(writePercent(check.fitAtDepth.percentOf75))}</p>}
    </section>
  );
};

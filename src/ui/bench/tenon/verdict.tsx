import { settings } from '../../../app/session.ts';
import type { CalculatedBox } from '../../../domain/box/calculate.ts';
import type { MeasuredTenon } from '../../../domain/box/measured.ts';
import { passesTo } from '../../../domain/box/pair.ts';
import { targetFor } from '../../../domain/joint/fit-target.ts';
import type { TenonCheck } from '../../../domain/joint/tenon-check.ts';
import { writePercent } from '../../../domain/units/write-quantity.ts';
import { fitWords, tenonTaperWords, tenonWords as words } from '../measure-words.ts';
import { BigAnswer } from '../plan/big-answer.tsx';
import { dialWords } from '../plan/rows.ts';
import { amountWords, sizeWords } from '../plan/words.ts';

interface Props {
  readonly calculated: CalculatedBox;
  readonly tenon: MeasuredTenon;
  readonly check: TenonCheck;
}

/** Over, under or on size, what that does to the fit, and the two ways out. */
export const TenonVerdict = ({ calculated, tenon, check }: Props) => {
  const { unit } = settings.value;
  const { target, plan } = calculated;
  const band = targetFor(plan.clearance.clearance);
  const [first, second] = tenon.counted;
  const measured = first && !second ? first.diameter.text : sizeWords(tenon.mean, unit);
  const isThread = check.fit.engagedHeight > 0;
  return (
    <>
      {check.verdict === 'right' ? (
        <p class="on-size">{words.right}</p>
      ) : (
        <BigAnswer
          before={check.verdict === 'over' ? words.over : words.under}
          text={amountWords(Math.abs(check.over), unit)}
        />
      )}
      <p>{words.measured(measured, sizeWords(target.tenon, unit))}.</p>
      {band.ok && isThread && (
        <p>
          {words.ifCut} <b>{fitWords(check, band.value, unit)}</b>
        </p>
      )}
      {tenon.taper !== null && <p>{tenonTaperWords(tenon.taper, unit)}</p>}
      {check.verdict !== 'right' &&
        (isThread ? <OtherWay calculated={calculated} check={check} /> : <p class="ask">{words.noThread}</p>)}
    </>
  );
};

/** The thread cut deeper or shallower instead, so that the clearance is as planned. */
const OtherWay = ({ calculated, check }: Omit<Props, 'tenon'>) => {
  const { unit } = settings.value;
  const isOver = check.verdict === 'over';
  const passes = passesTo(calculated, check.depthToSuit);
  // Beyond the V there is no such depth.
  if (!passes.ok) return null;
  const last = passes.value.at(-1);
  const dial = last ? dialWords(last) : null;
  const depth = sizeWords(check.depthToSuit, unit);
  const planned = sizeWords(calculated.pair.tenon.depth, unit);
  return (
    <section>
      <h3>{words.instead}</h3>
      <p>
        {isOver ? words.deeper(depth, planned) : words.shallower(depth, planned)} {dial && words.dial(dial)}
      </p>
      {isOver && check.fit.tenonCrestGap < 0 && <p class="ask">{words.crestsRub}</p>}
      {!isOver && <p>{words.engages(writePercent(check.fit.percentOf75))}</p>}
    </section>
  );
};

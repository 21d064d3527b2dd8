import { passesTo, type Reckoned } from '../../../app/plan-of.ts';
import { settings } from '../../../app/session.ts';
import type { TenonMeasure } from '../../../app/tenon-of.ts';
import { targetFor } from '../../../domain/joint/fit-target.ts';
import type { TenonCheck } from '../../../domain/joint/tenon-check.ts';
import { fitWords, tenonTaperWords, tenonWords as words } from '../../text/measure-words.ts';
import { amountWords, sizeWords } from '../../text/plan-words.ts';
import { BigAnswer } from './plan-big-answer.tsx';
import { dialWords } from './plan-rows.ts';

interface Props {
  readonly reckoned: Reckoned;
  readonly tenon: TenonMeasure;
  readonly check: TenonCheck;
}

/** Over, under or on size, what that does to the fit, and the two ways out. */
export const TenonVerdict = ({ reckoned, tenon, check }: Props) => {
  const { unit } = settings.value;
  const { target, plan, pair } = reckoned;
  const band = targetFor(plan.clearance.clearance);
  const passes = passesTo(reckoned, check.depthToSuit);
  const last = passes.ok ? passes.value.at(-1) : undefined;
  const dial = last ? dialWords(last) : null;
  const [first, second] = tenon.counted;
  const measured = first && !second ? first.diameter.text : sizeWords(tenon.mean, unit);
  const [depth, planned] = [check.depthToSuit, pair.tenon.depth].map((d) => sizeWords(d, unit));
  const crestsRub = check.fit.tenonCrestGap < 0;
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
      {band.ok && (
        <p>
          {words.ifCut} <b>{fitWords(check, band.value, unit)}</b>
        </p>
      )}
      {tenon.taper !== null && <p>{tenonTaperWords(tenon.taper, unit)}</p>}
      {check.verdict !== 'right' && (
        <section>
          <h3>{words.instead}</h3>
          <p>
            {check.verdict === 'over'
              ? words.deeper(depth ?? '', planned ?? '')
              : words.shallower(depth ?? '', planned ?? '')}{' '}
            {dial && words.dial(dial)}
          </p>
          {crestsRub && <p class="ask">{words.crestsRub}</p>}
        </section>
      )}
    </>
  );
};

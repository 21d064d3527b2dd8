import './style.css';
import { settings } from '../../../app/session.ts';
import { type CalculatedBox, calculate } from '../../../domain/box/calculate.ts';
import { depthReached, nextPass } from '../../../domain/box/cuts.ts';
import { onJig, settingHolds } from '../../../domain/box/on-jig.ts';
import { passesOf } from '../../../domain/box/pair.ts';
import { isReady, latestRun, type Stage } from '../../../domain/box/stages.ts';
import type { Part } from '../../../domain/setup/events.ts';
import { mm } from '../../../domain/units/brands.ts';
import { hrefTo, route } from '../../shell/route.ts';
import { stepWords } from '../../words/dial.ts';
import { mendWords, recessFaultWords } from '../limit-words.ts';
import type { StageProps } from '../stage-props.ts';
import { CutAgain } from './again.tsx';
import { CutNotReady } from './not-ready.tsx';
import { CutPass } from './pass.tsx';
import { CutRecord } from './record.tsx';
import { useGiven } from './use-given.ts';
import { cutWords as words } from './words.ts';

/** The cut of one piece: withheld until its set-up is ready, then pass by pass, then what was cut. */
const CutStage = ({ onHand, runs, stage }: StageProps & { readonly stage: Stage }) => {
  const part: Part = stage === 'cut-tenon' ? 'tenon' : 'recess';
  const given = useGiven(onHand);
  const { box } = onHand;
  const run = latestRun(box, part, runs);
  if (!run || !isReady(run)) return <CutNotReady run={run} part={part} />;
  if (!given) return <div aria-busy="true" />;

  const calculated = calculate(box, given);
  const passes = calculated.ok ? passesOf(part, calculated.value) : calculated;
  if (!calculated.ok || !passes.ok)
    return (
      <>
        <p>{words.noSizes}</p>
        <a class="act main" href={hrefTo('bench', 'plan')}>
          {words.toPlan}
        </a>
        <CutRecord onHand={onHand} part={part} run={run} />
      </>
    );

  const shared = { onHand, part, run, rig: given.rig };
  const [, , again, by] = route.value;
  // A groove from an earlier set-up, picked up again: what is cut now is a correction.
  const reached = depthReached(box, part);
  const isPickedUp = run.groove && run.closed === null;
  const mayCutAgain = again === 'again' && onJig(box, runs) === part && settingHolds(box, runs);
  if (reached && (mayCutAgain || isPickedUp))
    return <CutAgain {...shared} dial={calculated.value.input.dial} by={Number(by) || 0} />;
  const next = nextPass(passes.value, reached);
  if (run.closed === null && next)
    return (
      <CutPass {...shared} next={next} of={passes.value.length} note={noteFor(part, calculated.value)} />
    );
  const fault = part === 'recess' ? recessFault(calculated.value) : null;
  return <CutRecord onHand={onHand} part={part} run={run} fault={fault} />;
};

export default CutStage;

const recessFault = (calculated: CalculatedBox) => {
  const says = recessFaultWords(calculated, settings.value.unit);
  const deeper = calculated.plan.sizes.depth - (calculated.recessCutTo ?? 0);
  return says === null ? null : { says, deeper: deeper > 0 ? deeper : null };
};

/** What the tenon's size means for its depth, when it is not as planned. */
const noteFor = (part: Part, calculated: CalculatedBox): string | null => {
  const { check } = calculated;
  if (part === 'recess' || !check) return null;
  const { unit } = settings.value;
  if (check.mend) return mendWords(check.mend, calculated, unit);
  if (check.size === 'right') return null;
  return words.suits(stepWords(mm(Math.abs(check.over)), unit), check.over > 0);
};

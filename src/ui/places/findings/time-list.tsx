import type { StepTime } from '../../../domain/findings/step-times.ts';
import { clockWords } from '../../text/clock-words.ts';
import { findingsWords as words } from '../../text/findings-words.ts';
import { useStepNames } from './use-step-names.ts';

/** Where set-up time goes, the longest first. */
export const TimeList = ({ times }: { times: readonly StepTime[] }) => {
  const nameOf = useStepNames();
  const known = times
    .filter((time) => time.usualMs !== null)
    .sort((a, b) => (b.usualMs ?? 0) - (a.usualMs ?? 0));
  return (
    <section>
      <h2>{words.times}</h2>
      <p class="soft">{known.length === 0 ? words.timesNone : words.timesAbout}</p>
      <ul class="times">
        {known.map(({ step, usualMs, middleHalf, share, hurried }) => (
          <li key={step}>
            <b>{clockWords(usualMs ?? 0)}</b>
            <span>
              {nameOf(step)}
              <span class="soft">
                {' '}
                {words.timesShare(share)}
                {middleHalf && `, ${clockWords(middleHalf.low)} to ${clockWords(middleHalf.high)}`}
                {hurried > 0 && `, ${words.timesHurried(hurried)}`}
              </span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
};

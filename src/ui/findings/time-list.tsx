import type { StepTime } from '../../domain/findings/answers/step-times.ts';
import { TimeInterval } from '../drawings/time-interval.tsx';
import { clockWords } from '../words/clock.ts';
import { timeFigureWords as words } from './figure-words.ts';
import { linkWords } from './link-words.ts';
import type { NameOf } from './step-name.ts';
import { TimeTable } from './time-table.tsx';

export interface Timed extends StepTime {
  readonly usualMs: number;
}

const isTimed = (time: StepTime): time is Timed => time.usualMs !== null;

/** Where set-up time goes, the longest first. */
export const TimeList = ({ times, nameOf }: { times: readonly StepTime[]; nameOf: NameOf }) => {
  const known = times.filter(isTimed).sort((a, b) => b.usualMs - a.usualMs);
  const [longest] = known;
  return (
    <section>
      <h2>{words.title}</h2>
      {longest ? (
        <>
          <p>{words.sentence(nameOf(longest.step), clockWords(longest.usualMs), longest.share)}</p>
          <p class="soft">{words.about}</p>
          <Picture known={known} nameOf={nameOf} />
          <details>
            <summary>{linkWords.numbers}</summary>
            <TimeTable times={known} nameOf={nameOf} />
          </details>
        </>
      ) : (
        <p class="soft">{words.none}</p>
      )}
    </section>
  );
};

const Picture = ({ known, nameOf }: { known: readonly Timed[]; nameOf: NameOf }) => {
  const longest = Math.max(...known.map(({ usualMs, middleHalf }) => middleHalf?.high ?? usualMs)) * 1.05;
  return (
    <ul class="times">
      {known.map(({ step, usualMs, middleHalf }, i) => {
        const usual = clockWords(usualMs);
        const { low, high } = middleHalf ?? { low: usualMs, high: usualMs };
        return (
          <li key={step}>
            <p>
              <b>{usual}</b> {nameOf(step)}
            </p>
            <TimeInterval
              low={low}
              high={high}
              usual={usualMs}
              longest={longest}
              withAxis={i === known.length - 1}
              axis={clockWords}
              label={
                middleHalf
                  ? words.half(nameOf(step), usual, clockWords(low), clockWords(high))
                  : words.one(nameOf(step), usual)
              }
            />
          </li>
        );
      })}
    </ul>
  );
};

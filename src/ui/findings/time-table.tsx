import { clockWords } from '../words/clock.ts';
import { timeFigureWords as words } from './figure-words.ts';
import { pWords } from './number-words.ts';
import type { NameOf } from './step-name.ts';
import type { Timed } from './time-list.tsx';

/** Every step's times in figures, one block a step: a phone is too narrow for so many columns. */
export const TimeTable = ({ times, nameOf }: { times: readonly Timed[]; nameOf: NameOf }) => (
  <div class="numbers">
    {times.map((time) => (
      <table key={time.step}>
        <caption>{nameOf(time.step)}</caption>
        <tbody>
          {rowsOf(time).map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
    ))}
    <p class="soft">{words.tableAbout}</p>
  </div>
);

const rowsOf = (time: Timed): readonly (readonly [string, string])[] => {
  const { usualMs, middleHalf, exact, unknown, hurried, change, without } = time;
  const rows: [string, string][] = [
    [words.usual, clockWords(usualMs)],
    [words.counted, words.counts(exact, unknown)],
    [words.hurried, String(hurried)],
  ];
  if (middleHalf)
    rows.push([words.middleHalf, words.range(clockWords(middleHalf.low), clockWords(middleHalf.high))]);
  if (change) rows.push([words.change, words.withP(words.percent(change.factor), pWords(change.p))]);
  if (without)
    rows.push([
      words.without,
      words.withP(words.longer(without.value, without.low, without.high), pWords(without.p)),
    ]);
  return rows;
};

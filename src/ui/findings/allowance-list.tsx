import { settings } from '../../app/session.ts';
import type { Allowance, Allowances } from '../../domain/findings/answers/allowance.ts';
import { type Millimetres, mm } from '../../domain/units/brands.ts';
import { writeLength, writePitch } from '../../domain/units/write-quantity.ts';
import { TrialStrip } from '../drawings/trial-strip.tsx';
import { allowanceFigureWords as words } from './figure-words.ts';
import { linkWords } from './link-words.ts';

/** Clearances are spoken of in thou by inch users, in hundredths by the others. */
const clearanceWords = (length: number): string =>
  writeLength(mm(length), settings.value.unit === 'in' ? 'thou' : 'mm');

/** What clearance has worked, by pitch, with every trial behind it. */
export const AllowanceList = ({ found: { pitches, silent } }: { found: Allowances }) => {
  const told = pitches.filter((pitch) => pitch.joints > 0);
  if (told.length === 0) return null;
  return (
    <section>
      <h2>{words.title}</h2>
      {told.map((allowance) => (
        <AtPitch key={allowance.pitch} allowance={allowance} />
      ))}
      {silent > 0 && <p class="soft">{words.silent(silent)}</p>}
    </section>
  );
};

const FELT = ['tight', 'right', 'slack'] as const;

const AtPitch = ({ allowance }: { allowance: Allowance }) => {
  const { pitch, clearance, geometric, joints, contradictory, marks } = allowance;
  const count = (felt: string) => marks.filter((mark) => mark.felt === felt).length;
  return (
    <article>
      <h3>{words.at(writePitch(pitch as Millimetres, 'tpi'), clearanceWords(clearance.value))}</h3>
      <p>
        {words.between(clearanceWords(clearance.low), clearanceWords(clearance.high), joints)}{' '}
        {words.usual(clearanceWords(geometric))}
        {contradictory > 0 && ` ${words.contradictory(contradictory)}`}
      </p>
      <TrialStrip
        marks={marks}
        low={clearance.low}
        high={clearance.high}
        estimate={clearance.value}
        label={words.strip(count('tight'), count('right'), count('slack'))}
        axis={clearanceWords}
        words={words.felt}
      />
      <details>
        <summary>{linkWords.numbers}</summary>
        <Numbers allowance={allowance} />
      </details>
    </article>
  );
};

const Numbers = ({ allowance: { marks, spread, halfBand } }: { allowance: Allowance }) => (
  <div class="numbers">
    <table>
      <thead>
        <tr>
          <td />
          <th scope="col">{words.trials}</th>
          <th scope="col">{words.from}</th>
          <th scope="col">{words.to}</th>
        </tr>
      </thead>
      <tbody>
        {FELT.map((felt) => {
          const clearances = marks.flatMap((mark) => (mark.felt === felt ? mark.clearance : []));
          return (
            <tr key={felt}>
              <th scope="row">{words.felt[felt]}</th>
              <td>{clearances.length}</td>
              <td>{clearances.length > 0 && clearanceWords(Math.min(...clearances))}</td>
              <td>{clearances.length > 0 && clearanceWords(Math.max(...clearances))}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
    <p class="soft">{words.spread(clearanceWords(spread), clearanceWords(halfBand))}</p>
  </div>
);

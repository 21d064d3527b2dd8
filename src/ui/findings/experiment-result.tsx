import { settings } from '../../app/session.ts';
import type { ExperimentMeasure } from '../../domain/box/records.ts';
import { FIT } from '../../domain/experiment/experiment-measure.ts';
import type { Look } from '../../domain/experiment/experiment-status.ts';
import { ExperimentDifference } from '../drawings/experiment-difference.tsx';
import { resultWords as words } from './experiment-result-words.ts';
import { linkWords } from './link-words.ts';

interface Props {
  readonly look: Look;
  readonly measure: ExperimentMeasure;
}

/** What an experiment showed at its last look: words first, the numbers one tap away. */
export const ExperimentResult = ({ look, measure }: Props) => {
  const { unit } = settings.value;
  const { interval, difference } = look.measured;
  const soft = [words.fit(look), words.missing(look), words.otherwise(look)];
  return (
    <div class="result">
      <p class="say">{words.headline(look)}</p>
      <p>{words.difference(look, measure, unit)}</p>
      {interval && (
        <ExperimentDifference
          {...interval}
          difference={difference}
          label={words.difference(look, measure, unit)}
          end={(at) => words.end(at, measure, unit)}
        />
      )}
      <p>{words.meaning(look, measure)}</p>
      {soft.map((said) => said && <p class="soft">{said}</p>)}
      <details>
        <summary>{linkWords.numbers}</summary>
        <div class="numbers">
          <Arms look={look} measure={measure} />
          {look.measured.state === 'compared' && <p class="soft">{words.basis(look)}</p>}
        </div>
      </details>
    </div>
  );
};

type Row = readonly [name: string, of: (arm: 'with' | 'without') => string | number];

const Arms = ({ look: { measured, fit }, measure }: Props) => {
  const { unit } = settings.value;
  const rows: Row[] = [
    [words.boxes, (arm) => measured[arm].boxes],
    [words.measured, (arm) => measured[arm].measured],
    [words.mean(measure), (arm) => words.value(measured[arm], measure, unit)],
  ];
  if (fit) rows.push([words.right, (arm) => words.value(fit[arm], FIT, unit)]);
  return (
    <table>
      <thead>
        <tr>
          <td />
          <th scope="col">{words.with}</th>
          <th scope="col">{words.without}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, of]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>{of('with')}</td>
            <td>{of('without')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

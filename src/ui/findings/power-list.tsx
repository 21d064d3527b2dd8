import type { ExperimentMeasure } from '../../domain/box/records.ts';
import type { PowerAt } from '../../domain/experiment/experiment-power.ts';
import { experimentWords as words } from './experiment-words.ts';

/** Sizes to compare with the one that was typed. */
const SIZES = [20, 40, 60, 80, 120, 200];

interface Props {
  readonly power: readonly PowerAt[];
  readonly measure: ExperimentMeasure;
  readonly boxes: number;
}

/** The power of an experiment: in words for the size that was typed, as numbers for others. */
export const PowerList = ({ power, measure, boxes }: Props) => {
  const chosen = power.find((at) => at.boxes === boxes);
  const sizes = power.filter((at) => SIZES.includes(at.boxes));
  return (
    <>
      {chosen && <p>{words.power(chosen, measure)}</p>}
      <table>
        <caption>{words.sizes}</caption>
        <tbody>
          <tr>
            <th scope="row">{words.size}</th>
            {sizes.map((at) => (
              <td key={at.boxes}>{at.boxes}</td>
            ))}
          </tr>
          <tr>
            <th scope="row">{words.chances}</th>
            {sizes.map((at) => (
              <td key={at.boxes}>{words.chance(at, measure)}</td>
            ))}
          </tr>
        </tbody>
      </table>
    </>
  );
};

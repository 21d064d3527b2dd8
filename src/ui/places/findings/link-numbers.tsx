import type { StepLink } from '../../../domain/findings/step-links.ts';
import { pWords, ratioWords, symptomWord, findingsWords as words } from '../../text/findings-words.ts';

/** All that stands behind the word for a step, for whoever wants to check it. */
export const LinkNumbers = ({ link }: { link: StepLink }) => {
  const { table, difference, exact, pooled, model, clusterP, p, control, relativeRisk, explains, silent } =
    link;
  const unheard = Object.values(silent).reduce((sum, count) => sum + count, 0);
  return (
    <details>
      <summary>{words.numbers}</summary>
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">{words.tableHead.failed}</th>
            <th scope="col">{words.tableHead.right}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{words.missed}</th>
            <td>{table.a}</td>
            <td>{table.b}</td>
          </tr>
          <tr>
            <th scope="row">{words.done}</th>
            <td>{table.c}</td>
            <td>{table.d}</td>
          </tr>
        </tbody>
      </table>
      <ul>
        {difference && <li>{words.difference(difference.value, difference.low, difference.high)}</li>}
        {relativeRisk && (
          <li>
            {words.ratio(
              ratioWords(relativeRisk.value),
              ratioWords(relativeRisk.low),
              ratioWords(relativeRisk.high),
            )}
          </li>
        )}
        <li>{words.exact(pWords(exact.midP))}</li>
        {pooled && (
          <li>{words.pooled(ratioWords(pooled.odds), ratioWords(pooled.low), ratioWords(pooled.high))}</li>
        )}
        {model && (
          <li>
            {words.model(
              ratioWords(model.odds.value),
              ratioWords(model.odds.low),
              ratioWords(model.odds.high),
            )}
          </li>
        )}
        {clusterP !== null && <li>{words.cluster(pWords(clusterP))}</li>}
        <li>{words.largest(pWords(p))}</li>
        <li>{words.control(pWords(control.p))}</li>
        <li>
          {explains.length > 0 ? words.explains(explains.map(symptomWord).join(', ')) : words.explainsNothing}
        </li>
        {unheard > 0 && <li>{words.silent(unheard)}</li>}
      </ul>
    </details>
  );
};

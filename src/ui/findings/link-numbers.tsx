import type { StepLink } from '../../domain/findings/answers/step-links.ts';
import type { Interval } from '../../domain/findings/statistics/counts.ts';
import { inHundred, linkWords, signed } from './link-words.ts';
import { pWords, ratioWords, numberWords as words } from './number-words.ts';

/** All numbers behind the word for a step, for readers who want to check it. */
export const LinkNumbers = ({ link }: { link: StepLink }) => {
  const { table, pooled, model, cannot, silent, hardnessAssumed } = link;
  const { a, b, c, d } = table;
  return (
    <div class="numbers">
      <table>
        <thead>
          <tr>
            <td />
            <th scope="col">{words.failed}</th>
            <th scope="col">{words.fitted}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{words.missed}</th>
            <td>{a}</td>
            <td>{b}</td>
          </tr>
          <tr>
            <th scope="row">{words.done}</th>
            <td>{c}</td>
            <td>{d}</td>
          </tr>
        </tbody>
      </table>
      <p class="soft">{words.event}</p>
      <p class="soft">{words.basis(a + b + c + d, silent)}</p>
      <Tests link={link} />
      {!pooled && a + b > 0 && c + d > 0 && <p class="soft">{words.noPooled}</p>}
      {model && <p class="soft">{words.model(model.covariates)}</p>}
      {hardnessAssumed > 0 && <p class="soft">{words.hardnessAssumed(hardnessAssumed)}</p>}
      {cannot.length > 0 && <p class="soft">{linkWords.cannot(cannot)}</p>}
    </div>
  );
};

interface Row {
  readonly name: string;
  readonly estimate?: string;
  readonly interval?: Interval | null;
  readonly p?: number | null;
  readonly asWords?: (limit: number) => string;
}

const rowsOf = ({ difference, relativeRisk, exact, pooled, ...rest }: StepLink): readonly Row[] => {
  const { sameEverywhere, model, clusterP, p, control, shareBeyond } = rest;
  const { rows } = words;
  const maybe = <T,>(given: T | null, row: (given: T) => Row): readonly Row[] =>
    given === null ? [] : [row(given)];
  const shares = (name: string) => (found: Interval & { readonly value: number }) => ({
    name,
    estimate: signed(found.value),
    interval: found,
    asWords: signed,
  });
  return [
    ...maybe(difference, shares(rows.difference)),
    ...maybe(relativeRisk, (risk) => ({
      name: rows.risk,
      estimate: ratioWords(risk.value),
      interval: risk,
    })),
    ...maybe(shareBeyond, (share) => ({ name: rows.beyond, estimate: `${inHundred(share)} in 100` })),
    { name: rows.exact, p: exact.midP },
    ...maybe(pooled, (found) => ({ name: rows.pooled, estimate: ratioWords(found.odds), interval: found })),
    ...maybe(sameEverywhere, (same) => ({ name: rows.same, p: same })),
    ...maybe(model, (found) => ({
      name: rows.model,
      estimate: ratioWords(found.odds.value),
      interval: found.odds,
      p: found.p,
    })),
    ...maybe(model?.difference ?? null, shares(rows.modelDifference)),
    ...maybe(clusterP, (cluster) => ({ name: rows.cluster, p: cluster })),
    { name: rows.largest, p },
    { name: rows.control, estimate: words.controlCounts(control.table), p: control.p },
  ];
};

const Tests = ({ link }: { link: StepLink }) => (
  <table>
    <thead>
      <tr>
        <td />
        <th scope="col">{words.estimate}</th>
        <th scope="col">{words.p}</th>
      </tr>
    </thead>
    <tbody>
      {rowsOf(link).map(({ name, estimate, interval, p, asWords = ratioWords }) => (
        <tr key={name}>
          <th scope="row">{name}</th>
          <td>
            {estimate}
            {interval && ` (${asWords(interval.low)} to ${asWords(interval.high)})`}
          </td>
          <td>{p !== null && p !== undefined && pWords(p)}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

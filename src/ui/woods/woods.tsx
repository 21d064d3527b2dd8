import '../parts/rows.css';
import './woods.css';
import { useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { findings, findingsState, reckonFindings } from '../../app/findings.ts';
import { allWoods, type WoodOnHand } from '../../app/woods.ts';
import { useLive } from '../parts/use-live.ts';
import { WoodPage } from './wood-page.tsx';
import { WoodRow } from './wood-row.tsx';
import { woodsWords as words } from './words.ts';

/** How many handbook woods are drawn before they are asked for. */
const ROWS = 20;

/** Species: what the handbook says, and one's own record by pitch. */
const Woods = ({ rest }: { rest: readonly string[] }) => {
  const woods = useLive(allWoods, ['wood']).value;
  const state = findingsState();
  useEffect(() => {
    reckonFindings();
  }, [state]);
  if (!woods) return <main class="page" aria-busy="true" />;
  const [key] = rest;
  if (key === undefined) return <WoodList woods={woods} />;
  return <WoodPage wood={woods.find((wood) => wood.key === key) ?? null} />;
};

const WoodList = ({ woods }: { woods: readonly WoodOnHand[] }) => {
  const id = useId();
  const text = useSignal('');
  const all = useSignal(false);
  const records = new Map(findings.value.found?.woods.woods.map((record) => [record.wood, record]));
  const sought = text.value.toLowerCase().split(/\s+/).filter(Boolean);
  const found = woods.filter(({ name }) => sought.every((word) => name.toLowerCase().includes(word)));
  const mine = found
    .filter(({ key }) => records.has(key))
    .sort((a, b) => (records.get(b.key)?.boxes ?? 0) - (records.get(a.key)?.boxes ?? 0));
  const others = found.filter(({ key }) => !records.has(key));
  const shown = all.value || sought.length > 0 ? others : others.slice(0, ROWS);
  return (
    <main class="page woods">
      <h1>{words.title}</h1>
      <label for={id}>{words.find}</label>
      <input
        id={id}
        type="search"
        value={text.value}
        onInput={(event) => {
          text.value = event.currentTarget.value;
        }}
      />
      {mine.length > 0 && (
        <section>
          <h2>{words.yours}</h2>
          <ul class="rows">
            {mine.map((wood) => (
              <WoodRow key={wood.key} wood={wood} record={records.get(wood.key)} />
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>{words.rest}</h2>
        <p role="status" class="soft">
          {words.count(others.length)}
        </p>
        <ul class="rows">
          {shown.map((wood) => (
            <WoodRow key={wood.key} wood={wood} />
          ))}
        </ul>
        {shown.length < others.length && (
          <button
            type="button"
            onClick={() => {
              all.value = true;
            }}
          >
            {words.more}
          </button>
        )}
      </section>
    </main>
  );
};

export default Woods;

import { changeBox } from '../../../app/boxes.ts';
import { currentBox } from '../../../app/current-box.ts';
import { allProcedures, copyProcedure } from '../../../app/procedures.ts';
import type { Procedure } from '../../../domain/setup/procedure.ts';
import { useAct } from '../../parts/use-act.ts';
import { useLive } from '../../parts/use-live.ts';
import { go, hrefTo } from '../../shell/route.ts';
import { shopWords } from '../words.ts';
import { ProcedureEditor } from './editor.tsx';
import { StepList } from './step-list.tsx';
import { procedureWords as words } from './words.ts';

const load = async () => ({ procedures: await allProcedures(), box: await currentBox() });

/** The checklists: ours to copy, the user's own to change. */
const Procedures = ({ rest }: { rest: readonly string[] }) => {
  const shown = useLive(load, ['procedure', 'box']).value;
  const copy = useAct(async (fresh, from: Procedure) => {
    const saved = await copyProcedure(fresh, from, words.copyName(from.name));
    if (saved) go('shop', 'procedures', fresh);
    return saved;
  });
  if (!shown) return <main class="page" aria-busy="true" />;
  const { procedures, box } = shown;
  const [id] = rest;

  if (id === undefined)
    return (
      <main class="page shop">
        <a href={hrefTo('shop')}>{shopWords.back}</a>
        <h1>{words.title}</h1>
        <p>{words.about}</p>
        <ul class="rows">
          {procedures.map(({ id: each, procedure, isDefault }) => (
            <li key={each}>
              <a href={hrefTo('shop', 'procedures', each)}>
                <b>{procedure.name}</b>
                <span class="soft">
                  {words.steps(procedure.steps.length)}
                  {isDefault && `, ${words.ours}`}
                </span>
              </a>
            </li>
          ))}
        </ul>
      </main>
    );

  const found = procedures.find((each) => each.id === id);
  return (
    <main class="page shop">
      <a href={hrefTo('shop', 'procedures')}>{words.all}</a>
      <h1>{found?.procedure.name ?? words.noSuch}</h1>
      {found && box && (
        <Use
          isUsed={box.box.procedureId === id}
          use={() => changeBox(box.id, (b) => ({ ...b, procedureId: id }))}
        />
      )}
      {found?.isDefault && (
        <>
          <button type="button" disabled={copy.busy} onClick={() => copy.act(found.procedure)}>
            {words.copy}
          </button>
          <StepList procedure={found.procedure} />
        </>
      )}
      {found && !found.isDefault && <ProcedureEditor id={id} procedure={found.procedure} />}
    </main>
  );
};

const Use = ({ isUsed, use }: { isUsed: boolean; use: () => void }) =>
  isUsed ? (
    <p class="soft">{words.used}</p>
  ) : (
    <button type="button" onClick={use}>
      {words.use}
    </button>
  );

export default Procedures;

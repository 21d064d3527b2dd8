import { changeBox } from '../../../app/boxes.ts';
import { allProcedures, copyProcedure } from '../../../app/procedures.ts';
import { logId } from '../../../app/session.ts';
import { currentBox } from '../../../app/start-box.ts';
import { useLive } from '../../parts/use-live.ts';
import { go, hrefTo } from '../../shell/route.ts';
import { shopWords } from '../words.ts';
import { ProcedureEditor } from './editor.tsx';
import { StepList } from './step-list.tsx';
import { procedureWords as words } from './words.ts';

/** The checklists: ours to copy, the user's own to change. */
const Procedures = ({ rest }: { rest: readonly string[] }) => {
  const shown = useLive(
    async () => ({ procedures: await allProcedures(), box: await currentBox() }),
    ['procedure', 'box', 'log'],
    logId.value,
  ).value;
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
          <button
            type="button"
            onClick={async () => {
              const copy = await copyProcedure(found.procedure, words.copyName(found.procedure.name));
              if (copy) go('shop', 'procedures', copy);
            }}
          >
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

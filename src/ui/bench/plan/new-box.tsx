import { useSignal } from '@preact/signals';
import { newestBox } from '../../../app/boxes.ts';
import { givenFor } from '../../../app/calculated.ts';
import { allRigs, FIRST_RIG_ID } from '../../../app/rigs.ts';
import { startBox } from '../../../app/start-box.ts';
import { woodsToChoose } from '../../../app/woods-to-choose.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLive } from '../../parts/use-live.ts';
import { goInstead, hrefTo } from '../../shell/route.ts';
import { PlanQuestions } from './form.tsx';
import { planFormWords as words } from './form-words.ts';
import { textsForNew } from './texts.ts';

const load = async (chosen: string | null) => {
  const last = (await newestBox())?.box;
  const rigs = await allRigs();
  const rigId = chosen ?? last?.rigId ?? rigs[0]?.id ?? FIRST_RIG_ID;
  const given = await givenFor({ rigId, instrumentId: last?.instrumentId ?? null });
  return { last, rigs, rigId, given, woods: await woodsToChoose() };
};

/** A new box: which rig, when there are several, and the questions of its plan. */
const NewBox = () => {
  const chosen = useSignal<string | null>(null);
  const known = useLive(load, ['rig', 'instrument', 'wood'], chosen.value).value;
  if (!known) return <main class="page" aria-busy="true" />;
  const { last, rigs, rigId, given, woods } = known;
  return (
    <main class="page bench">
      <header>
        <h1>{words.title}</h1>
        <a href={hrefTo('bench')}>{words.leave}</a>
      </header>
      {rigs.length > 1 && (
        <Choice
          legend={words.rig}
          options={rigs.map(({ id, rig }) => ({ value: id, word: rig.name }))}
          chosen={rigId}
          onChoose={(id) => {
            chosen.value = id;
          }}
        />
      )}
      <PlanQuestions
        id="new box"
        initial={textsForNew(last?.plan ?? null, given.rig.pitch)}
        given={given}
        woods={woods}
        act={words.act}
        onPlan={async (plan, name, id) => {
          const saved = await startBox(id, plan, last, name, rigId);
          if (saved) goInstead('bench', 'plan');
          return saved;
        }}
      />
    </main>
  );
};

export default NewBox;

import '../../parts/rows.css';
import '../shop.css';
import './style.css';
import { allRigs, changeRig } from '../../../app/rigs.ts';
import { settings } from '../../../app/session.ts';
import type { Rig } from '../../../domain/box/records.ts';
import { UNKNOWN_RIG } from '../../../domain/box/unknown-rig.ts';
import { Choice } from '../../parts/choice.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useLive } from '../../parts/use-live.ts';
import { go, goInstead, hrefTo } from '../../shell/route.ts';
import { answerText, answerWords, askedIn } from './answer.ts';
import { RigQuestionPage } from './question.tsx';
import { RIG_QUESTIONS, rigWords as words } from './words.ts';

interface RigOnHand {
  readonly id: string;
  readonly rig: Rig;
}

/** #/shop/rig shows the answers of the first rig; #/shop/rig/QUESTION/ID asks one of another. */
const RigPlace = ({ rest: [wanted, rigId] }: { rest: readonly string[] }) => {
  const rigs = useLive(allRigs, ['rig']).value;
  const found = rigs?.find(({ id }) => id === rigId) ?? rigs?.[0];
  if (!rigs || !found) return <main class="page shop" aria-busy="true" />;
  const question = RIG_QUESTIONS.find((key) => key === wanted);
  return question ? (
    <RigQuestionPage key={`${found.id} ${question}`} rigId={found.id} rig={found.rig} question={question} />
  ) : (
    <Answers rigs={rigs} shown={found} />
  );
};

export default RigPlace;

const Answers = ({ rigs, shown: { id, rig } }: { rigs: readonly RigOnHand[]; shown: RigOnHand }) => {
  const asked = askedIn(settings.value.unit);
  const open = RIG_QUESTIONS.filter((question) => answerText(rig, question) === null);
  const [next] = open;

  const addRig = useAct(async (fresh) => {
    // The rig that every log begins with is only on disk once it was told something; a second one must not hide it.
    const saved =
      (await changeRig(id, (now) => now)) &&
      (await changeRig(fresh, () => ({ ...UNKNOWN_RIG, name: words.anotherName(rigs.length + 1) })));
    if (saved) go('shop', 'rig', 'all', fresh);
    return saved;
  });

  return (
    <main class="page shop rig">
      <a href={hrefTo('shop')}>{words.back}</a>
      <h1>{rigs.length > 1 ? rig.name : words.title}</h1>
      {rigs.length > 1 && (
        <Choice
          legend={words.which}
          options={rigs.map((each) => ({ value: each.id, word: each.rig.name }))}
          chosen={id}
          onChoose={(other) => goInstead('shop', 'rig', 'all', other)}
        />
      )}
      <p>{words.about}</p>
      {next && (
        <a class="act main" href={hrefTo('shop', 'rig', next, id)}>
          {words.next(asked[next].short)}
        </a>
      )}
      <p class="soft">{words.known(RIG_QUESTIONS.length - open.length, RIG_QUESTIONS.length)}</p>
      <ul class="rows">
        {RIG_QUESTIONS.map((question) => (
          <li key={question}>
            <a href={hrefTo('shop', 'rig', question, id)}>
              <span>{asked[question].short}</span>
              {answerText(rig, question) === null ? (
                <span class="soft">{answerWords(rig, question)}</span>
              ) : (
                <b>{answerWords(rig, question)}</b>
              )}
            </a>
          </li>
        ))}
      </ul>
      <button type="button" disabled={addRig.busy} onClick={() => addRig.act()}>
        {words.another}
      </button>
    </main>
  );
};

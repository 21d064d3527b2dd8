import { correctTrial, recordTrial } from '../../../app/trials.ts';
import type { Trial } from '../../../domain/box/records.ts';
import {
  type GoingOn,
  type MarksAt,
  type MarksOn,
  marks,
  marksAt,
  type Seated,
  seated,
  type ThreadState,
  threads,
} from '../../../domain/box/trial-words.ts';
import { Switches } from '../../parts/switches.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { answersOf, BLANK, countOf, listOf, type Said, saidOf } from './answers.ts';
import { Chips } from './chips.tsx';
import { SeatPicture } from './seat-picture.tsx';
import {
  goingOnShort,
  goingOnWord,
  marksAtWord,
  marksOnWord,
  seatedWord,
  threadWord,
  trialWords as words,
} from './words.ts';

const COLUMNS: readonly (readonly [legend: string, words: readonly GoingOn[]])[] = [
  [words.tight, ['will-not-start', 'stops-dead', 'drags-more-each-turn', 'stiff-all-the-way']],
  [words.catches, ['tight-once-a-turn', 'tight-twice-a-turn', 'tight-four-times-a-turn', 'gritty']],
  [words.loose, ['end-play', 'rattles-sideways', 'jumps-a-thread']],
];
const NOT_FLUSH = seated.filter((key) => key !== 'flush');
const NOT_SOUND = threads.filter((key) => key !== 'sound');

/** Nothing was measured yet; the advice asks for it where it would settle something. */
const UNMEASURED = { endPlay: null, turnsOn: null } as const;

interface Props {
  readonly boxId: string;
  /** The trial that is put right; none for a new one. */
  readonly trial: Trial | null;
  /** A lid was right before: this may be a new fit, after finish or drying. */
  readonly wasRight: boolean;
  readonly onSaved: () => void;
}

/** What a trial fit was like, in the words of the trade; what is ticked is kept as a draft until it is saved. */
export const TrialForm = ({ boxId, trial, wasRight, onSaved }: Props) => {
  const form = useForm<keyof Said>(`trial ${trial?.id ?? boxId}`, trial ? saidOf(trial) : BLANK);
  const said = form.values.value;
  const count = countOf(said);

  const toggle = (field: keyof Said, value: string) => {
    const chosen = listOf(said[field]);
    form.set(
      field,
      (chosen.includes(value) ? chosen.filter((each) => each !== value) : [...chosen, value]).join(' '),
    );
  };
  /** One of a few, or none. */
  const pick = (field: keyof Said, value: string) => form.set(field, said[field] === value ? '' : value);
  const save = useAct(async (id) => {
    const answers = answersOf(said);
    const saved = trial
      ? await correctTrial(boxId, trial.id, answers)
      : await recordTrial(boxId, id, { ...answers, ...UNMEASURED });
    if (!saved) return false;
    form.done();
    onSaved();
    return true;
  });
  const clear = () => {
    for (const field of Object.keys(BLANK) as (keyof Said)[]) form.set(field, '');
  };

  return (
    <form
      class="trial"
      onSubmit={(event) => {
        event.preventDefault();
        save.act();
      }}
    >
      <div class="going-on">
        {COLUMNS.map(([legend, keys]) => (
          <Chips
            key={legend}
            legend={legend}
            options={keys.map((value) => ({ value, word: goingOnShort[value] ?? goingOnWord[value] }))}
            chosen={listOf<GoingOn>(said.goingOn)}
            onTap={(value) => toggle('goingOn', value)}
          >
            {legend === words.loose && <p class="soft">{words.pickAll}</p>}
          </Chips>
        ))}
      </div>
      <Chips<Seated>
        legend={words.seat}
        options={NOT_FLUSH.map((value) => ({
          value,
          word: seatedWord[value],
          picture: <SeatPicture of={value} />,
        }))}
        chosen={listOf(said.seated)}
        onTap={(value) => pick('seated', value)}
      />
      <Chips<ThreadState>
        legend={words.threads}
        options={NOT_SOUND.map((value) => ({ value, word: threadWord[value] }))}
        chosen={listOf(said.threads)}
        onTap={(value) => toggle('threads', value)}
      />
      <Chips<MarksOn | MarksAt>
        legend={words.marks}
        hint={words.marksHint}
        options={[
          ...marks.map((value) => ({ value, word: marksOnWord[value] })),
          ...marksAt.map((value) => ({ value, word: marksAtWord[value] })),
        ]}
        chosen={[...listOf<MarksOn>(said.marksOn), ...listOf<MarksAt>(said.marksAt)]}
        onTap={(value) => pick(marks.some((on) => on === value) ? 'marksOn' : 'marksAt', value)}
      />
      {wasRight && (
        <Switches
          switches={[
            {
              word: words.afterFinish,
              on: said.afterFinish !== '',
              set: (on) => form.set('afterFinish', on ? 'yes' : ''),
            },
          ]}
        />
      )}
      <div class="acts">
        <button type="button" onClick={clear}>
          {words.clear}
        </button>
        <button type="submit" class="main" disabled={count === 0}>
          {count === 0 ? words.pickOne : words.getAdvice(count)}
        </button>
      </div>
    </form>
  );
};

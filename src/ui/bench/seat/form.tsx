import { recordSeat } from '../../../app/after-fit.ts';
import type { BoxOnHand } from '../../../app/boxes.ts';
import { rigById } from '../../../app/rigs.ts';
import { readCount, readDegrees } from '../../../domain/units/read-quantity.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { keysOf, oneOf, optionsOf } from '../../parts/options.ts';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { useLive } from '../../parts/use-live.ts';
import { SeatFace } from './face.tsx';
import { shoulderWord, seatWords as words } from './words.ts';

const BLANK = { open: '', papers: '', grain: 'to-go', degrees: '', from: '' };
const FULL_TURN = 360;

const hoursOf = (text: string): readonly number[] => text.split(' ').filter(Boolean).map(Number);

/** Where the lid stands open and how far the grain has to go. */
export const SeatForm = ({ onHand: { id, box } }: { onHand: BoxOnHand }) => {
  const form = useForm(`seat ${id}`, BLANK);
  const hand = useLive(rigById, ['rig'], box.rigId).value?.hand ?? 'right';
  const said = form.values.value;
  const open = hoursOf(said.open);

  const save = useAct(async (fresh) => {
    const papers =
      said.papers.trim() === ''
        ? 0
        : form.read('papers', (field, typed) => readCount(field, typed, { min: 0, max: 50 }));
    const degrees =
      said.degrees.trim() === ''
        ? null
        : form.read('degrees', (field, typed) => readDegrees(field, typed, { min: 0, max: FULL_TURN }));
    if (papers === undefined || degrees === undefined) return false;
    const toGo = degrees !== null && said.grain === 'past' ? (FULL_TURN - degrees) % FULL_TURN : degrees;
    const saved = await recordSeat(id, fresh, {
      open,
      papers,
      // In line but open somewhere is not yet done: nothing is said of the grain then.
      degreesToGo: toGo === 0 && open.length > 0 ? null : toGo,
      takenFrom: oneOf(keysOf(shoulderWord), said.from) ?? null,
    });
    if (saved) form.done();
    return saved;
  });

  return (
    <form
      class="seat"
      onSubmit={(event) => {
        event.preventDefault();
        save.act();
      }}
    >
      <SeatFace open={open} onChange={(hours) => form.set('open', hours.join(' '))} />
      {open.length > 0 && (
        <Field form={form} name="papers" label={words.papers} hint={words.papersHint} keys="numeric" />
      )}
      <Choice
        legend={words.grain}
        options={[
          { value: 'to-go', word: words.toGo },
          { value: 'past', word: words.past },
        ]}
        chosen={said.grain}
        onChoose={(value) => form.set('grain', value)}
      />
      <Field form={form} name="degrees" label={words.degrees} hint={words.degreesHint[hand]} keys="decimal" />
      <Choice
        legend={words.from}
        options={optionsOf(shoulderWord)}
        chosen={said.from}
        onChoose={(value) => form.set('from', value)}
      />
      {(open.length > 0 || said.degrees !== '') && (
        <div class="dock">
          <button type="submit" class="main" disabled={save.busy}>
            {words.reckon}
          </button>
        </div>
      )}
    </form>
  );
};

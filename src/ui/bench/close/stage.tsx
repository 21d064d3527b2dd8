import './style.css';
import '../dock.css';
import { closeBox, reopenBox } from '../../../app/after-fit.ts';
import { rigById } from '../../../app/rigs.ts';
import type { Closing, Hand, Hardener, Outcome, ScrapReason } from '../../../domain/box/records.ts';
import { readCount } from '../../../domain/units/read-quantity.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { Photos } from '../../parts/photos.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { useLive } from '../../parts/use-live.ts';
import { goInstead } from '../../shell/route.ts';
import { LaterCheck } from '../later-check.tsx';
import type { StageProps } from '../stage-props.ts';
import { hardenerWord, outcomeWord, outsideWord, scrapWord, closeWords as words } from './words.ts';

const optionsOf = <T extends string>(word: Readonly<Record<T, string>>) =>
  (Object.keys(word) as T[]).map((value) => ({ value, word: word[value] }));

const BLANK = { outcome: '', scrapReason: '', hardener: '', beforePass: '', outside: '', note: '' };

/** One tap keeps the box; what is worth telling about it is asked below, and nothing of it is required. */
const CloseStage = ({ onHand }: StageProps) => {
  const { id, box } = onHand;
  const form = useForm(`close ${id}`, BLANK);
  const hand: Hand = useLive(rigById, ['rig'], box.rigId).value?.hand ?? 'right';

  const said = form.values.value;
  const outcome = (said.outcome || 'kept') as Outcome;
  const hardener = (said.hardener || 'none') as Hardener;
  const outside = (said.outside || null) as Closing['outsideTurned'];

  const close = useAct(async () => {
    const beforePass =
      hardener === 'none' || said.beforePass.trim() === ''
        ? null
        : form.read('beforePass', (field, typed) => readCount(field, typed, { min: 1, max: 12 }));
    if (beforePass === undefined) return;
    const saved = await closeBox(id, {
      outcome,
      scrapReason: outcome === 'scrapped' ? ((said.scrapReason || null) as ScrapReason | null) : null,
      hardener,
      hardenerBeforePass: beforePass,
      outsideTurned: outside,
      note: said.note.trim(),
    });
    if (!saved) return;
    form.done();
    goInstead('bench');
  });

  if (box.closing)
    return (
      <>
        <p>{words.closed(box.closing.outcome)}</p>
        <LaterCheck onHand={onHand} />
        <Photos boxId={id} photos={box.photos} of="box" />
        <button type="button" onClick={() => reopenBox(id)}>
          {words.reopen}
        </button>
      </>
    );

  return (
    <div class="closing">
      <p class="soft">{words.rest}</p>
      <Photos boxId={id} photos={box.photos} of="box" />
      <Choice<Outcome>
        legend={words.outcome}
        options={optionsOf(outcomeWord)}
        chosen={outcome}
        onChoose={(value) => form.set('outcome', value)}
      />
      {outcome === 'scrapped' && (
        <Choice<ScrapReason>
          legend={words.scrapReason}
          options={optionsOf(scrapWord)}
          chosen={(said.scrapReason || null) as ScrapReason | null}
          onChoose={(value) => form.set('scrapReason', value)}
        />
      )}
      <Choice<Hardener>
        legend={words.hardener}
        options={optionsOf(hardenerWord)}
        chosen={hardener}
        onChoose={(value) => form.set('hardener', value)}
      />
      {hardener === 'thin-ca' && <p role="note">{words.caFumes}</p>}
      {hardener !== 'none' && (
        <Field
          form={form}
          name="beforePass"
          label={words.beforePass}
          hint={words.beforePassHint}
          keys="numeric"
        />
      )}
      <Choice<'before' | 'after'>
        legend={words.outside}
        options={optionsOf(outsideWord)}
        chosen={outside}
        onChoose={(value) => form.set('outside', value)}
      />
      {outside === 'after' && <p class="soft">{words.noFault}</p>}
      <p role="note">{hand === 'right' ? words.lidOnForward : words.lidOnReverse}</p>
      <label>
        <b>{words.note}</b>
        <textarea
          rows={3}
          value={said.note}
          onInput={(event) => form.set('note', event.currentTarget.value)}
        />
      </label>
      <div class="dock">
        <button type="button" class="main" disabled={close.busy} onClick={() => close.act()}>
          {words.act(outcome)}
        </button>
      </div>
    </div>
  );
};
export default CloseStage;

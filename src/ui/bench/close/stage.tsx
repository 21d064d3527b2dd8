import './style.css';
import '../dock.css';
import { closeBox, reopenBox } from '../../../app/after-fit.ts';
import { rigById } from '../../../app/rigs.ts';
import type { Hand } from '../../../domain/box/records.ts';
import { LONGEST } from '../../../domain/log/bounds.ts';
import { readCount } from '../../../domain/units/read-quantity.ts';
import { readText } from '../../../domain/units/read-text.ts';
import { Choice } from '../../parts/choice.tsx';
import { Field } from '../../parts/field.tsx';
import { keysOf, oneOf, optionsOf } from '../../parts/options.ts';
import { Photos } from '../../parts/photos.tsx';
import { useAct } from '../../parts/use-act.ts';
import { useForm } from '../../parts/use-form.ts';
import { useLive } from '../../parts/use-live.ts';
import { goInstead } from '../../shell/route.ts';
import { LaterCheck } from '../later-check.tsx';
import type { StageProps } from '../stage-props.ts';
import { hardenerWord, outcomeWord, outsideWord, scrapWord, closeWords as words } from './words.ts';

const BLANK = { outcome: '', scrapReason: '', hardener: '', beforePass: '', outside: '', note: '' };

/** One tap keeps the box; what is worth telling about it is asked below, and nothing of it is required. */
const CloseStage = ({ onHand }: StageProps) => {
  const { id, box } = onHand;
  const form = useForm(`close ${id}`, BLANK);
  const hand: Hand = useLive(rigById, ['rig'], box.rigId).value?.hand ?? 'right';

  const said = form.values.value;
  const outcome = oneOf(keysOf(outcomeWord), said.outcome) ?? 'kept';
  const hardener = oneOf(keysOf(hardenerWord), said.hardener) ?? 'none';
  const outside = oneOf(keysOf(outsideWord), said.outside) ?? null;

  const close = useAct(async () => {
    const beforePass =
      hardener === 'none' || said.beforePass.trim() === ''
        ? null
        : form.read('beforePass', (field, typed) => readCount(field, typed, { min: 1, max: 12 }));
    const note = form.read('note', (field, typed) => readText(field, typed, LONGEST.note));
    if (beforePass === undefined || note === undefined) return;
    const saved = await closeBox(id, {
      outcome,
      scrapReason: outcome === 'scrapped' ? (oneOf(keysOf(scrapWord), said.scrapReason) ?? null) : null,
      hardener,
      hardenerBeforePass: beforePass,
      outsideTurned: outside,
      note,
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
      <Choice
        legend={words.outcome}
        options={optionsOf(outcomeWord)}
        chosen={outcome}
        onChoose={(value) => form.set('outcome', value)}
      />
      {outcome === 'scrapped' && (
        <Choice
          legend={words.scrapReason}
          options={optionsOf(scrapWord)}
          chosen={said.scrapReason}
          onChoose={(value) => form.set('scrapReason', value)}
        />
      )}
      <Choice
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
      <Choice
        legend={words.outside}
        options={optionsOf(outsideWord)}
        chosen={outside}
        onChoose={(value) => form.set('outside', value)}
      />
      {outside === 'after' && <p class="soft">{words.noFault}</p>}
      <p role="note">{hand === 'right' ? words.lidOnForward : words.lidOnReverse}</p>
      <Field form={form} name="note" label={words.note} rows={3} />
      <div class="dock">
        <button type="button" class="main" disabled={close.busy} onClick={() => close.act()}>
          {words.act(outcome)}
        </button>
      </div>
    </div>
  );
};
export default CloseStage;

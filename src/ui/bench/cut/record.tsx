import { useSignal } from '@preact/signals';
import type { BoxOnHand } from '../../../app/boxes.ts';
import { changeDepth, takeBackPass } from '../../../app/cutting.ts';
import { settings } from '../../../app/session.ts';
import { record } from '../../../app/set-up-run.ts';
import { cutsOf } from '../../../domain/box/cuts.ts';
import type { Cut } from '../../../domain/box/records.ts';
import type { Part } from '../../../domain/setup/events.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { mm } from '../../../domain/units/brands.ts';
import { readLength } from '../../../domain/units/read-quantity.ts';
import { Field } from '../../parts/field.tsx';
import { Photos } from '../../parts/photos.tsx';
import { useForm } from '../../parts/use-form.ts';
import { goInstead, hrefTo } from '../../shell/route.ts';
import { cutWords as words } from './words.ts';

interface Props {
  readonly onHand: BoxOnHand;
  readonly part: Part;
  readonly run: RunState;
  readonly onBack?: () => void;
  /** What this cut does to the joint, when it is not within limits; how much deeper it is to be cut, mm. */
  readonly fault?: { readonly says: string; readonly deeper: number | null } | null;
}

/** What was cut, each pass open to being put right; and how to go on from here. */
export const CutRecord = ({ onHand, part, run, onBack, fault = null }: Props) => {
  const cuts = cutsOf(onHand.box, part);
  const last = cuts.at(-1);
  const more = fault?.deeper ?? 0;
  const finish = async () => {
    if (await record({ kind: 'closed', how: 'cut' }, run)) goInstead('bench');
  };
  return (
    <>
      {fault && (
        <p class="ask" role="alert">
          {fault.says}
        </p>
      )}
      {onBack ? (
        <button type="button" class="main" onClick={onBack}>
          {words.backToCut}
        </button>
      ) : run.closed === null ? (
        <button type="button" class={fault ? '' : 'main'} onClick={finish}>
          {words.closeCut}
        </button>
      ) : (
        <a class={fault ? 'act' : 'act main'} href={hrefTo('bench')}>
          {words.goOn}
        </a>
      )}
      {cuts.length > 0 && (
        <section>
          <h3>{words.whatCut}</h3>
          <ol class="passes">
            {cuts.map((cut, i) => (
              <li key={cut.id}>
                <CutLine boxId={onHand.id} cut={cut} number={i + 1} />
              </li>
            ))}
          </ol>
          {last && (
            <button
              type="button"
              class="plain"
              onClick={() => takeBackPass(onHand.id, onHand.box.cuts, last, run)}
            >
              {words.undoLast}
            </button>
          )}
        </section>
      )}
      {run.closed === 'cut' && (
        <a class={more ? 'act main' : 'act'} href={hrefTo('bench', `cut-${part}`, 'again', `${more}`)}>
          {words.onceMore}
        </a>
      )}
      <Photos boxId={onHand.id} photos={onHand.box.photos.filter(({ of }) => of === part)} of={part} />
    </>
  );
};

const CutLine = ({ boxId, cut, number }: { boxId: string; cut: Cut; number: number }) => {
  const open = useSignal(false);
  const form = useForm(`cut ${cut.id}`, { depth: '' });
  const { unit } = settings.value;
  const line = cut.correction ? words.again(cut.depth.text) : words.pass(number, cut.depth.text);
  if (!open.value)
    return (
      <p class="row">
        <span>{line}</span>
        <button type="button" class="plain" onClick={() => (open.value = true)}>
          {words.deeperOrLess}
          <span class="hidden-words"> {line}</span>
        </button>
      </p>
    );
  return (
    <form
      onSubmit={async (event) => {
        event.preventDefault();
        const depth = form.read('depth', (field, typed) =>
          readLength(field, typed, unit, { min: mm(0.05), max: mm(12) }),
        );
        if (!depth || !(await changeDepth(boxId, cut.id, depth))) return;
        form.done();
        open.value = false;
      }}
    >
      <Field form={form} name="depth" label={words.reallyCut} hint={line} />
      <div class="row">
        <button type="submit">{words.keep}</button>
        <button type="button" onClick={() => (open.value = false)}>
          {words.leave}
        </button>
      </div>
    </form>
  );
};

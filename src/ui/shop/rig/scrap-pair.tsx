import { useSignal } from '@preact/signals';
import { changeRig } from '../../../app/rigs.ts';
import { settings } from '../../../app/session.ts';
import { learnTip } from '../../../domain/box/learn-tip.ts';
import type { Rig } from '../../../domain/box/records.ts';
import { boundsOf } from '../../../domain/joint/bounds.ts';
import type { LearnedTip } from '../../../domain/joint/tip-flat.ts';
import type { Length } from '../../../domain/units/length.ts';
import { readLength, readPitch } from '../../../domain/units/read-quantity.ts';
import { writeLength } from '../../../domain/units/write-quantity.ts';
import { Field } from '../../parts/field.tsx';
import { useForm } from '../../parts/use-form.ts';
import { rigWords } from './words.ts';

const words = rigWords.scrap;
const FIELDS = ['recess', 'tenon', 'recessDepth', 'tenonDepth', 'endPlay'] as const;
type LengthField = (typeof FIELDS)[number];

/** The tip flat from the end play of a scrap pair. */
export const ScrapPair = ({ rigId, rig }: { rigId: string; rig: Rig }) => {
  const { unit } = settings.value;
  const learned = useSignal<LearnedTip | null>(null);
  const form = useForm(`scrap pair ${rigId}`, {
    pitch: rig.pitch?.text ?? '10 tpi',
    recess: '',
    tenon: '',
    recessDepth: '',
    tenonDepth: '',
    endPlay: '',
  });
  const read = (name: LengthField): Length | undefined =>
    form.read(name, (field, typed) => readLength(field, typed, unit, boundsOf(name)));
  const say = (length: LearnedTip['tipFlat']) => writeLength(length, unit);

  const learn = async (event: Event) => {
    event.preventDefault();
    const pitch = form.read('pitch', (field, typed) => readPitch(field, typed, 'tpi'));
    const [recess, tenon, recessDepth, tenonDepth, endPlay] = FIELDS.map(read);
    if (!pitch || !recess || !tenon || !recessDepth || !tenonDepth || !endPlay) return;
    const found = learnTip(
      {
        pitch: pitch.mm,
        recess: recess.mm,
        tenon: tenon.mm,
        recessDepth: recessDepth.mm,
        tenonDepth: tenonDepth.mm,
        endPlay: endPlay.mm,
      },
      rig.cutterRadius?.mm ?? null,
    );
    if (!found.ok) {
      const at = FIELDS.find((name) => name === found.error.field) ?? 'endPlay';
      form.refuse(at, found.error);
      return;
    }
    const { tipFlat } = found.value;
    const kept = { mm: tipFlat, text: say(tipFlat) };
    if (await changeRig(rigId, (now) => ({ ...now, tipFlat: kept, tipFlatFrom: 'scrap-pair' }))) {
      learned.value = found.value;
      form.done();
    }
  };

  return (
    <section class="scrap-pair">
      <h2>{words.title}</h2>
      <p>{words.how}</p>
      <form onSubmit={learn}>
        <Field form={form} name="pitch" label={words.pitch} />
        {FIELDS.map((name) => (
          <Field key={name} form={form} name={name} label={words[name]} />
        ))}
        <button type="submit">{words.act}</button>
      </form>
      {learned.value && (
        <p role="status">{words.learned(say(learned.value.tipFlat), say(learned.value.uncertainty))}</p>
      )}
    </section>
  );
};

import { settings } from '../../app/session.ts';
import { record } from '../../app/set-up-run.ts';
import type { ReadingKind } from '../../domain/setup/procedure.ts';
import type { Reading } from '../../domain/setup/reading.ts';
import { mm } from '../../domain/units/brands.ts';
import { readLength, readTurns } from '../../domain/units/read-quantity.ts';
import { Field } from '../parts/field.tsx';
import { useForm } from '../parts/use-form.ts';
import { readingWords as words } from '../text/reading-words.ts';

interface Props {
  readonly kind: ReadingKind;
  readonly stepKey: string;
  readonly onClose: () => void;
}

/** The optional measurement of a step. */
export const ReadingForm = ({ kind, stepKey, onClose }: Props) => {
  const { unit } = settings.value;
  const form = useForm(`reading ${stepKey}`, { gap: '', over: '', turns: '' });

  const reading = (): Reading | undefined => {
    if (kind === 'turns') {
      const count = form.read('turns', (field, typed) => readTurns(field, typed, { min: 0.25, max: 60 }));
      return count === undefined ? undefined : { kind: 'turns', turns: count };
    }
    const gap = form.read('gap', (field, typed) =>
      readLength(field, typed, unit, { min: mm(0), max: mm(20) }),
    );
    const over = form.read('over', (field, typed) =>
      readLength(field, typed, unit, { min: mm(10), max: mm(600) }),
    );
    if (!gap || !over) return undefined;
    return kind === 'gap'
      ? { kind: 'gap', gap, over, plane: 'either' }
      : { kind: 'sweep', difference: gap, radius: over, plane: 'lean' };
  };

  return (
    <form
      class="reading"
      onSubmit={async (event) => {
        event.preventDefault();
        const value = reading();
        if (!value || !(await record({ kind: 'read', step: stepKey, reading: value }))) return;
        form.done();
        onClose();
      }}
    >
      {kind === 'turns' ? (
        <Field form={form} name="turns" label={words.turns} hint={words.turnsHint} />
      ) : (
        <div class="row">
          <Field form={form} name="gap" label={words[kind].gap} />
          <Field form={form} name="over" label={words[kind].over} />
        </div>
      )}
      <div class="row">
        <button type="submit">{words.keep}</button>
        <button type="button" onClick={onClose}>
          {words.without}
        </button>
      </div>
    </form>
  );
};
